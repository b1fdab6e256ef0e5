package org.nestyear.app.book;

import java.util.List;

/**
 * A visit as it is typed: counts as text, so that what is wrong can be shown again.
 *
 * @param site name of the site
 * @param house full name of the house, or empty for the site as a whole
 * @param species Latin name of the bee, or empty
 * @param day the day, ISO 8601
 * @param more more plugged since the last visit
 * @param all plugged in all
 * @param torch tunnels with a bee by torch
 * @param mud wet, damp, dry, none, or empty
 * @param sightings what was seen
 * @param note anything else
 */
public record VisitTyped(
        String site,
        String house,
        String species,
        String day,
        String more,
        String all,
        String torch,
        String mud,
        List<String> sightings,
        String note) {
    public VisitTyped {
        sightings = List.copyOf(sightings);
    }

    /** The same with another number of more plugged. */
    public VisitTyped withMore(String other) {
        return new VisitTyped(site, house, species, day, other, all, torch, mud, sightings, note);
    }
}
