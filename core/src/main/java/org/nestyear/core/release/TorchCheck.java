package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.nestyear.core.nesting.TunnelStock;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.stats.Counts;
import org.nestyear.core.stats.DrawnParameters;
import org.nestyear.core.stats.NormalQuantiles;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Learns from a count of occupied tunnels in the dark, when each nesting female sits in hers.
 *
 * <p>Before the count: females nesting on that day, by draws of the uncertain numbers run through this spring's weather,
 * times a log-normal factor for how unlike sites are, Poisson about that. The count: each female is seen with a chance that
 * is drawn as well, binomially, on each evening anew (the thinned count of an occupancy survey: Royle 2004, Biometrics
 * 60:108, the N-mixture model, with one site). After it: Bayes' rule on a grid.
 */
public final class TorchCheck {
    /** Draws of the uncertain numbers; numerical. */
    private static final int DRAWS = 100;
    /** Members run under each; numerical. */
    private static final int MEMBERS = 3;
    /** Steps of the factor between sites; numerical. */
    private static final int FACTORS = 15;
    /** Standard deviations that the grid of females reaches beyond what is to be expected; numerical. */
    private static final int REACH = 6;
    /** Most steps of the grid of females; numerical. */
    private static final int STEPS = 400;
    /** Ends of a band; numerical. */
    private static final double TENTH = 0.1;

    private static final double HALF = 0.5;
    /** The upper end; numerical. */
    private static final double NINE_TENTHS = 0.9;

    private final List<State> states = new ArrayList<>();
    private final double tunnelCells;

    private TorchCheck(double tunnelCells) {
        this.tunnelCells = tunnelCells;
    }

    /**
     * Females nesting, with how likely that is.
     *
     * @param females whole females
     * @param before weight before the count
     * @param after weight after it
     * @param cells cells each still builds
     */
    private record State(double females, double before, double after, double cells, double lessChance) {}

    /**
     * Learns from counts.
     *
     * @param inputs the season, with the day of the count as its today and days of chill counted on that day as if the bees
     *     were still in the cold
     * @param known weather up to that day, its gaps filled
     * @param released day on which they were put out, not after that day
     * @param counts tunnels seen occupied, one number an evening, each 0 or more
     * @throws NoAnswerException if no past year covers the rest of the season, it is over, or the counts cannot be
     */
    public static TorchCount of(
            SeasonInputs inputs,
            WeatherRecord known,
            ParameterTable table,
            ParameterReader parameters,
            LocalDate released,
            List<Integer> counts) {
        SeasonSetup setup = new SeasonSetup(inputs, known, parameters, ModelSettings.of(parameters, inputs.nests()));
        TunnelStock stock = TunnelStock.of(inputs.nests(), parameters);
        double spread = parameters.value("site_spread");
        parameters.value("torch_seen");
        TorchCheck check = new TorchCheck(stock.cellsEach());
        int most = Math.min(
                inputs.nests().stream().mapToInt(nests -> nests.count()).sum(), females(inputs));
        for (int draw = 1; draw <= DRAWS; draw++) {
            ParameterReader drawn = new DrawnParameters(table, draw);
            ModelSettings settings = ModelSettings.of(drawn, inputs.nests());
            for (MemberModel member : setup.someMembers(settings, MEMBERS, draw)) {
                int day = member.weather().index(inputs.today());
                member.release(member.weather().index(released));
                check.add(
                        member.nestingOn(0, day),
                        member.cellsStill(0, day),
                        drawn.value("torch_seen"),
                        spread,
                        most,
                        counts);
            }
        }
        double all = check.states.stream().mapToDouble(State::after).sum();
        if (!(all > 0)) {
            throw new NoAnswerException(
                    "NY-TORCH-COUNT",
                    "So many occupied tunnels cannot be of the " + females(inputs)
                            + " females put out; wild bees nest there too, or the numbers are of another site.");
        }
        return new TorchCount(
                released,
                inputs.today(),
                counts,
                check.band(State::females, State::before),
                check.band(State::females, State::after),
                check.lessChance(),
                check.band(state -> state.females() * state.cells(), State::after),
                check.band(state -> state.females() * state.cells() / check.tunnelCells, State::after));
    }

    private static int females(SeasonInputs inputs) {
        return inputs.batches().stream().mapToInt(batch -> batch.females()).sum();
    }

    private void add(double expected, double cells, double seen, double spread, int most, List<Integer> counts) {
        int top = (int) Math.min(most, Math.ceil((expected + REACH * Math.sqrt(expected) + 1) * Math.exp(2 * spread)));
        int step = Math.max(1, top / STEPS);
        double[] means = NormalQuantiles.midpoints(FACTORS);
        for (int f = 0; f < FACTORS; f++) {
            means[f] = expected * Math.exp(spread * means[f]);
        }
        for (int n = 0; n <= top; n += step) {
            double before = 0;
            for (double mean : means) {
                before += Counts.poisson(n, mean) / FACTORS;
            }
            double likely = 1;
            for (int count : counts) {
                likely *= Counts.binomial(count, n, seen);
            }
            double fewer = Counts.binomialAtMost(mean(counts), n, seen);
            states.add(new State(n, before * step, before * likely * step, cells, fewer));
        }
    }

    private static int mean(List<Integer> counts) {
        return (int)
                Math.round(counts.stream().mapToInt(Integer::intValue).average().orElse(0));
    }

    private double lessChance() {
        double all = states.stream().mapToDouble(State::before).sum();
        return states.stream()
                        .mapToDouble(state -> state.before() * state.lessChance())
                        .sum()
                / all;
    }

    private TorchCount.Band band(ToDoubleFunction<State> value, ToDoubleFunction<State> weight) {
        List<State> sorted =
                states.stream().sorted(Comparator.comparingDouble(value)).toList();
        double all = sorted.stream().mapToDouble(weight).sum();
        return new TorchCount.Band(
                at(sorted, value, weight, TENTH * all),
                at(sorted, value, weight, HALF * all),
                at(sorted, value, weight, NINE_TENTHS * all));
    }

    private static double at(
            List<State> sorted, ToDoubleFunction<State> value, ToDoubleFunction<State> weight, double wanted) {
        double sum = 0;
        for (State state : sorted) {
            sum += weight.applyAsDouble(state);
            if (sum >= wanted) {
                return value.applyAsDouble(state);
            }
        }
        return value.applyAsDouble(sorted.get(sorted.size() - 1));
    }
}
