package org.nestyear.app.web;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.nestyear.app.service.UnitSystem;

/**
 * One field of a small calculator: how a page asks for one word of a command.
 *
 * @param word option of the command such as {@code --lat}, or the label of a file such as {@code FILE}
 * @param kind how it is typed
 * @param metric the field in metric units
 * @param us the same in US units
 * @param required whether there is no answer without it
 * @param help what it means; empty to take the command's own words
 * @param choices what may be chosen, for a choice
 */
record SumField(
        String word,
        Kind kind,
        InUnits metric,
        InUnits us,
        boolean required,
        String help,
        Supplier<List<Choice>> choices) {
    /** Name of the field that holds a table, in every form. */
    static final String TABLE = "table";

    /** How a field is typed. */
    enum Kind {
        TEXT,
        DATE,
        CHOICE,
        /** Given or not given. */
        TICK,
        /** Several values, parted by spaces or on lines of their own. */
        SEVERAL,
        /** A table, pasted or chosen as a file. */
        TABLE
    }

    /**
     * A field in one system of units.
     *
     * @param label what is asked, with the unit
     * @param suffix put behind a bare number, so that the command knows the unit; empty for none
     * @param example what is typed in the worked example; empty for nothing
     */
    record InUnits(String label, String suffix, String example) {}

    /**
     * One of several.
     *
     * @param value word of the command
     * @param words as a keeper calls it
     */
    record Choice(String value, String words) {}

    static SumField text(String word, String label, String example) {
        return of(word, Kind.TEXT, label, example);
    }

    static SumField date(String word, String label, String example) {
        return of(word, Kind.DATE, label, example);
    }

    static SumField several(String word, String label, String example) {
        return of(word, Kind.SEVERAL, label, example);
    }

    static SumField tick(String word, String label) {
        return of(word, Kind.TICK, label, "");
    }

    static SumField choice(String word, String label, String example, Supplier<List<Choice>> choices) {
        SumField field = of(word, Kind.CHOICE, label, example);
        return new SumField(word, field.kind, field.metric, field.us, true, "", choices);
    }

    static SumField table(String word, String label, String example) {
        return of(word, Kind.TABLE, label, example);
    }

    /** Per cent: a bare number has its sign put behind it. */
    static SumField percent(String word, String label, String example) {
        return measure(word, label, "%", example, label, "%", example);
    }

    /** A temperature, °C or °F. */
    static SumField celsius(String word, String label, String celsius, String fahrenheit) {
        return measure(word, label + ", °C", "", celsius, label + ", °F", "F", fahrenheit);
    }

    /** A measure whose unit differs between the systems. */
    static SumField measure(
            String word,
            String label,
            String suffix,
            String example,
            String labelUs,
            String suffixUs,
            String exampleUs) {
        return new SumField(
                word,
                Kind.TEXT,
                new InUnits(label, suffix, example),
                new InUnits(labelUs, suffixUs, exampleUs),
                true,
                "",
                List::of);
    }

    private static SumField of(String word, Kind kind, String label, String example) {
        InUnits both = new InUnits(label, "", example);
        return new SumField(word, kind, both, both, kind != Kind.TICK, "", List::of);
    }

    /** The same field, which may be left empty. */
    SumField optional() {
        return new SumField(word, kind, metric, us, false, help, choices);
    }

    /** The same field with words of its own on what it means. */
    SumField help(String words) {
        return new SumField(word, kind, metric, us, required, words, choices);
    }

    InUnits in(UnitSystem units) {
        return units == UnitSystem.US ? us : metric;
    }

    /** Whether it is an option of the command, or else a word that stands by itself. */
    boolean isOption() {
        return word.startsWith("--");
    }

    /** Name of the field in the form and in the address. */
    String name() {
        if (kind == Kind.TABLE) {
            return TABLE;
        }
        return isOption() ? word.substring(2) : word.toLowerCase(Locale.ROOT);
    }
}
