package org.nestyear.app.web;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.web.SumField.Kind;

/**
 * What was typed into a calculator's form.
 *
 * @param sum the calculator
 * @param units the units its labels had
 * @param typed what stands in each field that is not empty, by its word
 */
record SumInput(Sum sum, UnitSystem units, Map<String, String> typed) {
    private static final Pattern BARE = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+|\\d+/\\d+)");
    private static final Pattern PARTED = Pattern.compile("[\\s,;]+");
    private static final String GIVEN = "yes";

    SumInput {
        typed = Map.copyOf(typed);
    }

    /** Takes over the fields of a form; those left empty are not told to the command. */
    static SumInput of(Sum sum, UnitSystem units, Map<String, String> form) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (SumField field : sum.fields()) {
            String text = form.getOrDefault(field.name(), "");
            if (!text.isBlank()) {
                typed.put(field.word(), field.kind() == Kind.TABLE ? text : text.strip());
            }
        }
        return new SumInput(sum, units, typed);
    }

    /** The worked example. */
    static SumInput example(Sum sum, UnitSystem units) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (SumField field : sum.fields()) {
            if (!field.in(units).example().isEmpty()) {
                typed.put(field.word(), field.in(units).example());
            }
        }
        return new SumInput(sum, units, typed);
    }

    boolean isEmpty() {
        return typed.isEmpty();
    }

    /** What stands in a field, or nothing. */
    String text(SumField field) {
        return typed.getOrDefault(field.word(), "");
    }

    boolean ticked(SumField field) {
        return text(field).equals(GIVEN);
    }

    /** The first field that must not be empty and is. */
    Optional<SumField> missing() {
        return sum.fields().stream()
                .filter(field -> field.required() && text(field).isEmpty())
                .findFirst();
    }

    /** The table among the fields, if it has one. */
    Optional<String> table() {
        return sum.fields().stream()
                .filter(field -> field.kind() == Kind.TABLE)
                .map(this::text)
                .findFirst();
    }

    /**
     * The question in the words of the command line.
     *
     * @param table where the table lies, if there is one
     */
    List<String> words(Path table) {
        List<String> words = new ArrayList<>(sum.command());
        for (SumField field : sum.fields()) {
            String text = text(field);
            if (text.isEmpty()) {
                continue;
            }
            switch (field.kind()) {
                case TICK -> words.add(field.word());
                case TABLE -> words.add(field.isOption() ? field.word() + "=" + table : table.toString());
                case SEVERAL -> {
                    PARTED.splitAsStream(text).forEach(each -> words.add(field.word() + "=" + each));
                }
                default -> words.add((field.isOption() ? field.word() + "=" : "") + withUnit(field, text));
            }
        }
        if (units == UnitSystem.US) {
            words.add("--units=" + units.word());
        }
        return words;
    }

    private String withUnit(SumField field, String text) {
        return BARE.matcher(text).matches() ? text + field.in(units).suffix() : text;
    }

    /** What stands in a field, with its unit, so that it means the same under the labels of the other system. */
    String kept(SumField field) {
        boolean bareCelsius = units == UnitSystem.METRIC && field.us().suffix().equals("F");
        String text = text(field);
        return bareCelsius && BARE.matcher(text).matches() ? text + "C" : withUnit(field, text);
    }
}
