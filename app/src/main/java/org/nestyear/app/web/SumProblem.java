package org.nestyear.app.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.UnitSystem;

/**
 * Why a calculator gave no answer: the command's own sentence, with the names of its options put as the form labels them.
 *
 * @param field the field it belongs to, or null for the form as a whole
 * @param lines the sentence with its code, then the advice
 */
record SumProblem(@Nullable SumField field, List<String> lines) {
    // An option, and the capitals that stand for its value.
    private static final Pattern OPTION = Pattern.compile("(--[a-z][a-z-]*)( [A-Z]+([/,][A-Z]+)*\\b)?");
    private static final Pattern COMMAND = Pattern.compile("nestyear [a-z-]+ lacks something");

    SumProblem {
        lines = List.copyOf(lines);
    }

    /** A field that must not be empty. */
    static SumProblem missing(SumField field, UnitSystem units) {
        String example = field.in(units).example();
        String expected =
                field.kind() == SumField.Kind.TABLE || example.isEmpty() ? "" : "; expected one such as " + example;
        return new SumProblem(field, List.of(quoted(field, units) + " is empty" + expected + ". (NY-USAGE)"));
    }

    /**
     * A refusal of the command.
     *
     * @param table where the table lay while it was read, which means nothing to the keeper
     */
    static SumProblem of(Refusal refusal, SumInput input, String table) {
        List<String> lines = new ArrayList<>();
        String sentence = words(refusal.sentence(), input, table);
        lines.add(place(refusal.place(), table) + sentence + " (" + refusal.code() + ")");
        if (!refusal.advice().isEmpty()) {
            lines.add(words(refusal.advice(), input, table));
        }
        return new SumProblem(field(refusal, input), lines);
    }

    private static @Nullable SumField field(Refusal refusal, SumInput input) {
        if (!refusal.place().isEmpty()) {
            return input.sum().fields().stream()
                    .filter(field -> field.kind() == SumField.Kind.TABLE)
                    .findFirst()
                    .orElse(null);
        }
        Matcher named = OPTION.matcher(refusal.sentence());
        // A sentence that opens with an option is about it; one that only lists options is about the form.
        return named.lookingAt() ? field(named.group(1), input).orElse(null) : null;
    }

    private static Optional<SumField> field(String word, SumInput input) {
        return input.sum().fields().stream()
                .filter(field -> field.word().equals(word))
                .max(Comparator.comparingInt(field -> field.word().length()));
    }

    private static String words(String sentence, SumInput input, String table) {
        String text = table.isEmpty() ? sentence : sentence.replace(table, "the table");
        return labelled(COMMAND.matcher(text).replaceAll("something is missing"), input);
    }

    /** A text of the command with its options named as the form labels them. */
    static String labelled(String text, SumInput input) {
        return OPTION.matcher(text)
                .replaceAll(option -> Matcher.quoteReplacement(field(option.group(1), input)
                        .map(field -> quoted(field, input.units()))
                        .orElse(option.group())));
    }

    private static String quoted(SumField field, UnitSystem units) {
        return "“" + field.in(units).label() + "”";
    }

    private static String place(String place, String table) {
        if (place.isEmpty() || table.isEmpty() || !place.startsWith(table)) {
            return place.isEmpty() ? "" : place + ": ";
        }
        String[] at = place.substring(table.length()).split(":", -1);
        String line = at.length > 1 ? ", line " + at[1] : "";
        return "The table" + line + (at.length > 2 ? ", column " + at[2] : "") + ": ";
    }
}
