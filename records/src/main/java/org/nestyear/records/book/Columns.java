package org.nestyear.records.book;

import java.util.List;
import java.util.Map;

/** Columns and tests that many tables share. */
final class Columns {
    /** Longest name, in letters. */
    static final int SHORT = 80;
    /** Longest note, in letters. */
    static final int LONG = 4000;

    private static final int MOST_BEES = 1_000_000;

    private Columns() {}

    static Sheet sheet(String name, String title, String what, Column... columns) {
        return new Sheet(name, title, what, List.of(columns), List.of(), List.of());
    }

    static Column site() {
        return Column.link("site", "Site", "site").must();
    }

    static Column on(String label) {
        return Column.date("on_date", label).must();
    }

    static Column bees() {
        return Column.species("species", "Kind of bee").must();
    }

    static Column note() {
        return Column.text("note", "Note", LONG);
    }

    static Column count(String name, String label) {
        return Column.whole(name, label, 0, MOST_BEES);
    }

    /** The first day is not after the second, where both are told. */
    static Sheet.Check order(String first, String second) {
        return v ->
                !v.containsKey(first) || !v.containsKey(second) || v.get(first).compareTo(v.get(second)) <= 0;
    }

    /** A value, empty text where it is not told. */
    static String text(Map<String, String> values, String column) {
        return values.getOrDefault(column, "");
    }

    /** A whole number, 0 where it is not told. */
    static int whole(Map<String, String> values, String column) {
        return Integer.parseInt(values.getOrDefault(column, "0"));
    }
}
