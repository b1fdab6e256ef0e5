package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.opening.OpeningCase;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.plan.Rules;
import org.nestyear.core.species.BeeKind;

/** No rule sleeps, no job comes without number, reason and basis, and no hazard without its caution. */
@Tag("regression")
class EveryRuleTest {
    private static final Set<String> JOBS = Set.of(
            "look-over",
            "house",
            "add-tunnels",
            "ask-again",
            "put-out",
            "cold-spell",
            "spray",
            "watch",
            "mud",
            "second-release",
            "count-unopened",
            "count-plugs",
            "nests-in",
            "proof-by-sight",
            "into-the-cold");
    private static final Set<String> FINDINGS = Set.of(
            "no-males",
            "few-males",
            "no-tunnels",
            "tunnels-run-out",
            "fridge-far-too-warm",
            "fridge-too-warm",
            "fridge-too-warm-too-long",
            "fridge-colder-than-tested",
            "fridge-too-long",
            "too-little-cold",
            "long-in-the-cold",
            "out-in-the-store",
            "bloom-over",
            "bloom-missed",
            "best-at-the-edge",
            "few-years",
            "bloom-from-past-dates",
            "bloom-told-ahead",
            "other-bloom-unknown",
            "flowers-untold",
            "flowers-short",
            "flowers-enough",
            "small-stock",
            "fewer-than-put-out",
            "tunnels-too-small",
            "late-brood-not-adult",
            "from-elsewhere",
            "weather-gaps",
            "weather-stale",
            "two-lots",
            "one-lot",
            "borrowed",
            "how-far-it-moves",
            "no-trial");
    /** Ladders, dust, water, bees in the hand, poison nearby: work that can hurt somebody. */
    private static final Set<String> HAZARDS = Set.of(
            "look-over",
            "house",
            "put-out",
            "second-release",
            "spray",
            "mud",
            "count-unopened",
            "count-plugs",
            "nests-in",
            "proof-by-sight",
            "into-the-cold");

    private static final Set<String> OPENING = Set.of(
            "chalkbrood",
            "mites",
            "houdini-fly",
            "parasitoid-wasps",
            "many-nests-ill",
            "lot-standard",
            "robbed",
            "pollen-balls",
            "beetles",
            "mould",
            "dead-adults",
            "pale-grubs",
            "cuckoos",
            "alive",
            "do-not-give",
            "quarantine",
            "open-no-cocoon",
            "open-few-cocoons");
    /** Bleach, dust, ladders, light over water, and laws on moving bees. */
    private static final Set<String> OPENING_HAZARDS = Set.of(
            "chalkbrood",
            "mites",
            "houdini-fly",
            "parasitoid-wasps",
            "many-nests-ill",
            "robbed",
            "beetles",
            "mould",
            "do-not-give",
            "quarantine");
    /** What needs no parameter to be true. */
    private static final Set<String> WITHOUT_BASIS = Set.of("no-trial", "flowers-untold");

    @Test
    void everyJobAndFindingIsTriggered() {
        Set<String> jobs = new TreeSet<>();
        Set<String> findings = new TreeSet<>();
        for (Plan plan : Situations.plans()) {
            plan.jobs().forEach(job -> jobs.add(job.id()));
            plan.findings().forEach(finding -> findings.add(finding.id()));
        }
        assertThat(jobs).containsExactlyInAnyOrderElementsOf(JOBS);
        assertThat(findings).containsExactlyInAnyOrderElementsOf(FINDINGS);
        assertThat(JOBS).as("one job a rule").hasSameSizeAs(Rules.jobs());
        assertThat(FINDINGS.size()).isGreaterThanOrEqualTo(Rules.findings().size());
    }

    @Test
    void everyJobHasItsNumberReasonAndBasis() {
        for (Plan plan : Situations.plans()) {
            assertThat(plan.jobs()).isNotEmpty();
            for (Job job : plan.jobs()) {
                assertThat(Printed.phrase(job.title())).isNotBlank();
                assertThat(Printed.phrase(job.number())).isNotBlank();
                assertThat(Printed.phrase(job.reason())).isNotBlank();
                assertThat(job.why()).as(job.id()).isNotEmpty();
                assertThat(job.basis()).as("basis of " + job.id()).isNotEmpty();
                assertThat(job.from()).as(job.id()).isAfterOrEqualTo(plan.today());
            }
            assertThat(plan.jobs().stream().map(Job::id).collect(Collectors.toSet()))
                    .as("ids are unique")
                    .hasSameSizeAs(plan.jobs());
        }
    }

    @Test
    void everyFindingHasItsActionAndBasis() {
        for (Plan plan : Situations.plans()) {
            for (Finding finding : plan.findings()) {
                assertThat(Printed.phrase(finding.what())).isNotBlank();
                assertThat(Printed.phrase(finding.action())).isNotBlank();
                if (!WITHOUT_BASIS.contains(finding.id())) {
                    assertThat(finding.basis()).as("basis of " + finding.id()).isNotEmpty();
                    assertThat(finding.observed()).as(finding.id()).isNotNull();
                }
            }
        }
    }

    @Test
    void everyHazardHasItsCaution() {
        Set<String> seen = new TreeSet<>();
        for (Plan plan : Situations.plans()) {
            for (Job job : plan.jobs()) {
                if (HAZARDS.contains(job.id())) {
                    assertThat(job.caution()).as("caution of " + job.id()).isNotNull();
                    seen.add(job.id());
                }
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(HAZARDS);
    }

    @Test
    void everyRuleOnOpenedNestsIsTriggeredWithItsBasis() {
        Set<String> seen = new TreeSet<>();
        for (OpeningCase opened : Openings.all()) {
            for (Finding finding : opened.findings()) {
                seen.add(finding.id());
                assertThat(Printed.phrase(finding.what())).isNotBlank();
                assertThat(Printed.phrase(finding.action())).isNotBlank();
                assertThat(finding.observed()).as(finding.id()).isNotNull();
                assertThat(finding.basis()).as("basis of " + finding.id()).isNotEmpty();
                if (OPENING_HAZARDS.contains(finding.id())) {
                    assertThat(finding.caution())
                            .as("caution of " + finding.id())
                            .isNotNull();
                }
            }
            assertThat(opened.findings().stream().map(Finding::id)).doesNotHaveDuplicates();
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(OPENING);
        // Small stocks have two sentences in one rule.
        assertThat(OPENING.size()).isEqualTo(OpeningCase.rules() + 1);
    }

    /** Practice rules: never wash leaf cells or guests, never cut open more than a twentieth, none of a small stock. */
    @Test
    void adviceOnOpenedNestsKeepsThePracticeRules() {
        int looked = 0;
        for (OpeningCase opened : Openings.all()) {
            boolean small = opened.losses().alive() < 200;
            for (Finding finding : opened.findings()) {
                String action = Printed.phrase(finding.action()).toLowerCase(Locale.ROOT);
                looked++;
                if (opened.bees() == BeeKind.LEAFCUTTER) {
                    assertThat(action).as(finding.id()).doesNotContain("item cocoon", "cool water", "rinse residue");
                }
                assertThat(action).as(finding.id()).doesNotContain("cut a", "open more", "discard males");
                assertThat(finding.id()).isNotEqualTo(small ? "open-few-cocoons" : "open-no-cocoon");
            }
        }
        assertThat(looked).isGreaterThan(150);
    }
}
