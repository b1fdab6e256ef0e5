package org.nestyear.core.sexing;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.Erf;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.Quantiles;

/**
 * How many females a lot holds.
 *
 * @param females expected number
 * @param low lower end of the 90 % interval
 * @param high upper end of the 90 % interval
 * @param groups males, then females
 * @param cut size at which either sex is as likely, in the unit of the measure
 * @param rightShare share of cocoons that the cut puts right if the groups are as they are
 * @param sureFemales cocoons that are female with more than the asked certainty
 * @param sureMales cocoons that are male with more than the asked certainty
 * @param unsure cocoons that cannot be told
 */
public record SexCount(
        double females,
        double low,
        double high,
        List<Group> groups,
        double cut,
        double rightShare,
        double sureFemales,
        double sureMales,
        double unsure) {
    /** Invented lots behind an interval; numerical. */
    private static final int LOTS = 300;
    /** Most steps of a fit to an invented lot; numerical. */
    private static final int STEPS = 60;
    /** Different sizes above which an invented lot is put into steps; numerical. */
    private static final int MANY = 200;
    /** Halvings that find the cut; numerical. */
    private static final int HALVINGS = 60;
    /** Tail left out at either end of a 90 % interval; numerical. */
    private static final double TAIL = 0.05;

    public SexCount {
        groups = List.copyOf(groups);
    }

    /**
     * By two groups found in the lot itself. The interval covers both forms of the groups, with one spread and with two,
     * because sizes alone hardly tell which is right and the numbers differ.
     *
     * @param sizes the lot
     * @param sure certainty from which a cocoon counts as told, above 0.5 and below 1
     * @param seed of the invented lots
     */
    public static SexCount byGroups(List<Sized> sizes, double sure, long seed) {
        GroupFit equal = GroupFit.two(sizes, true);
        GroupFit unequal = GroupFit.two(sizes, false);
        GroupFit best = equal.bic() <= unequal.bic() ? equal : unequal;
        double[] first = limits(sizes, equal, true, new Draws(seed));
        double[] second = limits(sizes, unequal, false, new Draws(seed));
        return count(sizes, best, sure, Math.min(first[0], second[0]), Math.max(first[1], second[1]));
    }

    /**
     * By what is known of the species.
     *
     * @param sizes the lot, of any number
     * @param known sizes of both sexes
     * @param sure certainty from which a cocoon counts as told, above 0.5 and below 1
     * @param seed of the invented lots
     */
    public static SexCount byKnown(List<Sized> sizes, KnownSexes known, double sure, long seed) {
        GroupFit fit = known.fit(sizes);
        Draws draws = new Draws(seed);
        double cocoons = fit.cocoons();
        double females = fit.large(sizes);
        double[] errors = new double[LOTS];
        for (int i = 0; i < LOTS; i++) {
            double f = draws.gamma(females + known.femaleShare() * known.worth());
            double m = draws.gamma(cocoons - females + (1 - known.femaleShare()) * known.worth());
            double shift = known.betweenLots() * draws.normal();
            List<Group> lot = List.of(
                    new Group(known.male().mean() + shift, known.male().sd(), m / (f + m)),
                    new Group(known.female().mean() + shift, known.female().sd(), f / (f + m)));
            Invented invented = Invented.of(lot, sizes, cocoons, draws);
            errors[i] = known.fit(invented.sizes()).large(invented.sizes()) - invented.females();
        }
        double[] limits = around(females, errors, cocoons);
        return count(sizes, fit, sure, limits[0], limits[1]);
    }

    private static double[] limits(List<Sized> sizes, GroupFit fit, boolean equal, Draws draws) {
        double[] errors = new double[LOTS];
        for (int i = 0; i < LOTS; i++) {
            Invented invented = Invented.of(fit.groups(), sizes, fit.cocoons(), draws);
            GroupFit again = fit.again(invented.sizes(), equal, STEPS);
            errors[i] = again.large(invented.sizes()) - invented.females();
        }
        return around(fit.large(sizes), errors, fit.cocoons());
    }

    private static double[] around(double females, double[] errors, double cocoons) {
        double low = females - Quantiles.of(errors, 1 - TAIL);
        double high = females - Quantiles.of(errors, TAIL);
        return new double[] {Math.min(females, Math.max(0, low)), Math.max(females, Math.min(cocoons, high))};
    }

    private static SexCount count(List<Sized> sizes, GroupFit fit, double sure, double low, double high) {
        double female = 0;
        double male = 0;
        for (Sized s : sizes) {
            double chance = fit.large(s);
            female += chance >= sure ? s.count() : 0;
            male += chance <= 1 - sure ? s.count() : 0;
        }
        Group males = fit.groups().get(0);
        Group females = fit.groups().get(1);
        double cut = cut(fit);
        double right = males.weight() * below((cut - males.mean()) / males.sd())
                + females.weight() * below((females.mean() - cut) / females.sd());
        double unsure = Math.max(0, fit.cocoons() - female - male);
        return new SexCount(fit.large(sizes), low, high, fit.groups(), cut, right, female, male, unsure);
    }

    private static double cut(GroupFit fit) {
        double below = fit.groups().get(0).mean();
        double above = fit.groups().get(1).mean();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (fit.large(Sized.of(middle)) < 1 - fit.large(Sized.of(middle))) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }

    private static double below(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }

    /** A lot drawn from groups, with its true females, measured as the real one was. */
    private record Invented(List<Sized> sizes, int females) {
        static Invented of(List<Group> groups, List<Sized> like, double cocoons, Draws draws) {
            double[] drawn = new double[(int) Math.round(cocoons)];
            int females = 0;
            for (int i = 0; i < drawn.length; i++) {
                boolean female = draws.uniform() < groups.get(1).weight();
                Group group = groups.get(female ? 1 : 0);
                females += female ? 1 : 0;
                drawn[i] = group.mean() + group.sd() * draws.normal();
            }
            boolean points = like.stream().allMatch(Sized::isPoint);
            return new Invented(points ? points(drawn) : sieved(drawn, like), females);
        }

        private static List<Sized> points(double[] drawn) {
            List<Sized> sizes = new ArrayList<>();
            if (drawn.length <= MANY) {
                for (double size : drawn) {
                    sizes.add(Sized.of(size));
                }
                return sizes;
            }
            double least = Quantiles.of(drawn, 0);
            double step = (Quantiles.of(drawn, 1) - least) / MANY;
            int[] counts = new int[MANY];
            for (double size : drawn) {
                counts[Math.min(MANY - 1, (int) ((size - least) / step))]++;
            }
            for (int i = 0; i < MANY; i++) {
                if (counts[i] > 0) {
                    double size = least + step * i + step / 2;
                    sizes.add(new Sized(size, size, counts[i]));
                }
            }
            return sizes;
        }

        /** What falls through all sieves counts with the smallest. */
        private static List<Sized> sieved(double[] drawn, List<Sized> like) {
            int[] counts = new int[like.size()];
            for (double size : drawn) {
                int k = 0;
                while (k < like.size() - 1 && !like.get(k).holds(size)) {
                    k++;
                }
                counts[like.get(k).holds(size) ? k : 0]++;
            }
            List<Sized> sizes = new ArrayList<>();
            for (int k = 0; k < counts.length; k++) {
                if (counts[k] > 0) {
                    sizes.add(new Sized(like.get(k).from(), like.get(k).to(), counts[k]));
                }
            }
            return sizes;
        }
    }
}
