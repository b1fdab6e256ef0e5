package org.nestyear.core.release;

import java.util.concurrent.TimeUnit;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.plan.Planner;
import org.nestyear.core.season.SeasonInputs;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A whole plan, with few years and with many, with tunnels to spare and with too few. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBench {
    /** Years of weather. */
    @Param({"3", "40"})
    public int years;

    /** Free tunnels for 500 females. */
    @Param({"20000", "400"})
    public int tunnels;

    private SeasonInputs inputs = BenchSeason.inputs(3, 400);

    /** Prepares the inputs. */
    @Setup
    public void prepare() {
        inputs = BenchSeason.inputs(years, tunnels);
    }

    /** The plan. */
    @Benchmark
    public Plan plan() {
        return Planner.plan(inputs, BenchSeason.BEES);
    }
}
