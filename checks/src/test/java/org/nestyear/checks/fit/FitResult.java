package org.nestyear.checks.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;
import org.nestyear.checks.fit.FitData.Group;
import org.nestyear.checks.fit.JointFit.Optimum;
import org.nestyear.checks.fit.Likelihood.Dispersion;

/** Everything the full fit finds; a few minutes of work. */
final class FitResult {
    /** Fall of twice the log-likelihood that bounds a 95 % range of one value (χ², one degree of freedom). */
    static final double RANGE = 3.84;
    /** The same for all 15 values together (χ², 15 degrees of freedom). */
    static final double JOINT_RANGE = 25.00;

    /** What the catalogue held before: a prototype's values, four needs refitted (decision 3). The first start. */
    static final double[] FORMER = {
        0.063, 147.5, 131.8, 105.8, 100.1, 0.085, 0.076, 9.77, 9.19, 3.91, 168, 50, 0.64, 0.86, 160
    };

    /** Where the search of another program ended, not kept: females that lacked cold, with a quick gate. */
    private static final double[] ELSEWHERE = {
        0.0648, 158.9, 133.0, 116.1, 102.2, 0.080, 0.084, 11.71, 9.80, 4.37, 26.6, 34.4, 0.99, 0.83, 149.6
    };

    private static final double[] FIELD_READINESS = {120, 130, 140, 145, 150, 155, 160, 170, 180, 200};
    /** Rounds after which the dispersion no longer moves to speak of. */
    private static final int ROUNDS = 3;
    /** A standard error is a fall of half a unit; the 95 % range reaches so many of them. */
    private static final double REACH = 1.96;

    /** A profile walks so many standard errors at a time, until the fall passes the limit. */
    private static final double PROFILE_STEP = 0.9;
    /** Each of its steps is longer than the one before by twice this share of the first. */
    private static final double STRETCH = 0.125;

    private static final double LEAST_SHARE = 0.2;
    private static final double MARGIN_C = 0.3;
    private static final int MOST_PROFILE_STEPS = 8;

    /**
     * A value held at one place.
     *
     * @param fall twice the log-likelihood lost against the joint fit when all others are fitted anew
     * @param end where they ended
     */
    record Point(double at, double fall, Optimum end) {}

    /** The two optima, each fitted anew under the same dispersion. */
    record Pair(Dispersion dispersion, Optimum first, Optimum second) {
        Optimum better() {
            return first.logLikelihood() >= second.logLikelihood() ? first : second;
        }
    }

    /** Lowest and highest value that 95 % confidence leaves. */
    record Range(double low, double high) {}

    private final Likelihood likelihood;
    private final Dispersion dispersion;
    private final Optimum joint;
    private final Pair underFirst;
    private final Pair underSecond;
    private final double[] otherStarts;
    private final Map<Fitted, List<Point>> profiles = new EnumMap<>(Fitted.class);
    private final Range cornutaFemales;
    private final Range cornutaMales;
    private final Map<Fitted, Range> ranges = new EnumMap<>(Fitted.class);

    FitResult(Likelihood likelihood) {
        this.likelihood = likelihood;
        dispersion = ownDispersion(FORMER);
        underFirst = pair(dispersion);
        underSecond = pair(ownDispersion(ELSEWHERE));
        joint = underFirst.better();
        List<double[]> starts = otherStarts();
        otherStarts = new double[starts.size()];
        for (int i = 0; i < otherStarts.length; i++) {
            Optimum other = fit(starts.get(i), dispersion, g -> true);
            otherStarts[i] = other.logLikelihood();
        }
        RealMatrix covariance = JointFit.covariance(this::logLikelihood, joint.values());
        cornutaFemales = cornuta(Fitted.BASE_F, covariance);
        cornutaMales = cornuta(Fitted.BASE_M, covariance);
        // Both cores work; the answer does not hang on the order.
        profiles.putAll(Fitted.ALL.parallelStream()
                .collect(Collectors.toMap(f -> f, f -> profile(f, covariance.getColumn(f.at())))));
        profiles.forEach((f, profile) -> ranges.put(f, range(profile)));
    }

    /** The dispersion that a fit from this start leaves when it is weighed by that same dispersion. */
    private Dispersion ownDispersion(double[] start) {
        double[] values = start;
        Dispersion now = likelihood.dispersion(values);
        for (int round = 0; round < ROUNDS; round++) {
            values = fit(values, now, g -> true).values();
            now = likelihood.dispersion(values);
        }
        return now;
    }

    private Pair pair(Dispersion weights) {
        return new Pair(weights, fit(FORMER, weights, g -> true), fit(ELSEWHERE, weights, g -> true));
    }

    /** The gate base of O. cornuta, which never reaches down to a cold store's temperature. */
    private Range cornuta(Fitted base, RealMatrix covariance) {
        int b = base.at();
        int o = Fitted.OFFSET.at();
        double value = base.in(joint.values()) - Fitted.OFFSET.in(joint.values());
        double reach = REACH
                * Math.sqrt(covariance.getEntry(b, b) + covariance.getEntry(o, o) - 2 * covariance.getEntry(b, o));
        return new Range(Math.max(Likelihood.FRIDGE_C, value - reach), value + reach);
    }

    /** Low bases with large needs and a flat readiness, and the opposite. */
    private static List<double[]> otherStarts() {
        List<double[]> starts = new ArrayList<>();
        for (int sign = -1; sign <= 1; sign += 2) {
            double[] start = FORMER.clone();
            start[Fitted.SLOPE.at()] += sign * 0.01;
            start[Fitted.BASE_F.at()] += sign * 1.5;
            start[Fitted.BASE_M.at()] += sign * 1.5;
            start[Fitted.WARMTH_F.at()] *= sign < 0 ? 1.5 : 0.6;
            start[Fitted.WARMTH_M.at()] *= sign < 0 ? 1.5 : 0.6;
            start[Fitted.OFFSET.at()] += sign * 0.5;
            starts.add(start);
        }
        return starts;
    }

    private Optimum fit(double[] start, Dispersion weights, Predicate<Group> data) {
        return JointFit.search(v -> likelihood.of(v, weights, data), start, JointFit.allBut());
    }

    double logLikelihood(double[] values) {
        return likelihood.of(values, dispersion, g -> true);
    }

    /**
     * Moves a value away from the top until the fall passes the limit beyond the second optimum too. The others start as
     * the curvature at the top says, and again from the second optimum; the better end counts.
     */
    private List<Point> profile(Fitted held, double[] covariances) {
        double top = held.in(joint.values());
        double second = held.in(other().values());
        Map<Double, Optimum> found = new TreeMap<>();
        found.put(top, joint);
        if (held == Fitted.FIELD_READINESS) {
            for (double at : FIELD_READINESS) {
                found.put(at, heldAt(held, at, covariances));
            }
            return toProfile(found);
        }
        found.put(second, heldAt(held, second, covariances));
        double width = Math.sqrt(covariances[held.at()]) / top;
        for (int side = -1; side <= 1; side += 2) {
            double fall = 0;
            double at = top;
            for (int i = 1; i <= MOST_PROFILE_STEPS && (fall <= RANGE || side * (second - at) > 0); i++) {
                // Counting in shares: a warmth need cannot fall below zero.
                at = top * Math.exp(side * i * (1 + STRETCH * (i - 1)) * PROFILE_STEP * width);
                Optimum end = heldAt(held, at, covariances);
                found.put(at, end);
                fall = 2 * (joint.logLikelihood() - end.logLikelihood());
            }
        }
        return toProfile(found);
    }

    private Optimum other() {
        return joint == underFirst.first() ? underFirst.second() : underFirst.first();
    }

    private Optimum heldAt(Fitted held, double at, double[] covariances) {
        double[] near = joint.values().clone();
        double away = (at - held.in(near)) / covariances[held.at()];
        for (int j = 0; j < near.length; j++) {
            near[j] += away * covariances[j];
        }
        near[held.at()] = at;
        keepAllowed(near, held);
        double[] far = other().values().clone();
        boolean towards = (at - held.in(joint.values())) * (held.in(far) - held.in(joint.values())) > 0;
        far[held.at()] = at;
        keepAllowed(far, held);
        // On the far side of the first optimum the second is no neighbour.
        return better(this::logLikelihood, towards ? List.of(near, far) : List.of(near), JointFit.allBut(held));
    }

    /** Brings a start back to where no value is near zero and no gate base as cold as a fridge, the held value kept. */
    private void keepAllowed(double[] start, Fitted held) {
        for (int i = 0; i < start.length; i++) {
            if (i != held.at()) {
                start[i] = Math.max(start[i], LEAST_SHARE * joint.values()[i]);
            }
        }
        for (Fitted base : List.of(Fitted.BASE_F, Fitted.BASE_M)) {
            double below = Likelihood.FRIDGE_C + MARGIN_C - (base.in(start) - Fitted.OFFSET.in(start));
            if (below > 0) {
                start[(held == Fitted.OFFSET ? base : Fitted.OFFSET).at()] += held == Fitted.OFFSET ? below : -below;
            }
        }
    }

    private List<Point> toProfile(Map<Double, Optimum> found) {
        return found.entrySet().stream()
                .map(e -> new Point(
                        e.getKey(), 2 * (joint.logLikelihood() - e.getValue().logLikelihood()), e.getValue()))
                .toList();
    }

    /** Where the fall last crosses the limit on either side, straight lines between the roots of the falls. */
    static Range range(List<Point> profile) {
        int top = IntStream.range(0, profile.size())
                .reduce((a, b) -> profile.get(b).fall() < profile.get(a).fall() ? b : a)
                .orElseThrow();
        return new Range(crossing(profile, top, -1), crossing(profile, top, 1));
    }

    private static double crossing(List<Point> profile, int top, int direction) {
        double limit = Math.sqrt(RANGE);
        int inside = direction < 0 ? 0 : profile.size() - 1;
        while (inside != top && profile.get(inside).fall() > RANGE) {
            inside -= direction;
        }
        int outside = inside + direction;
        if (outside < 0 || outside == profile.size()) {
            // Walked to next to nothing, or without end.
            return direction < 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        Point here = profile.get(inside);
        Point next = profile.get(outside);
        double from = Math.sqrt(Math.max(0, here.fall()));
        double to = Math.sqrt(next.fall());
        return here.at() + (limit - from) / (to - from) * (next.at() - here.at());
    }

    private static Optimum better(ToDoubleFunction<double[]> objective, List<double[]> starts, int[] free) {
        return starts.stream()
                .map(start -> JointFit.search(objective, start, free))
                .max(Comparator.comparingDouble(Optimum::logLikelihood))
                .orElseThrow();
    }

    private List<double[]> bothOptima() {
        return List.of(joint.values(), other().values());
    }

    /** Fit without a winter; the readiness of the field's cocoons is fitted with it. */
    double[] fitWithout(String winter) {
        return better(
                        v -> likelihood.of(v, dispersion, g -> !g.place().equals(winter)),
                        bothOptima(),
                        JointFit.allBut())
                .values();
    }

    /** Fit to the winters alone; the readiness of the field's cocoons, which they cannot tell, as in the joint fit. */
    double[] fitToWinters() {
        double readiness = Fitted.FIELD_READINESS.in(joint.values());
        List<double[]> starts = bothOptima().stream().map(double[]::clone).toList();
        starts.forEach(start -> start[Fitted.FIELD_READINESS.at()] = readiness);
        return better(
                        v -> likelihood.of(v, dispersion, g -> !g.isField()),
                        starts,
                        JointFit.allBut(Fitted.FIELD_READINESS))
                .values();
    }

    /** Gate fitted to the field alone, all else as in the joint fit. */
    double[] gateFromField() {
        return JointFit.search(
                        v -> likelihood.of(v, dispersion, Group::isField),
                        joint.values(),
                        JointFit.only(
                                Fitted.BASE_F,
                                Fitted.BASE_M,
                                Fitted.WARMTH_F,
                                Fitted.WARMTH_M,
                                Fitted.WARMTH_SPREAD_F,
                                Fitted.WARMTH_SPREAD_M,
                                Fitted.FIELD_READINESS))
                .values();
    }

    /** The way of decision 3 on some winters: only the four readiness needs, to the group means, all else held. */
    double[] needsToMeans(List<String> winters) {
        return JointFit.search(
                        v -> {
                            double error = likelihood.errorOfMeans(v, winters);
                            return -error * error;
                        },
                        FORMER,
                        JointFit.only(
                                Fitted.NEED_BICORNIS_F,
                                Fitted.NEED_BICORNIS_M,
                                Fitted.NEED_CORNUTA_F,
                                Fitted.NEED_CORNUTA_M))
                .values();
    }

    Likelihood likelihood() {
        return likelihood;
    }

    Dispersion dispersion() {
        return dispersion;
    }

    Optimum joint() {
        return joint;
    }

    double[] endsOfOtherStarts() {
        return otherStarts;
    }

    Map<Fitted, List<Point>> profiles() {
        return profiles;
    }

    Map<Fitted, Range> ranges() {
        return ranges;
    }

    Range cornutaFemales() {
        return cornutaFemales;
    }

    Range cornutaMales() {
        return cornutaMales;
    }

    /** The optima under the dispersion of the joint fit. */
    Pair underFirst() {
        return underFirst;
    }

    /** The optima under the dispersion that the second of them leaves. */
    Pair underSecond() {
        return underSecond;
    }
}
