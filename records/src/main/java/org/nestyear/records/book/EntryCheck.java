package org.nestyear.records.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Whether values may stand in a table, each in its plain spelling. */
public final class EntryCheck {
    private static final List<String> PAST = List.of("on_date", "read_at");
    private static final String ANNOUNCED = "spray";

    private final Set<String> species;

    /**
     * A check.
     *
     * @param species Latin names that are known
     */
    public EntryCheck(Set<String> species) {
        this.species = Set.copyOf(species);
    }

    /**
     * The plain values of an entry, in the order of the columns.
     *
     * @param given values in any spelling; blank is not told
     * @param now what must not be written down before it has happened is held against this
     * @param index which of several changes this is, for the message
     * @throws BadEntryException the first value that cannot stand there
     */
    public Map<String, String> plain(Sheet sheet, Map<String, String> given, Instant now, int index) {
        for (String name : given.keySet()) {
            if (sheet.column(name).isEmpty()) {
                throw new BadEntryException(
                        index,
                        name,
                        sheet.title() + " have no column \"" + name + "\"",
                        "one of " + String.join(", ", sheet.columnNames()));
            }
        }
        Map<String, String> plain = new LinkedHashMap<>();
        for (Column column : sheet.columns()) {
            String text = given.getOrDefault(column.name(), "");
            if (!text.isBlank()) {
                plain.put(column.name(), value(sheet, column, text, now, index));
            } else if (column.required()) {
                throw new BadEntryException(
                        index,
                        column.name(),
                        sheet.title() + " need the column " + column.name() + ", which is empty",
                        column.expected());
            }
        }
        for (Sheet.Rule rule : sheet.rules()) {
            if (!rule.holds().test(plain)) {
                @Nullable String stands = plain.get(rule.column());
                throw new BadEntryException(
                        index,
                        rule.column(),
                        rule.column() + (stands == null ? " is empty" : " is " + stands),
                        rule.expected());
            }
        }
        return plain;
    }

    private String value(Sheet sheet, Column column, String text, Instant now, int index) {
        Optional<String> plain = column.plain(text);
        if (plain.isEmpty() || (column.kind() == ColumnKind.SPECIES && !species.contains(plain.get()))) {
            throw new BadEntryException(
                    index, column.name(), column.name() + " is \"" + shown(text) + "\"", column.expected());
        }
        if (PAST.contains(column.name()) && !sheet.name().equals(ANNOUNCED) && isFuture(plain.get(), now)) {
            throw new BadEntryException(
                    index, column.name(), column.name() + " is " + plain.get(), "a day that has come already");
        }
        return plain.get();
    }

    // The first places on Earth are fourteen hours ahead of UTC.
    private static boolean isFuture(String day, Instant now) {
        LocalDate latest = now.atOffset(ZoneOffset.ofHours(14)).toLocalDate();
        return LocalDate.parse(day.substring(0, 10)).isAfter(latest);
    }

    private static String shown(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
    }
}
