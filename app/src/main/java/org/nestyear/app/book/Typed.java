package org.nestyear.app.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.service.EitherBee;
import org.nestyear.core.species.Species;
import org.nestyear.data.NearestWord;
import org.nestyear.records.book.Column;
import org.nestyear.records.book.ColumnKind;
import org.nestyear.records.book.Sheet;

/** Turns what a person wrote into what the tables keep: names of entries into ids, names of bees into Latin names. */
final class Typed {
    private Typed() {}

    /** A cell that cannot be understood. */
    static final class Misunderstood extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final String column;
        private final String found;
        private final String expected;
        private final String advice;

        Misunderstood(String column, String found, String expected, String advice) {
            super(found + "; expected " + expected);
            this.column = column;
            this.found = found;
            this.expected = expected;
            this.advice = advice;
        }

        String column() {
            return column;
        }

        String found() {
            return found;
        }

        String expected() {
            return expected;
        }

        /** The words after "Maybe", or empty. */
        String advice() {
            return advice;
        }
    }

    /**
     * Values as the tables keep them, as far as names go; the rest is judged when it is written.
     *
     * @throws Misunderstood if a name means nothing, or more than one thing
     */
    static Map<String, String> values(Sheet sheet, Map<String, String> typed, Names names) {
        Map<String, String> values = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            if (text.isBlank()) {
                return;
            }
            Optional<Column> column = sheet.column(name);
            if (column.isPresent() && column.get().kind() == ColumnKind.LINK) {
                values.put(name, link(column.get(), text.strip(), names));
            } else if (column.isPresent() && column.get().kind() == ColumnKind.SPECIES) {
                values.put(name, latin(text.strip()));
            } else {
                values.put(name, text);
            }
        });
        return values;
    }

    private static String link(Column column, String called, Names names) {
        return names.find(column.linkTo(), called).orElseThrow(() -> {
            List<String> known = names.known(column.linkTo());
            long same = known.stream()
                    .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(called.toLowerCase(Locale.ROOT)))
                    .count();
            String nearest = NearestWord.find(called, known);
            return new Misunderstood(
                    column.name(),
                    column.name() + " is \"" + called + "\", which "
                            + (same > 1 ? "more than one is called" : "is not in the records"),
                    "the name of one entry under " + column.linkTo(),
                    nearest == null ? "" : "\"" + nearest + "\" is meant");
        });
    }

    // The small or large letters of a Latin name are no reason to refuse it; the words of a common name are unique.
    private static String latin(String called) {
        return EitherBee.all().stream()
                .filter(bee -> bee.latinName().equalsIgnoreCase(called)
                        || bee.commonName().equalsIgnoreCase(called))
                .map(Species::latinName)
                .findFirst()
                .orElse(called);
    }
}
