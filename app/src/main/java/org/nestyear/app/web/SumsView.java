package org.nestyear.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A small calculator's page.
 *
 * @param address path of the page, also of its form
 * @param post whether the form is posted, because it holds a table
 * @param units word of the units of its labels
 * @param otherUnits word of the other units
 * @param otherAddress the same question under the labels of the other units
 * @param fields in order
 * @param problem what is wrong and belongs to no field, a sentence each; empty when nothing is
 * @param example address that fills in the worked example, when that is what is shown; else empty
 * @param answer the answer, or null where there is none
 */
public record SumsView(
        PageHead head,
        String title,
        String question,
        String address,
        boolean post,
        String units,
        String otherUnits,
        String otherAddress,
        List<Field> fields,
        List<String> problem,
        String example,
        @Nullable SumAnswer answer) {
    public SumsView {
        fields = List.copyOf(fields);
        problem = List.copyOf(problem);
    }

    /**
     * A field as it is shown.
     *
     * @param name in the form
     * @param kind how it is typed
     * @param value what stands in it
     * @param ticked whether it is ticked
     * @param example what stands in the worked example
     * @param problem what is wrong with it, or empty
     */
    public record Field(
            String name,
            String kind,
            String label,
            String help,
            boolean required,
            String value,
            boolean ticked,
            String example,
            String problem,
            List<Option> options) {
        public Field {
            options = List.copyOf(options);
        }

        /** Ids of what describes it, or null. */
        public @Nullable String describedBy() {
            String ids = (help.isEmpty() ? "" : name + "-help ") + (problem.isEmpty() ? "" : name + "-problem");
            return ids.isBlank() ? null : ids.strip();
        }
    }

    /** One of several to choose from. */
    public record Option(String value, String words, boolean chosen) {}

    /**
     * The page that lists the calculators.
     *
     * @param groups by task
     */
    public record Index(PageHead head, String units, String otherUnits, List<Task> groups) {
        public Index {
            groups = List.copyOf(groups);
        }
    }

    /** Calculators of one task. */
    public record Task(String title, String about, List<Link> links) {
        public Task {
            links = List.copyOf(links);
        }
    }

    /** One calculator. */
    public record Link(String address, String title, String question) {}
}
