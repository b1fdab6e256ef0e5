package org.nestyear.data.exchange;

import java.time.Instant;
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
