package org.nestyear.app.web;

import java.util.List;

/**
 * A small calculator as the pages offer it. The command answers; this says only how to ask and which of its numbers to
 * set in a table.
 *
 * @param slug its part of the address
 * @param title what it does, short
 * @param question what it answers, one sentence
 * @param command name of the command, then whatever it is always told
 * @param leads lines of the answer that stand above all else
 */
record Sum(
        String slug,
        String title,
        String question,
        List<String> command,
        int leads,
        List<SumField> fields,
        List<SumFact> facts) {
    Sum {
        command = List.copyOf(command);
        fields = List.copyOf(fields);
        facts = List.copyOf(facts);
    }

    static Sum of(String slug, String title, String question, String... command) {
        return new Sum(slug, title, question, List.of(command), 1, List.of(), List.of());
    }

    Sum leads(int lines) {
        return new Sum(slug, title, question, command, lines, fields, facts);
    }

    Sum asks(SumField... asked) {
        return new Sum(slug, title, question, command, leads, List.of(asked), facts);
    }

    Sum shows(SumFact... shown) {
        return new Sum(slug, title, question, command, leads, fields, List.of(shown));
    }

    /** True when it reads a table, which no address can hold. */
    boolean readsTable() {
        return fields.stream().anyMatch(field -> field.kind() == SumField.Kind.TABLE);
    }

    /**
     * Calculators of one task.
     *
     * @param title the task in a word
     * @param about what it is about
     */
    record Group(String title, String about, List<Sum> sums) {
        Group {
            sums = List.copyOf(sums);
        }
    }
}
