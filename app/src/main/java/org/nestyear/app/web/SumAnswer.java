package org.nestyear.app.web;

import java.util.List;

/**
 * An answer of a small calculator as the page shows it.
 *
 * @param lead the answer itself
 * @param facts its numbers
 * @param why reasons, ways and cautions
 * @param known how well it is known
 * @param basis the numbers read for it
 * @param commandLine the same question on the command line
 */
public record SumAnswer(
        List<String> lead,
        List<Fact> facts,
        List<Block> why,
        List<Block> known,
        List<BasisLine> basis,
        String commandLine) {
    public SumAnswer {
        lead = List.copyOf(lead);
        facts = List.copyOf(facts);
        why = List.copyOf(why);
        known = List.copyOf(known);
        basis = List.copyOf(basis);
    }

    /**
     * A row of the small table.
     *
     * @param parts one value, or low and high
     */
    public record Fact(String label, List<Part> parts) {
        public Fact {
            parts = List.copyOf(parts);
        }
    }

    /**
     * A value.
     *
     * @param raw as the command's JSON has it
     * @param words as it is read
     */
    public record Part(String raw, String words) {}

    /**
     * A piece of the text.
     *
     * @param heading set above it, or empty
     * @param text a paragraph, or empty
     * @param items a list, or empty
     * @param rows a table whose first row is its head if {@code headed}, or empty
     */
    public record Block(String heading, String text, List<String> items, List<List<String>> rows, boolean headed) {
        public Block {
            items = List.copyOf(items);
            rows = List.copyOf(rows);
        }
    }
}
