package org.nestyear.data.exchange;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** A job as an event of whole days (RFC 5545 §3.6.1). */
final class JobEvent {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private JobEvent() {}

    static void write(CalendarJob job, JobRevision revision, ContentLines lines) {
        String stamp = stamp(revision);
        lines.plain("BEGIN", "VEVENT");
        lines.plain("UID", job.uid());
        // §3.8.7.2: without a METHOD, DTSTAMP is when the event was last revised.
        lines.plain("DTSTAMP", stamp);
        lines.plain("LAST-MODIFIED", stamp);
        lines.plain("SEQUENCE", Integer.toString(revision.sequence()));
        content(job, lines);
        lines.plain("END", "VEVENT");
    }

    static String stamp(JobRevision revision) {
        return STAMP.format(revision.changed());
    }

    /** Stands for everything a reader of the event sees. */
    static String fingerprint(CalendarJob job) {
        ContentLines lines = new ContentLines();
        content(job, lines);
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256")
                            .digest(lines.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static void content(CalendarJob job, ContentLines lines) {
        lines.plain("DTSTART;VALUE=DATE", DATE.format(job.from()));
        // The end of an event is the first day that is no longer part of it (§3.6.1).
        lines.plain("DTEND;VALUE=DATE", DATE.format(job.to().plusDays(1)));
        lines.text("SUMMARY", job.title() + " (" + job.siteName() + ")");
        lines.text("DESCRIPTION", String.join("\n", description(job)));
        lines.text("LOCATION", job.siteName());
        lines.text("CATEGORIES", job.species());
        // A window of days must not make the keeper look busy in it (§3.8.2.7).
        lines.plain("TRANSP", "TRANSPARENT");
    }

    private static List<String> description(CalendarJob job) {
        List<String> text = new ArrayList<>();
        text.add(job.species() + ", " + window(job.from(), job.to()) + ".");
        for (String sentence : List.of(job.number(), job.reason())) {
            if (!sentence.isBlank()) {
                text.add(sentence);
            }
        }
        if (job.risk() != null) {
            text.add("Risk: " + job.risk());
        }
        if (job.caution() != null) {
            text.add("Caution: " + job.caution());
        }
        if (!job.basis().isEmpty()) {
            text.add("Basis:");
            text.addAll(job.basis());
        }
        return text;
    }

    private static String window(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return "on " + DAY_AND_YEAR.format(from);
        }
        DateTimeFormatter first = from.getYear() == to.getYear() ? DAY : DAY_AND_YEAR;
        return "from " + first.format(from) + " to " + DAY_AND_YEAR.format(to);
    }
}
