package org.nestyear.records.book;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Stamps as they stand in the tables: milliseconds with three digits always, so that the text sorts as time does. */
final class Stamps {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT);

    private Stamps() {}

    static Instant now(InstantSource clock) {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    static String text(Instant instant) {
        return STAMP.format(instant.atOffset(ZoneOffset.UTC));
    }
}
