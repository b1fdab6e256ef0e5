package org.nestyear.core.release;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.SeasonInputs;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** All pairs of 90 dates in 40 years, halves of the batch on each; beside it, three shares at once. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PairsBench {
    private static final int YEARS = 40;
    private static final int DATES = 90;
    private static final int PLENTY = 20_000;
    private static final double HALF = 0.5;
    private static final double[] THREE = {0.3, HALF, 0.7};

    private final SeasonInputs inputs = BenchSeason.inputs(YEARS, PLENTY);
    private final List<MemberModel> members = BenchSeason.setup(inputs).members(BenchSeason.settings(inputs), 1);
    private final Candidates dates = new Candidates(BenchSeason.TODAY, BenchSeason.TODAY.plusDays(DATES - 1L));
    private final Outcomes outcomes = Outcomes.of(members, dates);
    private final Outcomes.Scale scale = outcomes.scale(Goal.BOTH);

    /** Half and half. */
    @Benchmark
    public List<TwoReleases> halves() {
        return TwoReleases.of(members, dates, new double[] {HALF}, outcomes, scale);
    }

    /** As a plan does it. */
    @Benchmark
    public List<TwoReleases> threeShares() {
        return TwoReleases.of(members, dates, THREE, outcomes, scale);
    }
}
