package org.nestyear.data.exchange;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Jobs as a calendar to subscribe to (iCalendar, RFC 5545 and RFC 7986; media type {@code text/calendar}, UTF-8).
 *
 * <p>Each job is an event of whole days, not a to-do: the calendars of phones show events of a subscribed feed and leave
 * its to-dos out. The same jobs and revisions give the same text to the letter, so a feed can be told unchanged by its
 * hash. A job that is no longer planned is absent, and calendars drop it at their next reading.
 */
public final class CalendarFeed {
    /** Media type with its character set, for the answer's header. */
    public static final String MEDIA_TYPE = "text/calendar;charset=utf-8";

    private static final String PRODUCT = "-//nestyear.org//Nestyear//EN";

    private CalendarFeed() {}

    /**
     * The whole calendar.
     *
     * @param details what the calendar is called and how often to come back
     * @param jobs in any order; each site, species, year and short name once
     * @param revisions a row for the UID of every job, from {@link JobRevision#after}; further rows do no harm
     * @throws IllegalArgumentException if two jobs have one UID, or a job has no revision
     */
    public static String write(Details details, List<CalendarJob> jobs, Map<String, JobRevision> revisions) {
        ContentLines lines = new ContentLines();
        lines.plain("BEGIN", "VCALENDAR");
        lines.plain("VERSION", "2.0");
        lines.plain("PRODID", PRODUCT);
        lines.plain("CALSCALE", "GREGORIAN");
        // The name and the time between readings twice: as RFC 7986 §5.1, §5.2 and §5.7 have them, and as older
        // calendars know them.
        lines.text("NAME", details.name());
        lines.text("X-WR-CALNAME", details.name());
        lines.text("DESCRIPTION", details.description());
        lines.text("X-WR-CALDESC", details.description());
        String interval = "PT" + details.refreshHours() + "H";
        lines.plain("REFRESH-INTERVAL;VALUE=DURATION", interval);
        lines.plain("X-PUBLISHED-TTL", interval);
        jobs.stream()
                .map(job -> revision(job, revisions))
                .max(Comparator.comparing(JobRevision::changed))
                .ifPresent(newest -> lines.plain("LAST-MODIFIED", JobEvent.stamp(newest)));
        Set<String> seen = new HashSet<>();
        for (CalendarJob job : inOrder(jobs)) {
            if (!seen.add(job.uid())) {
                throw new IllegalArgumentException("job " + job.jobId() + " for " + job.species() + " at "
                        + job.siteName() + " in " + job.seasonYear() + " is in the feed twice");
            }
            JobEvent.write(job, revision(job, revisions), lines);
        }
        lines.plain("END", "VCALENDAR");
        return lines.toString();
    }

    private static List<CalendarJob> inOrder(List<CalendarJob> jobs) {
        return jobs.stream()
                .sorted(Comparator.comparing(CalendarJob::from)
                        .thenComparing(CalendarJob::to)
                        .thenComparing(CalendarJob::uid))
                .toList();
    }

    private static JobRevision revision(CalendarJob job, Map<String, JobRevision> revisions) {
        JobRevision revision = revisions.get(job.uid());
        if (revision == null) {
            throw new IllegalArgumentException("job " + job.jobId() + " at " + job.siteName() + " has no revision");
        }
        return revision;
    }

    /**
     * What the calendar says of itself.
     *
     * @param name shown in the list of calendars
     * @param description a sentence on what it holds
     * @param refreshHours whole hours until a calendar should come back, 1 to 168
     */
    public record Details(String name, String description, int refreshHours) {
        private static final int WEEK_HOURS = 168;

        /**
         * @throws IllegalArgumentException if the hours are outside 1 to 168
         */
        public Details {
            if (refreshHours < 1 || refreshHours > WEEK_HOURS) {
                throw new IllegalArgumentException(
                        "a feed is read again after 1 to " + WEEK_HOURS + " hours, not after " + refreshHours);
            }
        }
    }
}
