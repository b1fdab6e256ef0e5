package org.nestyear.app.book;

import java.util.List;
import java.util.Optional;
import org.nestyear.records.book.Column;
import org.nestyear.records.book.Sheet;

/**
 * A record table as a form asks for it.
 *
 * @param name its name in files and addresses
 * @param title its name on a page
 * @param what what an entry of it is, one sentence
 * @param fields one for each column
 */
public record EntryForm(String name, String title, String what, List<Field> fields) {
    private static final double LONG_TEXT = 1000;

    /** How a field is typed. */
    public enum Kind {
        TEXT,
        LONG_TEXT,
        /** One of a few words. */
        WORD,
        SPECIES,
        DATE,
        MOMENT,
        WHOLE,
        NUMBER,
        /** The name of an entry of another table. */
        LINK
    }

    /**
     * One field.
     *
     * @param name its column
     * @param label what is asked, with the unit
     * @param required whether every entry tells it
     * @param words what may be chosen, for {@link Kind#WORD}
     * @param linkTo the table that is linked to, for {@link Kind#LINK}, else empty
     * @param expected what it may hold, as the end of a sentence
     */
    public record Field(
            String name,
            String label,
            Kind kind,
            boolean required,
            List<String> words,
            String linkTo,
            String expected) {
        public Field {
            words = List.copyOf(words);
        }
    }

    public EntryForm {
        fields = List.copyOf(fields);
    }

    static EntryForm of(Sheet sheet) {
        return new EntryForm(
                sheet.name(),
                sheet.title(),
                sheet.what(),
                sheet.columns().stream().map(EntryForm::field).toList());
    }

    private static Field field(Column column) {
        return new Field(
                column.name(),
                column.label(),
                kind(column),
                column.required(),
                column.words(),
                column.linkTo(),
                column.expected());
    }

    private static Kind kind(Column column) {
        return switch (column.kind()) {
            case TEXT -> column.most() >= LONG_TEXT ? Kind.LONG_TEXT : Kind.TEXT;
            case WORD, YES_NO -> Kind.WORD;
            case SPECIES -> Kind.SPECIES;
            case DATE -> Kind.DATE;
            case MOMENT -> Kind.MOMENT;
            case WHOLE -> Kind.WHOLE;
            case NUMBER -> Kind.NUMBER;
            case LINK -> Kind.LINK;
        };
    }

    /** What its entries belong to: the first link that every entry tells. */
    public Optional<Field> parent() {
        return fields.stream()
                .filter(field -> field.kind() == Kind.LINK && field.required())
                .findFirst();
    }

    /** Whether its entries have a day or a year, so that they can be looked for by year. */
    public boolean hasYear() {
        return fields.stream()
                .anyMatch(field -> field.name().equals("on_date")
                        || field.name().equals("read_at")
                        || field.name().equals("year"));
    }
}
