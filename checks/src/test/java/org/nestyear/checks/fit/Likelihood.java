package org.nestyear.checks.fit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.nestyear.checks.fit.FitData.Group;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.species.Sex;

/**
 * How likely the data are under values of the clock. Each data set's log-likelihood is divided by its dispersion (Pearson
 * χ² per degree of freedom at the fit), because bees of one box, one cabinet and one spring are not independent and the
 * clock is not exact: 1,200 bees at a site weigh like far fewer.
 */
final class Likelihood {
    /** Share of bees that the clock does not explain, spread evenly over the days: one odd bee must not rule the fit. */
    private static final double ODD = 0.01;
    /** Expected bees below which neighbouring intervals are counted together in χ². */
    private static final double LEAST_EXPECTED = 5;
    /** Cost of a day, or of a degree, beyond a constraint; squared. Large against the data's say. */
    private static final double PENALTY = 1000;

    private static final int WARM_DAYS = 60;
    private static final int GRID = 11;
    /** O. lignaria males, 20 °C after so many days at so many °C: mean emergence within 5 d (cases C01 to C05). */
    private static final double[][] TRIALS = {{150, 0}, {150, 4}, {150, 7}, {210, 0}, {210, 4}, {270, 0}, {270, 4}};

    private static final double TRIAL_DAYS = 5;
    private static final double TRIAL_WARMTH_C = 20;
    /** No bee leaves its cocoon in a fridge up to this temperature, °C. */
    static final double FRIDGE_C = 4;

    /** What χ² per degree of freedom divides the two data sets' log-likelihoods by. */
    record Dispersion(double winters, double field) {
        double of(Group group) {
            return group.isField() ? field : winters;
        }
    }

    private final FitData data;
    private final Map<String, EmergenceSettings> catalogue = new HashMap<>();
    private final EmergenceSettings lignariaMales = EmergenceSettings.of(Fitted.table("Osmia lignaria"), Sex.MALE);

    Likelihood(FitData data) {
        this.data = data;
        for (String species : FitData.SPECIES) {
            for (Sex sex : Sex.values()) {
                catalogue.put(species + sex, EmergenceSettings.of(Fitted.table(species), sex));
            }
        }
    }

    FitData data() {
        return data;
    }

    EmergenceSettings settings(double[] values, String species, Sex sex) {
        EmergenceSettings rest = catalogue.get(species + sex);
        if (rest == null) {
            throw new IllegalArgumentException("no clock of " + species);
        }
        return Fitted.settings(values, species, sex, rest);
    }

    /** Share of bees out by the start of each day, for each group that is asked for. */
    Map<Group, double[]> curves(double[] values, Predicate<Group> wanted) {
        Map<Group, double[]> curves = new HashMap<>();
        Map<String, ThermalSums> readiness = new HashMap<>();
        EmergenceSettings any = settings(values, FitData.SPECIES.get(0), Sex.FEMALE);
        for (Group group : data.groups()) {
            if (wanted.test(group)) {
                EmergenceSettings settings = settings(values, group.species(), group.sex());
                double[] hours = data.hours(group.place());
                ThermalSums sums = readiness
                        .computeIfAbsent(group.place(), p -> ThermalSums.ofHours(any, hours))
                        .ofOtherSex(any, settings, hours);
                curves.put(
                        group, ShareOut.byDay(settings, sums, group.isField() ? Fitted.FIELD_READINESS.in(values) : 0));
            }
        }
        return curves;
    }

    /**
     * Probability of each interval of a group, the odd bees included. In the winters of all bees; in the field of those
     * that come out within the weeks of weather, since a tenth of the cocoons never opened.
     */
    private static double[] probabilities(Group group, double[] curve) {
        int last = curve.length - 1;
        double all = group.isField() ? Math.max(curve[last], 1e-12) : 1;
        double[] p = new double[group.ends().length];
        int from = 0;
        for (int i = 0; i < p.length; i++) {
            int to = group.ends()[i];
            p[i] = (1 - ODD) * (curve[to] - curve[from]) / all + ODD * (to - from) / last;
            from = to;
        }
        return p;
    }

    /** Log-likelihood of some groups over their dispersion, less the cost of broken constraints. */
    double of(double[] values, Dispersion dispersion, Predicate<Group> wanted) {
        double sum = -penalty(values);
        for (Map.Entry<Group, double[]> entry : curves(values, wanted).entrySet()) {
            Group group = entry.getKey();
            double[] p = probabilities(group, entry.getValue());
            double log = 0;
            for (int i = 0; i < p.length; i++) {
                if (group.counts()[i] > 0) {
                    log += group.counts()[i] * Math.log(p[i]);
                }
            }
            sum += log / dispersion.of(group);
        }
        return sum;
    }

    /** Pearson's χ² per degree of freedom of the two data sets at these values, at least 1. */
    Dispersion dispersion(double[] values) {
        double[] chi = new double[2];
        double[] freedom = new double[2];
        curves(values, g -> true).forEach((group, curve) -> {
            double[] p = probabilities(group, curve);
            int at = group.isField() ? 1 : 0;
            double expected = 0;
            double observed = 0;
            double n = group.bees();
            for (int i = 0; i < p.length; i++) {
                expected += n * p[i];
                observed += group.counts()[i];
                if (expected >= LEAST_EXPECTED || i == p.length - 1) {
                    // A remainder at the end may expect next to nothing; one bee there must not make the whole χ².
                    double scale = Math.max(expected, 1);
                    chi[at] += (observed - expected) * (observed - expected) / scale;
                    freedom[at]++;
                    expected = 0;
                    observed = 0;
                }
            }
            freedom[at]--;
        });
        return new Dispersion(Math.max(1, chi[0] / freedom[0]), Math.max(1, chi[1] / freedom[1]));
    }

    /** Zero where the published constant-temperature cases and the cold store hold, rising with the breach squared. */
    double penalty(double[] values) {
        double coldest =
                Math.min(Fitted.BASE_F.in(values), Fitted.BASE_M.in(values)) - Math.max(0, Fitted.OFFSET.in(values));
        double cost = squared(FRIDGE_C - coldest);
        double slowest = Arrays.stream(TRIALS)
                .mapToDouble(t -> meanOfTrial(values, t[0], t[1]))
                .max()
                .orElseThrow();
        return PENALTY * (cost + squared(slowest - TRIAL_DAYS));
    }

    private static double squared(double beyond) {
        return beyond > 0 ? beyond * beyond : 0;
    }

    /** Mean days to emergence of O. lignaria males in the warmth: own needs, the fitted slope, gate and spreads. */
    double meanOfTrial(double[] values, double days, double coldC) {
        EmergenceSettings gate = settings(values, FitData.SPECIES.get(0), Sex.MALE);
        EmergenceSettings males = new EmergenceSettings(
                gate.slope(),
                gate.referenceC(),
                gate.capC(),
                lignariaMales.need(),
                gate.spread(),
                gate.gateBaseC(),
                gate.gateNeed(),
                gate.gateSpread(),
                gate.gateCapC());
        ThermalSums sums = ThermalSums.constant(males, TRIAL_WARMTH_C, WARM_DAYS);
        double[] times = new EmergenceClock(males, GRID).times(sums, Storage.cold(males, coldC, days, 0));
        return Arrays.stream(times)
                .map(t -> Math.min(Math.max(t, 0), WARM_DAYS))
                .average()
                .orElseThrow();
    }

    /** Mean day index of emergence under a curve, of the bees that come out at all; a bee counts on its whole day. */
    static double mean(double[] curve) {
        double sum = 0;
        for (int d = 1; d < curve.length; d++) {
            sum += (d - 1) * (curve[d] - curve[d - 1]);
        }
        return sum / curve[curve.length - 1];
    }

    /** Mean day index on which a winter's bees were found. */
    static double observedMean(Group group) {
        double sum = 0;
        for (int d = 0; d < group.counts().length; d++) {
            sum += d * group.counts()[d];
        }
        return sum / group.bees();
    }

    /** Root mean square of the differences between computed and observed mean days, over these winters. */
    double errorOfMeans(double[] values, List<String> winters) {
        return Math.sqrt(curves(values, g -> winters.contains(g.place())).entrySet().stream()
                .mapToDouble(e -> mean(e.getValue()) - observedMean(e.getKey()))
                .map(e -> e * e)
                .average()
                .orElseThrow());
    }

    /** Mean absolute difference of the share out at the checks of a site, points of 100. */
    static double errorOfShares(Group group, double[] curve) {
        double counted = 0;
        double sum = 0;
        for (int i = 0; i < group.ends().length; i++) {
            counted += group.counts()[i];
            sum += Math.abs(curve[group.ends()[i]] / curve[curve.length - 1] - counted / group.bees());
        }
        return 100 * sum / group.ends().length;
    }
}
