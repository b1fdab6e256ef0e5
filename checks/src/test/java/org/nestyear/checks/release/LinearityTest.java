package org.nestyear.checks.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.checks.Comparison;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.Portion;
import org.nestyear.core.season.Goal;

/** As long as tunnels are no limit nothing depends on other bees, except that males must be about. */
@Tag("regression")
class LinearityTest {
    private static final int YEARS = 15;
    /** So many that every female that comes out finds one: e to the minus 20 of them does not. */
    private static final int MALES = 100_000;
    /** Numbers of whole bees are rounded in a portion, and males are not endless. */
    private static final double ROUNDING = 1e-6;

    private static double mean(Plan plan, LocalDate date) {
        return plan.release().curve().stream()
                .filter(point -> point.date().equals(date))
                .mapToDouble(CurvePoint::mean)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Two uncapped releases give the weighted mean of two single ones, so that a split can never win on average; also
     * where the part held back grows old in the cold (beyond 180 d) and the first part does not.
     */
    @ParameterizedTest
    @ValueSource(doubles = {90, 128, 170})
    void twoReleasesAreTheWeightedMeanOfTwoSingles(double chillDays) {
        Draft draft = Draft.washington(YEARS);
        draft.chillDays = chillDays;
        draft.females = 1000;
        draft.males = MALES;
        draft.tunnels(1_000_000);
        Plan plan = draft.plan();
        List<Portion> releases = plan.release().releases();
        assertThat(releases).hasSize(2);
        assertThat(plan.release().splitReason()).isEqualTo("insurance");
        assertThat(plan.release().shareCapped()).isZero();
        double share = releases.get(0).females() / 1000.0;
        double best = plan.release().curve().stream()
                .mapToDouble(CurvePoint::mean)
                .max()
                .orElseThrow();
        double weighted = share * mean(plan, releases.get(0).date())
                + (1 - share) * mean(plan, releases.get(1).date());
        Comparison gain = new Comparison("two releases against the weighted mean, share of the best", ROUNDING);
        gain.add(chillDays + " d of cold", 1 + plan.release().splitGain(), weighted / best);
        gain.check(1);
        assertThat(plan.release().splitGain()).isLessThanOrEqualTo(ROUNDING);
    }

    /** Twice the bees give twice the brood and the same curve, while tunnels last. */
    @ParameterizedTest
    @EnumSource(Goal.class)
    void scoreOfABeeDoesNotDependOnHowManyGoOut(Goal goal) {
        Plan[] plans = new Plan[2];
        for (int times = 1; times <= 2; times++) {
            Draft draft = Draft.washington(YEARS);
            draft.goal = goal;
            draft.females = 300 * times;
            draft.males = MALES * times;
            draft.tunnels(1_000_000);
            plans[times - 1] = draft.plan();
        }
        Comparison each = new Comparison("daughters of a female, by date", ROUNDING);
        Comparison scores = new Comparison("score, by date", ROUNDING);
        List<CurvePoint> once = plans[0].release().curve();
        List<CurvePoint> twice = plans[1].release().curve();
        assertThat(twice).hasSameSizeAs(once);
        for (int i = 0; i < once.size(); i++) {
            each.add(
                    once.get(i).date().toString(),
                    twice.get(i).daughters() / 600,
                    once.get(i).daughters() / 300);
            scores.add(
                    once.get(i).date().toString(),
                    twice.get(i).mean(),
                    once.get(i).mean());
        }
        each.check(60);
        scores.check(60);
        assertThat(plans[1].release().window()).isEqualTo(plans[0].release().window());
    }
}
