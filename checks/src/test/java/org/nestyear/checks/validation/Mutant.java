package org.nestyear.checks.validation;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.nestyear.core.source.ParameterReader;

/** A model that is wrong in one way; a check against real data is worth something if it turns such a model down. */
record Mutant(String name, Function<ParameterReader, ParameterReader> change) {
    private static final double FAR_C = 4;

    static List<Mutant> ofTheClock() {
        return List.of(
                new Mutant(
                        "no chill: every bee is ready at once",
                        p -> id -> id.startsWith("readiness_need") ? 0.001 : p.value(id)),
                new Mutant("sexes swapped", p -> id -> p.value(swapped(id))),
                new Mutant("warmth base 4 °C too high", p -> id -> p.value(id) + (isBase(id) ? FAR_C : 0)),
                new Mutant("warmth base 4 °C too low", p -> id -> p.value(id) - (isBase(id) ? FAR_C : 0)));
    }

    static Mutant rainIgnored() {
        return new Mutant("rain ignored", p -> id -> id.equals("wet_day_share") ? 1 : p.value(id));
    }

    private static boolean isBase(String id) {
        return id.startsWith("gate_base");
    }

    private static String swapped(String id) {
        Map<String, String> other = Map.of("_f", "_m", "_m", "_f");
        for (Map.Entry<String, String> pair : other.entrySet()) {
            if (id.endsWith(pair.getKey())) {
                return id.substring(0, id.length() - pair.getKey().length()) + pair.getValue();
            }
            if (id.endsWith(pair.getKey() + "_c")) {
                return id.replace(pair.getKey() + "_c", pair.getValue() + "_c");
            }
        }
        return id;
    }
}
