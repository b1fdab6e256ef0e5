package org.nestyear.checks.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;
import org.nestyear.checks.fit.FitData.Group;
import org.nestyear.checks.fit.JointFit.Optimum;
import org.nestyear.checks.fit.Likelihood.Dispersion;

/** Everything the full fit finds; a few minutes of work. */
final class FitResult {
    /** Fall of twice the log-likelihood that bounds a 95 % range of one value (χ², one degree of freedom). */
    static final double RANGE = 3.84;
    /** The same for all 14 values together (χ², 14 degrees of freedom). */
    static final double JOINT_RANGE = 23.68;

    private static final double[] FIELD_READINESS = {120, 130, 140, 150, 160, 180, 200};
    /** Rounds after which the dispersion no longer moves in its second decimal. */
    private static final int ROUNDS = 4;
    /** A standard error is a fall of half a unit; the 95 % range reaches so many of them. */
    private static final double REACH = 1.96;

    /** A profile walks so many standard errors at a time, until the fall passes the limit. */
    private static final double PROFILE_STEP = 0.9;

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

    /** Lowest and highest value that 95 % confidence leaves. */
    record Range(double low, double high) {}

    private final Likelihood likelihood;
    private final Dispersion dispersion;
    private final Optimum joint;
    private final double[] otherStarts;
    private final Map<Fitted, List<Point>> profiles = new EnumMap<>(Fitted.class);
    private final Range cornutaFemales;
    private final Range cornutaMales;
    private final Map<Fitted, Range> ranges = new EnumMap<>(Fitted.class);
    private final List<Point> fieldReadiness;

    FitResult(Likelihood likelihood) {
        this.likelihood = likelihood;
        double[] values = Fitted.catalogue();
        Dispersion now = likelihood.dispersion(values);
        for (int round = 0; round < ROUNDS; round++) {
            values = fit(values, now, g -> true).values();
            now = likelihood.dispersion(values);
        }
        dispersion = now;
        Optimum best = fit(values, dispersion, g -> true);
        List<double[]> starts = otherStarts();
        otherStarts = new double[starts.size()];
        for (int i = 0; i < otherStarts.length; i++) {
            Optimum other = fit(starts.get(i), dispersion, g -> true);
            otherStarts[i] = other.logLikelihood();
            best = other.logLikelihood() > best.logLikelihood() ? other : best;
        }
        joint = best;
        RealMatrix covariance = JointFit.covariance(this::logLikelihood, joint.values());
        cornutaFemales = cornuta(Fitted.BASE_F, covariance);
        cornutaMales = cornuta(Fitted.BASE_M, covariance);
        for (Fitted f : Fitted.ALL) {
            List<Point> profile = profile(f, covariance.getColumn(f.at()));
            profiles.put(f, profile);
            ranges.put(f, range(profile));
        }
        fieldReadiness = profileOfFieldReadiness();
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
            double[] start = Fitted.catalogue();
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
        return JointFit.search(
                v -> likelihood.of(v, Likelihood.FIELD_READINESS, weights, data), start, JointFit.allBut());
    }

    double logLikelihood(double[] values) {
        return likelihood.of(values, Likelihood.FIELD_READINESS, dispersion, g -> true);
    }

    /** Moves a value away from the top, the others first as the curvature there says, then as the search finds. */
    private List<Point> profile(Fitted held, double[] covariances) {
        Map<Double, Optimum> found = new TreeMap<>();
        double top = held.in(joint.values());
        double variance = covariances[held.at()];
        found.put(top, joint);
        for (int side = -1; side <= 1; side += 2) {
            double fall = 0;
            for (int i = 1; i <= MOST_PROFILE_STEPS && fall <= RANGE; i++) {
                // Counting in shares: a warmth need cannot fall below zero.
                double at = top * Math.exp(side * i * PROFILE_STEP * Math.sqrt(variance) / top);
                double[] start = joint.values().clone();
                for (int j = 0; j < start.length; j++) {
                    start[j] += (at - top) * covariances[j] / variance;
                }
                keepAllowed(start, held);
                Optimum end = JointFit.search(this::logLikelihood, start, JointFit.allBut(held));
                found.put(at, end);
                fall = 2 * (joint.logLikelihood() - end.logLikelihood());
            }
        }
        return toProfile(found);
    }

    /** Brings a start back to where no value is near zero and no gate base as cold as a fridge, the held value kept. */
    private void keepAllowed(double[] start, Fitted held) {
        for (int i = 0; i < start.length; i++) {
            start[i] = Math.max(start[i], LEAST_SHARE * joint.values()[i]);
        }
        for (Fitted base : List.of(Fitted.BASE_F, Fitted.BASE_M)) {
            double below = Likelihood.FRIDGE_C + MARGIN_C - (base.in(start) - Fitted.OFFSET.in(start));
            if (below > 0) {
                start[(held == Fitted.OFFSET ? base : Fitted.OFFSET).at()] += held == Fitted.OFFSET ? below : -below;
            }
        }
    }

    private List<Point> profileOfFieldReadiness() {
        Map<Double, Optimum> found = new TreeMap<>();
        for (double at : FIELD_READINESS) {
            found.put(
                    at,
                    JointFit.search(
                            v -> likelihood.of(v, at, dispersion, g -> true), joint.values(), JointFit.allBut()));
        }
        return toProfile(found);
    }

    private List<Point> toProfile(Map<Double, Optimum> found) {
        return found.entrySet().stream()
                .map(e -> new Point(
                        e.getKey(), 2 * (joint.logLikelihood() - e.getValue().logLikelihood()), e.getValue()))
                .toList();
    }

    /** Where the fall crosses the limit on either side, straight lines between the roots of the falls. */
    static Range range(List<Point> profile) {
        int top = IntStream.range(0, profile.size())
                .reduce((a, b) -> profile.get(b).fall() < profile.get(a).fall() ? b : a)
                .orElseThrow();
        return new Range(crossing(profile, top, -1), crossing(profile, top, 1));
    }

    private static double crossing(List<Point> profile, int top, int direction) {
        double limit = Math.sqrt(RANGE);
        for (int i = top; i + direction >= 0 && i + direction < profile.size(); i += direction) {
            Point here = profile.get(i);
            Point next = profile.get(i + direction);
            double from = Math.sqrt(Math.max(0, here.fall()));
            double to = Math.sqrt(Math.max(0, next.fall()));
            if (to >= limit) {
                return here.at() + (limit - from) / (to - from) * (next.at() - here.at());
            }
        }
        return direction < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    /** Fit without the data that fail the test. */
    double[] fitTo(Predicate<Group> data) {
        return fit(joint.values(), dispersion, data).values();
    }

    /** Gate fitted to the field alone, all else as in the joint fit. */
    double[] gateFromField() {
        return JointFit.search(
                        v -> likelihood.of(v, Likelihood.FIELD_READINESS, dispersion, Group::isField),
                        joint.values(),
                        JointFit.only(
                                Fitted.BASE_F,
                                Fitted.BASE_M,
                                Fitted.WARMTH_F,
                                Fitted.WARMTH_M,
                                Fitted.WARMTH_SPREAD_F,
                                Fitted.WARMTH_SPREAD_M))
                .values();
    }

    /** The way of decision 3 on some winters: only the four readiness needs, to the group means, all else held. */
    double[] needsToMeans(List<String> winters) {
        return JointFit.search(
                        v -> {
                            double error = likelihood.errorOfMeans(v, winters);
                            return -error * error;
                        },
                        Fitted.catalogue(),
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

    List<Point> fieldReadiness() {
        return fieldReadiness;
    }
}
