package org.nestyear.data.exchange;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A dated job, in the words the keeper is to read.
 *
 * @param siteId stable id of the site, the same in every feed; better a UUID than a name, because the event's UID is made
 *     from it
 * @param siteName the keeper's name for the site
 * @param species Latin name
 * @param seasonYear the year of the plan the job belongs to
 * @param jobId the job's short name, once per site, species and year, like {@code put-out}
 * @param title what to do, in a few words
 * @param from first day of the window
 * @param to last day of the window, not before {@code from}
 * @param number how much of what, or empty
 * @param reason why, or empty
 * @param risk what is lost by waiting or hurrying, or null when nothing is said of it
 * @param caution where work can hurt, or null
 * @param basis what the numbers rest on, a line each
 */
public record CalendarJob(
        String siteId,
        String siteName,
        String species,
        int seasonYear,
        String jobId,
        String title,
        LocalDate from,
        LocalDate to,
        String number,
        String reason,
        @Nullable String risk,
        @Nullable String caution,
        List<String> basis) {
    /**
     * @throws IllegalArgumentException if the window ends before it begins, or a part of the event's name is blank
     */
    public CalendarJob {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("job " + jobId + " ends on " + to + ", before it begins on " + from);
        }
        if (siteId.isBlank() || species.isBlank() || jobId.isBlank() || title.isBlank()) {
            throw new IllegalArgumentException(
                    "job \"" + jobId + "\" needs a site id, a species, a short name and a title");
        }
        basis = List.copyOf(basis);
    }

    /** The event's UID (RFC 5545 §3.8.4.7): the same for as long as site, species, year and short name are. */
    public String uid() {
        return NamedUuid.of(siteId + "\n" + species + "\n" + seasonYear + "\n" + jobId)
                .toString();
    }
}
