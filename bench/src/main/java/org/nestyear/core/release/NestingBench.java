package org.nestyear.core.release;

import java.util.concurrent.TimeUnit;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.season.SeasonInputs;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One nesting season day by day with too few tunnels. Divide the time by the cohort-days that it prints: one for each day
 * on which females began and each day from then to the last cell.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NestingBench {
    private static final int TOO_FEW = 60;

    private final SeasonInputs inputs = BenchSeason.inputs(1, TOO_FEW);
    private final MemberModel member =
            BenchSeason.setup(inputs).members(BenchSeason.settings(inputs), 1).get(0);

    /** Releases the bees and counts the cohort-days. */
    @Setup
    public void release() {
        int day = member.weather().index(BenchSeason.TODAY.plusDays(40));
        member.release(day);
        if (!member.capped(0)) {
            throw new IllegalStateException("there are tunnels enough, so nothing would be timed");
        }
        double[] females = new double[member.weather().days()];
        member.comeOut(day, 1, females, new double[females.length]);
        int last = member.nest(0).dayOfShare(1);
        long cohortDays = 0;
        for (int d = 0; d < last; d++) {
            cohortDays += females[d] > 0 ? last - d : 0;
        }
        System.out.println("cohort-days: " + cohortDays);
    }

    /** The season. */
    @Benchmark
    public NestingResult season() {
        return member.nest(0);
    }
}
