package org.nestyear.core.bloom.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.source.ParameterReader;

/**
 * The extended spring index (Schwartz, Ault &amp; Betancourt 2013): first leaf and first bloom of a cloned lilac and two
 * cloned honeysuckles from daily temperatures, without chill. A gauge of how early a spring is, the same everywhere in
 * the northern temperate zone. Results are comparable with published ones to the day; see {@link SpringHours}.
 */
public final class SpringIndex {
    /** Numerical: the index looks at the first eight blocks of thirty days. */
    private static final int DAYS = 240;
    /** Numerical: gaps are filled from the mean of a block of thirty days. */
    private static final int BLOCK = 30;
    /** A numerical bound: with fewer values a block is not filled. */
    private static final int FEWEST_IN_BLOCK = 20;
    /** A numerical bound: more zeros than this in a block are taken for gaps written as 0. */
    private static final int MOST_ZEROS = 10;
    /** Numerical, by definition of the scales: °F in a °C. */
    private static final double F_PER_C = 1.8;
    /** Numerical, by definition of the scales: 0 °C in °F. */
    private static final double FREEZING_F = 32;
    /** Numerical: how many counted days back the leaf score looks. */
    private static final int LAGS = 8;
    /** Numerical: the first of the earlier days in the leaf score, counted back from today. */
    private static final int EARLIER = 5;

    /** Numerical: latitude of the pole, degrees. */
    private static final double POLE_DEG = 90;

    private final List<SpringPlant> plants;
    private final SpringHours hours;
    private final double coldF;
    private final double limit;
    private final double score;

    /** Reads the weights; ids begin with {@code lilac}, {@code arnold} and {@code zabelli}. */
    public SpringIndex(ParameterReader parameters) {
        plants = List.of(
                SpringPlant.of(parameters, "lilac"),
                SpringPlant.of(parameters, "arnold"),
                SpringPlant.of(parameters, "zabelli"));
        hours = new SpringHours(parameters);
        coldF = parameters.value("spring_base_f");
        limit = parameters.value("spring_warm_spell");
        score = parameters.value("spring_score");
    }

    /**
     * Leaf and bloom of a year.
     *
     * @param minC daily minimum from 1 January on, °C, NaN where missing; at least 240 days, only the first 240 are read
     * @param maxC daily maximum, as many
     * @param latitudeDeg degrees north, above 0 and below 90
     * @return empty when too much is missing or a plant's score is never reached
     * @throws IllegalArgumentException if there are fewer days, or the place is not in the north
     */
    public Optional<SpringDates> of(double[] minC, double[] maxC, double latitudeDeg) {
        if (minC.length < DAYS || maxC.length < DAYS || !(latitudeDeg > 0 && latitudeDeg < POLE_DEG)) {
            throw new IllegalArgumentException("the spring index needs " + DAYS + " days from 1 January at a northern"
                    + " latitude, got " + minC.length + " and " + maxC.length + " days at " + latitudeDeg + "°");
        }
        double[] low = new double[DAYS];
        double[] high = new double[DAYS];
        for (int d = 0; d < DAYS; d++) {
            low[d] = minC[d] * F_PER_C + FREEZING_F;
            high[d] = maxC[d] * F_PER_C + FREEZING_F;
        }
        if (!fill(low) || !fill(high)) {
            return Optional.empty();
        }
        smooth(low, high);
        double[] growing = new double[DAYS];
        for (int d = 0; d < DAYS; d++) {
            growing[d] = high[d] < coldF ? -1 : hours.growing(low[d], high[d], hours.dayLength(d + 1, latitudeDeg));
        }
        return dates(growing);
    }

    private Optional<SpringDates> dates(double[] growing) {
        List<Integer> leaves = new ArrayList<>();
        List<Integer> blooms = new ArrayList<>();
        for (SpringPlant plant : plants) {
            int leaf = leaf(plant, growing);
            int bloom = leaf == 0 ? 0 : bloom(plant, growing, leaf);
            if (bloom == 0) {
                return Optional.empty();
            }
            leaves.add(leaf);
            blooms.add(bloom);
        }
        return Optional.of(new SpringDates(mean(leaves), mean(blooms), leaves, blooms));
    }

    private static int mean(List<Integer> days) {
        return (int)
                Math.round(days.stream().mapToInt(Integer::intValue).average().orElseThrow());
    }

    /** Day of the year of first leaf, 0 when it does not come. A day below the base is passed over entirely. */
    private int leaf(SpringPlant plant, double[] growing) {
        double[] back = new double[LAGS];
        int spells = 0;
        for (int d = 0; d < DAYS; d++) {
            if (growing[d] < 0) {
                continue;
            }
            push(back, growing[d]);
            if (d == 0) {
                back[1] = growing[d];
                back[2] = growing[d];
            }
            double recent = back[0] + back[1] + back[2];
            double earlier = back[EARLIER] + back[EARLIER + 1] + back[EARLIER + 2];
            if (recent >= limit) {
                spells++;
            }
            double reached = plant.leafDays() * d
                    + plant.leafEvents() * spells
                    + plant.leafRecent() * recent
                    + plant.leafEarlier() * earlier;
            if (reached >= score) {
                return d + 1 + plant.leafDelayDays();
            }
        }
        return 0;
    }

    private int bloom(SpringPlant plant, double[] growing, int leaf) {
        double sum = 0;
        for (int d = leaf - 1; d < DAYS; d++) {
            if (growing[d] < 0) {
                continue;
            }
            sum += growing[d];
            if (plant.bloomDays() * (d + 1 - leaf) + plant.bloomHours() * sum >= score) {
                return d + 1;
            }
        }
        return 0;
    }

    private static void push(double[] back, double value) {
        System.arraycopy(back, 0, back, 1, back.length - 1);
        back[0] = value;
    }

    /** Gives gaps the mean of their block; false when a block holds too little. */
    private static boolean fill(double[] values) {
        for (int from = 0; from < DAYS; from += BLOCK) {
            double sum = 0;
            int count = 0;
            int zeros = 0;
            for (int d = from; d < from + BLOCK; d++) {
                if (!Double.isNaN(values[d])) {
                    sum += values[d];
                    count++;
                    zeros += values[d] == 0 ? 1 : 0;
                }
            }
            if (count < FEWEST_IN_BLOCK || zeros > MOST_ZEROS) {
                return false;
            }
            for (int d = from; d < from + BLOCK; d++) {
                values[d] = Double.isNaN(values[d]) ? sum / count : values[d];
            }
        }
        return true;
    }

    /** A day's highest is not below yesterday's lowest, nor its lowest above yesterday's highest. */
    private static void smooth(double[] low, double[] high) {
        for (int d = 1; d < DAYS; d++) {
            high[d] = Math.max(high[d], low[d - 1]);
            low[d] = Math.min(low[d], high[d - 1]);
        }
    }
}
