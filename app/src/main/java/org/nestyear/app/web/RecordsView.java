package org.nestyear.app.web;

import java.util.List;

/**
 * The first page of the records.
 *
 * @param person who writes at this browser
 * @param notice what just happened, or empty
 * @param problem what could not be done, a sentence each
 * @param sites one part of the sites
 * @param earlier address of the sites before, or empty
 * @param later address of the sites after, or empty
 * @param done what was done lately, newest first
 * @param tables every table, for the list of all
 */
public record RecordsView(
        PageHead head,
        String person,
        String notice,
        List<String> problem,
        List<Site> sites,
        String earlier,
        String later,
        List<Done> done,
        List<Table> tables) {
    public RecordsView {
        problem = List.copyOf(problem);
        sites = List.copyOf(sites);
        done = List.copyOf(done);
        tables = List.copyOf(tables);
    }

    /**
     * A site with what to do there.
     *
     * @param query the site as a query, to be put behind an address
     * @param address the page of the site itself
     * @param last the last visit, as a sentence
     */
    public record Site(String name, String query, String address, String last) {}

    /**
     * Something that was done.
     *
     * @param button what its button says, or empty for none
     */
    public record Done(String id, String when, String who, String words, boolean takenBack, String button) {}

    /** A table with what it is for. */
    public record Table(String name, String title, String what) {}
}
