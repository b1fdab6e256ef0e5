package org.nestyear.app.web;

import java.util.List;

/**
 * The page Jobs now.
 *
 * @param season which season and which day it is made for
 * @param answer the answer in one sentence
 * @param founded how many years of weather stand behind it
 * @param jobs in order of their windows
 * @param findings most pressing first
 * @param sights what should be seen, with dates
 * @param yields what the season should give
 */
public record JobsView(
        PageHead head,
        String season,
        String answer,
        String founded,
        List<JobCard> jobs,
        List<FindingCard> findings,
        List<Sight> sights,
        List<Yield> yields) {
    public JobsView {
        jobs = List.copyOf(jobs);
        findings = List.copyOf(findings);
        sights = List.copyOf(sights);
        yields = List.copyOf(yields);
    }

    /**
     * A job; caution is empty where work cannot hurt.
     *
     * @param window its dates
     * @param state whether they are past, now or to come, in words
     */
    public record JobCard(
            String id,
            String window,
            String state,
            String title,
            String number,
            String reason,
            String caution,
            List<String> why,
            List<BasisLine> basis) {
        public JobCard {
            why = List.copyOf(why);
            basis = List.copyOf(basis);
        }
    }

    /**
     * A finding; measure and caution are empty where there is none.
     *
     * @param measure what was found and what it was held against
     */
    public record FindingCard(
            String id,
            String level,
            String what,
            String measure,
            String action,
            String caution,
            List<BasisLine> basis) {
        public FindingCard {
            basis = List.copyOf(basis);
        }
    }

    /** Something to be seen, and its early, middle and late date. */
    public record Sight(String name, String early, String middle, String late) {}

    /** A quantity to expect. */
    public record Yield(String name, String value) {}
}
