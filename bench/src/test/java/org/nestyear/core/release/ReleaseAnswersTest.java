package org.nestyear.core.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.nesting.WholeBeeRun;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.stats.Draws;

/** What the benchmarks time gives right answers and allocates nothing per date. */
class ReleaseAnswersTest {
    private static final LocalDate DATE = BenchSeason.TODAY.plusDays(40);

    private static List<MemberModel> members(int tunnels) {
        SeasonInputs inputs = BenchSeason.inputs(3, tunnels);
        return BenchSeason.setup(inputs).members(BenchSeason.settings(inputs), 1);
    }

    /** A release on any date of the season, with tunnels to spare or too few, makes no garbage. */
    @Test
    void nothingIsAllocatedPerDate() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (int tunnels : new int[] {20_000, 60}) {
            MemberModel member = members(tunnels).get(0);
            int first = member.weather().index(BenchSeason.TODAY);
            member.release(first);
            long before = threads.getCurrentThreadAllocatedBytes();
            for (int d = 0; d < 90; d++) {
                member.release(first + d);
            }
            long perDate = (threads.getCurrentThreadAllocatedBytes() - before) / 90;
            assertThat(perDate).as("bytes a date with " + tunnels + " tunnels").isLessThan(8);
        }
    }

    /** With tunnels to spare the sum over females is the day-by-day season. */
    @Test
    void theSumOfFemalesIsTheSeason() {
        for (MemberModel member : members(1_000_000)) {
            member.release(member.weather().index(DATE));
            for (int k = 0; k < member.courses(); k++) {
                assertThat(member.capped(k)).isFalse();
                assertThat(member.nest(k).daughters()).isCloseTo(member.daughters(k), within(1e-4));
            }
        }
    }

    /** With too few tunnels the short run that scores a date gives the daughters of the whole one. */
    @Test
    void theShortRunGivesTheDaughtersOfTheWholeOne() {
        for (MemberModel member : members(60)) {
            member.release(member.weather().index(DATE));
            for (int k = 0; k < member.courses(); k++) {
                assertThat(member.capped(k)).isTrue();
                NestingResult whole = member.nest(k);
                assertThat(member.daughters(k)).isCloseTo(whole.daughters(), within(1e-9));
                assertThat(whole.tunnelsUsed()).isLessThanOrEqualTo(60 + 1e-9);
            }
        }
    }

    /** Bee by bee, the mean of many runs is the expected number of daughters. */
    @Test
    void wholeBeesComeToTheExpectedNumber() {
        MemberModel member = members(1_000_000).get(0);
        member.release(member.weather().index(DATE));
        Draws draws = new Draws(7);
        WholeBeeRun run = member.wholeBees(0);
        int runs = 400;
        double sum = 0;
        double squares = 0;
        for (int r = 0; r < runs; r++) {
            double daughters = run.next(draws).daughters();
            sum += daughters;
            squares += daughters * daughters;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertThat(mean).isCloseTo(member.daughters(0), within(4 * error));
        assertThat(error).isPositive().isLessThan(0.05 * mean);
    }

    /** The table of all pairs holds what each pair gives when run on its own; few males, so that mating counts. */
    @Test
    void theTableOfPairsIsEachPairRunOnItsOwn() {
        SeasonInputs inputs = BenchSeason.inputs(3, 1_000_000, 6);
        SeasonSetup setup = BenchSeason.setup(inputs);
        List<MemberModel> members = setup.members(BenchSeason.settings(inputs), 1);
        Candidates dates = new Candidates(BenchSeason.TODAY, BenchSeason.TODAY.plusDays(59));
        Outcomes outcomes = Outcomes.of(members, dates);
        Outcomes.Scale scale = outcomes.scale(Goal.BOTH);
        double share = 0.3;
        TwoReleases table = TwoReleases.of(members, dates, new double[] {share}, outcomes, scale)
                .get(0);
        double apart = 0;
        for (int first = 0; first < 60; first += 7) {
            for (int second = first; second < 60; second += 5) {
                double sum = 0;
                int seasons = 0;
                for (MemberModel member : members) {
                    int zero = member.weather().index(dates.first());
                    member.release(zero + first, zero + second, share);
                    for (int k = 0; k < member.courses(); k++) {
                        sum += scale.score(member.daughters(k), member.bloomDays(k));
                        seasons++;
                    }
                }
                assertThat(table.score(first, second)).isCloseTo(sum / seasons, within(1e-9));
                double[][] singles = outcomes.scores(Goal.BOTH);
                double mean = share * Outcomes.mean(singles, first) + (1 - share) * Outcomes.mean(singles, second);
                apart = Math.max(apart, Math.abs(table.score(first, second) - mean));
            }
        }
        assertThat(apart)
                .as("with few males a pair is not the mean of its dates")
                .isGreaterThan(1e-3);
    }
}
