package org.nestyear.app.service;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;

/** Says how the numbers behind an answer are known. */
public final class BasisWords {
    private BasisWords() {}

    /** How many real years stand behind a plan. */
    public static String years(Plan plan) {
        int years = plan.realYears();
        return (years == 1 ? "1 real weather year stands" : years + " real weather years stand")
                + " behind this, run as " + Wording.number(plan.members(), 0) + " possible seasons.";
    }

    /**
     * A sentence on the numbers that were found for another species, or nothing when there are none.
     *
     * @param species Latin name of the species planned for, whose own numbers are not borrowed
     */
    public static String borrowed(List<Parameter> basis, String species) {
        Map<String, Integer> bySpecies = new LinkedHashMap<>();
        int all = 0;
        for (Parameter parameter : basis) {
            if (parameter.isBorrowed() && !parameter.borrowedFrom().equals(species)) {
                bySpecies.merge(parameter.borrowedFrom(), 1, Integer::sum);
                all++;
            }
        }
        List<String> lenders = new ArrayList<>();
        bySpecies.forEach((lender, count) -> lenders.add(count + " from " + lender));
        return lenders.isEmpty()
                ? ""
                : all + (all == 1 ? " number is" : " numbers are") + " borrowed for want of its own: "
                        + String.join(", ", lenders) + ".";
    }

    /** How many of the numbers are not measured. */
    public static String weakness(List<Parameter> basis) {
        Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
        for (Parameter parameter : basis) {
            counts.merge(parameter.basis(), 1, Integer::sum);
        }
        if (basis.size() == 1) {
            return "The one number read is " + words(basis.get(0).basis()) + ".";
        }
        return "Of the " + basis.size() + " numbers read, " + counts(counts) + ".";
    }

    /** Counts of numbers by kind, as {@code 3 measured, 2 assumed}. */
    public static String counts(Map<Basis, Integer> kinds) {
        List<String> parts = new ArrayList<>();
        kinds.forEach((kind, count) -> parts.add(count + " " + words(kind)));
        return String.join(", ", parts);
    }

    /** The kind of a number as it reads in a sentence. */
    public static String words(Basis basis) {
        return switch (basis) {
            case MEASURED -> "measured";
            case DERIVED -> "derived";
            case COMMON_PRACTICE -> "common practice";
            case FROM_MEMORY -> "from memory";
            case ASSUMED -> "assumed";
        };
    }

    /** A number with its range, kind and source, in catalogue units. */
    public static String line(Parameter parameter) {
        String range = parameter.low() == parameter.high()
                ? ""
                : " (" + plain(parameter.low()) + " to " + plain(parameter.high()) + ")";
        String unit = parameter.unit().equals("1") ? "" : " " + parameter.unit();
        return parameter.id() + " " + plain(parameter.value()) + unit + range + ", " + words(parameter.basis())
                + (parameter.isBorrowed() ? ", borrowed from " + parameter.borrowedFrom() : "") + ": "
                + parameter.source().citation() + "; " + parameter.locator()
                + (parameter.note().isEmpty() ? "." : ". Note: " + parameter.note() + ".");
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
