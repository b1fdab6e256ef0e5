package org.nestyear.core.plan;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.species.Species;

/**
 * A season's plan at one site.
 *
 * @param headline the answer in one sentence
 * @param species the bees planned for
 * @param today the day the plan was made for
 * @param release when, how many, and what other dates cost
 * @param outlook what to expect after the release, day by day over the weather years
 * @param pastBlooms what the dates of past years give, for each plant that has some
 * @param brood when the last cells are spun and adult, or null where no past summer tells
 * @param forage flowers in reach against its cells, or null where they were not held against each other
 * @param jobs things to do, in order of their windows
 * @param findings what the rules found, most pressing first
 * @param realYears how many real weather years stand behind it
 * @param members how many weather members were run
 * @param basis every parameter read for this answer
 */
public record Plan(
        Phrase headline,
        Species species,
        LocalDate today,
        ReleasePlan release,
        Outlook outlook,
        List<PastBloom> pastBlooms,
        @Nullable BroodOutlook brood,
        @Nullable Forage forage,
        List<Job> jobs,
        List<Finding> findings,
        int realYears,
        int members,
        List<Parameter> basis) {
    public Plan {
        pastBlooms = List.copyOf(pastBlooms);
        jobs = List.copyOf(jobs);
        findings = List.copyOf(findings);
        basis = List.copyOf(basis);
    }
}
