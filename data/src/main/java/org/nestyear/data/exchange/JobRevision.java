package org.nestyear.data.exchange;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What must be remembered of an event between two readings of a feed, so that calendars notice a change: kept by the
 * caller, a row for each UID.
 *
 * @param uid the event's UID
 * @param fingerprint stands for all that the event said
 * @param sequence how many times it has changed, from 0 (RFC 5545 §3.8.7.4)
 * @param changed when it last did (§3.8.7.3)
 */
public record JobRevision(String uid, String fingerprint, int sequence, Instant changed) {
    /**
     * @throws IllegalArgumentException if the sequence is below 0
     */
    public JobRevision {
        if (sequence < 0) {
            throw new IllegalArgumentException("event " + uid + " cannot have changed " + sequence + " times");
        }
    }

    /** Sequences made from the clock count the minutes since this day; an int holds 4000 years of them. */
    private static final Instant COUNTED_FROM = Instant.parse("2020-01-01T00:00:00Z");

    /**
     * Revisions for a feed that remembers nothing: every event counts as changed when anything last did. Calendars take
     * the change as well, and read again what did not change.
     *
     * @param jobs all jobs of the feed
     * @param changed when anything the jobs rest on last changed: the newest record, weather file or day of planning;
     *     not before 2020 and never going back
     * @return a row for each job, by UID
     * @throws IllegalArgumentException if the instant is before 2020
     */
    public static Map<String, JobRevision> at(List<CalendarJob> jobs, Instant changed) {
        if (changed.isBefore(COUNTED_FROM)) {
            throw new IllegalArgumentException("events changed at " + changed + ", before " + COUNTED_FROM);
        }
        int minutes = Math.toIntExact(ChronoUnit.MINUTES.between(COUNTED_FROM, changed));
        Map<String, JobRevision> all = new HashMap<>();
        for (CalendarJob job : jobs) {
            all.put(job.uid(), new JobRevision(job.uid(), JobEvent.fingerprint(job), minutes, changed));
        }
        return Map.copyOf(all);
    }

    /**
     * The revisions once these jobs are published. An event that says the same keeps its revision; one that says
     * something else counts one up; a job that is gone keeps its row, so that it counts on should it come back.
     *
     * @param before what was remembered, by UID
     * @param jobs all jobs of the feed
     * @param now when they are published
     * @return all rows to remember, by UID
     */
    public static Map<String, JobRevision> after(Map<String, JobRevision> before, List<CalendarJob> jobs, Instant now) {
        Map<String, JobRevision> after = new HashMap<>(before);
        for (CalendarJob job : jobs) {
            String fingerprint = JobEvent.fingerprint(job);
            after.compute(job.uid(), (uid, known) -> {
                if (known == null) {
                    return new JobRevision(uid, fingerprint, 0, now);
                }
                return known.fingerprint().equals(fingerprint)
                        ? known
                        : new JobRevision(uid, fingerprint, Math.addExact(known.sequence(), 1), now);
            });
        }
        return Map.copyOf(after);
    }
}
