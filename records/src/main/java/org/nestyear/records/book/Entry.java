package org.nestyear.records.book;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * An entry as it stands now.
 *
 * @param sheet its table
 * @param id made by the application
 * @param revision 1 when it was made, one more at every change
 * @param who the person who wrote it, or corrected it last
 * @param addedAt when it was made
 * @param changedAt when it last changed
 * @param removed whether it was taken out
 * @param act the act that gave it the values it has now
 * @param values plain spellings by column; a column that was not told is missing
 */
public record Entry(
        Sheet sheet,
        String id,
        int revision,
        String who,
        Instant addedAt,
        Instant changedAt,
        boolean removed,
        String act,
        Map<String, String> values) {
    public Entry {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** The value of a column, or empty text where it was not told. */
    public String text(String column) {
        return values.getOrDefault(column, "");
    }

    /** The whole number in a column, if told. */
    public OptionalInt whole(String column) {
        @Nullable String text = values.get(column);
        return text == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
    }

    /** The number in a column, if told. */
    public OptionalDouble number(String column) {
        @Nullable String text = values.get(column);
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    /** The day in a column, if told. */
    public Optional<LocalDate> date(String column) {
        return Optional.ofNullable(values.get(column)).map(LocalDate::parse);
    }
}
