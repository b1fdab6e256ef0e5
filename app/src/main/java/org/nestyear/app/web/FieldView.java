package org.nestyear.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A field of a record form.
 *
 * @param id of the element
 * @param name in the form
 * @param kind how it is typed: text, long, choice, date, moment, whole, number
 * @param value what stands in it
 * @param help what it may hold, or empty
 * @param problem what is wrong with it, or empty
 * @param now what somebody else wrote there in the meantime, or empty
 * @param options for a choice
 */
public record FieldView(
        String id,
        String name,
        String kind,
        String label,
        boolean required,
        String value,
        String help,
        String problem,
        String now,
        List<Option> options) {
    public FieldView {
        options = List.copyOf(options);
    }

    /** One of several to choose from. */
    public record Option(String value, String words, boolean chosen) {}

    /** Ids of what describes it, or null. */
    public @Nullable String describedBy() {
        String ids = (help.isEmpty() ? "" : id + "-help ")
                + (problem.isEmpty() ? "" : id + "-problem ")
                + (now.isEmpty() ? "" : id + "-now");
        return ids.isBlank() ? null : ids.strip();
    }
}
