package org.nestyear.core.release;

import java.util.List;
import java.util.concurrent.TimeUnit;
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

/** One release on each of 90 dates in 40 years, and what goes before it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ReleaseBench {
    private static final int YEARS = 40;
    private static final int DATES = 90;
    private static final int PLENTY = 20_000;

    private final SeasonInputs inputs = BenchSeason.inputs(YEARS, PLENTY);
    private final ModelSettings settings = BenchSeason.settings(inputs);
    private final SeasonSetup setup = BenchSeason.setup(inputs);
    private final List<MemberModel> members = setup.members(settings, 1);
    private final Candidates dates = new Candidates(BenchSeason.TODAY, BenchSeason.TODAY.plusDays(DATES - 1L));

    /** Everything that does not depend on the date. */
    @Benchmark
    public List<MemberModel> fortyMembers() {
        return setup.members(settings, 1);
    }

    /** The curve. */
    @Benchmark
    public Outcomes oneRelease() {
        return Outcomes.of(members, dates);
    }
}
