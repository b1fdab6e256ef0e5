package org.nestyear.core.sexing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One or two normal groups fitted to sizes by expectation and maximisation (Dempster, Laird and Rubin 1977, J. R. Stat. Soc.
 * B 39:1), for ranges between sieves after McLachlan and Jones 1988, Biometrics 44:571.
 *
 * @param groups small sizes first
 * @param logLikelihood natural logarithm of the likelihood
 * @param parameters numbers that were fitted
 * @param cocoons how many the fit rests on
 */
public record GroupFit(List<Group> groups, double logLikelihood, int parameters, double cocoons) {
    /** Gain of the log likelihood at which the steps end; numerical. */
    private static final double ENOUGH = 1e-9;
    /** Most steps of a fit; numerical. */
    private static final int STEPS = 5000;
    /** Narrowest group as a share of all sizes' spread, against spikes on a few equal sizes; numerical. */
    private static final double NARROWEST = 0.1;
    /** Least chance of a size, against the logarithm of nothing; numerical. */
    private static final double LEAST = 1e-300;
    /** Shares of small cocoons from which the fits start; numerical. */
    private static final double[] STARTS = {0.2, 0.35, 0.5, 0.65, 0.8};
    /** Part of the spread of all that a group has at the start; numerical. */
    private static final double START_SD = 0.6;

    public GroupFit {
        groups = List.copyOf(groups);
    }

    /** Schwarz's criterion (1978, Ann. Stat. 6:461), parameters × ln cocoons − 2 × log likelihood: lower is better. */
    public double bic() {
        return parameters * Math.log(cocoons) - 2 * logLikelihood;
    }

    /** Chance that a cocoon of this size belongs to the group of large ones, 0 to 1. */
    public double large(Sized sized) {
        double small = groups.get(0).mass(sized);
        double large = groups.get(groups.size() - 1).mass(sized);
        if (small + large < LEAST) {
            double size = sized.from() > Double.NEGATIVE_INFINITY ? sized.from() : sized.to();
            return size > groups.get(0).mean() ? 1 : 0;
        }
        return large / (small + large);
    }

    /** Expected number in the group of large ones. */
    public double large(List<Sized> sizes) {
        return sizes.stream().mapToDouble(s -> s.count() * large(s)).sum();
    }

    /**
     * One group.
     *
     * @throws IllegalArgumentException if the sizes do not differ
     */
    public static GroupFit one(List<Sized> sizes) {
        Group all = whole(sizes);
        return improve(sizes, List.of(all), true, all.sd() * NARROWEST, STEPS);
    }

    /**
     * Two groups, the best of several starts.
     *
     * @param equalSpread true when both groups have one standard deviation
     * @throws IllegalArgumentException if the sizes do not differ
     */
    public static GroupFit two(List<Sized> sizes, boolean equalSpread) {
        Group all = whole(sizes);
        List<GroupFit> fits = new ArrayList<>();
        for (double share : STARTS) {
            double spread = all.sd() / Math.sqrt(share * (1 - share)) / 2;
            List<Group> start = List.of(
                    new Group(all.mean() - 2 * spread * (1 - share), all.sd() * START_SD, share),
                    new Group(all.mean() + 2 * spread * share, all.sd() * START_SD, 1 - share));
            fits.add(improve(sizes, start, equalSpread, all.sd() * NARROWEST, STEPS));
        }
        return fits.stream()
                .max(Comparator.comparingDouble(GroupFit::logLikelihood))
                .orElseThrow();
    }

    /** The same groups fitted to other sizes from here, in at most so many steps. */
    GroupFit again(List<Sized> sizes, boolean equalSpread, int steps) {
        return improve(sizes, groups, equalSpread, whole(sizes).sd() * NARROWEST, steps);
    }

    private static Group whole(List<Sized> sizes) {
        double count = 0;
        double sum = 0;
        double squares = 0;
        for (Sized s : sizes) {
            double size = middle(s);
            count += s.count();
            sum += s.count() * size;
            squares += s.count() * size * size;
        }
        double mean = sum / count;
        double variance = squares / count - mean * mean;
        if (!(variance > 0)) {
            throw new IllegalArgumentException("sizes that do not differ show no groups");
        }
        return new Group(mean, Math.sqrt(variance), 1);
    }

    private static double middle(Sized s) {
        if (s.from() == Double.NEGATIVE_INFINITY) {
            return s.to();
        }
        return s.to() == Double.POSITIVE_INFINITY ? s.from() : (s.from() + s.to()) / 2;
    }

    private static GroupFit improve(
            List<Sized> sizes, List<Group> start, boolean equalSpread, double narrowest, int steps) {
        List<Group> groups = start;
        double before = Double.NEGATIVE_INFINITY;
        double likelihood = logLikelihood(sizes, groups);
        for (int i = 0; i < steps && likelihood - before > ENOUGH; i++) {
            groups = step(sizes, groups, equalSpread, narrowest);
            before = likelihood;
            likelihood = logLikelihood(sizes, groups);
        }
        List<Group> inOrder = new ArrayList<>(groups);
        inOrder.sort(Comparator.comparingDouble(Group::mean));
        int spreads = equalSpread ? 1 : groups.size();
        double cocoons = sizes.stream().mapToDouble(Sized::count).sum();
        return new GroupFit(inOrder, likelihood, groups.size() * 2 - 1 + spreads, cocoons);
    }

    private static double logLikelihood(List<Sized> sizes, List<Group> groups) {
        double sum = 0;
        for (Sized s : sizes) {
            sum += s.count() * Math.log(Math.max(LEAST, mass(s, groups)));
        }
        return sum;
    }

    private static double mass(Sized sized, List<Group> groups) {
        double mass = 0;
        for (Group group : groups) {
            mass += group.mass(sized);
        }
        return mass;
    }

    private static List<Group> step(List<Sized> sizes, List<Group> groups, boolean equalSpread, double narrowest) {
        double all = 0;
        double together = 0;
        double[] mine = new double[groups.size()];
        double[] mean = new double[groups.size()];
        double[] squares = new double[groups.size()];
        double[][] parts = parts(sizes, groups);
        for (int k = 0; k < mine.length; k++) {
            Group group = groups.get(k);
            for (int i = 0; i < sizes.size(); i++) {
                mine[k] += parts[k][i];
                mean[k] += parts[k][i] > 0 ? parts[k][i] * group.meanWithin(sizes.get(i)) : 0;
            }
            mean[k] = mine[k] > 0 ? mean[k] / mine[k] : group.mean();
            for (int i = 0; i < sizes.size(); i++) {
                squares[k] += parts[k][i] > 0 ? parts[k][i] * group.squareWithin(sizes.get(i), mean[k]) : 0;
            }
            all += mine[k];
            together += squares[k];
        }
        List<Group> next = new ArrayList<>();
        for (int k = 0; k < mine.length; k++) {
            double variance = equalSpread ? together / all : squares[k] / Math.max(mine[k], LEAST);
            next.add(new Group(mean[k], Math.max(narrowest, Math.sqrt(variance)), Math.min(1, mine[k] / all)));
        }
        return next;
    }

    /** How much of each size belongs to each group. */
    private static double[][] parts(List<Sized> sizes, List<Group> groups) {
        double[][] parts = new double[groups.size()][sizes.size()];
        for (int i = 0; i < sizes.size(); i++) {
            double sum = 0;
            for (int k = 0; k < parts.length; k++) {
                parts[k][i] = groups.get(k).mass(sizes.get(i));
                sum += parts[k][i];
            }
            for (int k = 0; k < parts.length; k++) {
                parts[k][i] = sum < LEAST ? 0 : sizes.get(i).count() * parts[k][i] / sum;
            }
        }
        return parts;
    }
}
