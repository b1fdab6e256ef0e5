package org.nestyear.core.outlook;

import java.util.function.LongPredicate;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stats.Quantiles;

/**
 * Springs to come of a stock, in many possible courses: growth of each year log-normal about a mean that is itself uncertain,
 * whole bees that settle (binomial) and daughters of each (Poisson). A bad year makes the stock small, never its chances: the
 * next year's growth does not depend on it. Seeded, so that the same question has the same answer.
 *
 * @param growth belief of the growth
 * @param settling share of female cocoons that come to nest, above 0 and at most 1
 * @param bought females bought each year
 * @param given females given away each year
 * @param joining wild females expected to nest each year
 * @param nestsMost females that find room at most; infinity for no limit
 * @param years springs to come, 1 or more; the first is known
 */
public record StockProjection(
        GrowthBelief growth, double settling, long bought, long given, double joining, double nestsMost, int years) {
    /** Courses that are run; numerical. */
    private static final int COURSES = 4000;
    /** Seed; numerical. */
    private static final long SEED = 1998;
    /** Sets the seeds of courses apart; numerical. */
    private static final long STRIDE = 1_000_003;
    /** Most females that are searched for; numerical. */
    private static final long MOST = 1_000_000;
    /** A stock is held below this; numerical. */
    private static final double HIGHEST = 1e9;

    public StockProjection {
        if (!(settling > 0 && settling <= 1)
                || bought < 0
                || given < 0
                || !(joining >= 0)
                || !(nestsMost >= 0)
                || years < 1) {
            throw new IllegalArgumentException("no projection over " + years + " years with settling " + settling);
        }
    }

    /**
     * Females put out each spring, by spring and course.
     *
     * @param first female cocoons of the first spring, 0 or more
     */
    public double[][] run(long first) {
        double[][] stock = new double[years][COURSES];
        for (int course = 0; course < COURSES; course++) {
            double[] growths = growths(course);
            long females = first;
            for (int year = 0; year < years; year++) {
                stock[year][course] = females;
                females = next(females, growths[year], new Draws(SEED + STRIDE * (course * (long) years + year)));
            }
        }
        return stock;
    }

    private double[] growths(int course) {
        Draws draws = new Draws(-SEED - STRIDE * course);
        double[] belief = growth.draw(draws);
        double[] growths = new double[years];
        for (int year = 0; year < years; year++) {
            growths[year] = Math.exp(belief[0] + belief[1] * draws.normal());
        }
        return growths;
    }

    private long next(long females, double growth, Draws draws) {
        double nesting = Math.min(nestsMost, draws.poisson(joining) + (double) draws.binomial(females, settling));
        long daughters = draws.poisson(Math.min(HIGHEST, nesting * growth / settling));
        return Math.max(0, daughters + bought - given);
    }

    /** The number of a spring below which such a share of the courses lies. */
    public static double quantile(double[] courses, double share) {
        return Quantiles.of(courses, share);
    }

    /** Share of courses with so many females or more in the last spring. */
    public double reach(long first, long target) {
        double[] last = run(first)[years - 1];
        int there = 0;
        for (double females : last) {
            there += females >= target ? 1 : 0;
        }
        return there / (double) last.length;
    }

    /**
     * Females that can be given away before the first spring, so that the target is still met with this chance; less than 0
     * is never returned.
     */
    public long spare(long first, long target, double chance) {
        return largest(first, give -> reach(first - give, target) >= chance);
    }

    /** Females to add before the first spring, so that the target is met with this chance; −1 when no number does. */
    public long missing(long first, long target, double chance) {
        if (reach(first, target) >= chance) {
            return 0;
        }
        if (reach(first + MOST, target) < chance) {
            return -1;
        }
        return 1 + largest(MOST, add -> reach(first + add, target) < chance);
    }

    /** The largest number up to a limit for which a test holds that holds for all smaller ones; 0 when it never holds. */
    private static long largest(long limit, LongPredicate test) {
        long holds = 0;
        long fails = limit + 1;
        while (fails - holds > 1) {
            long middle = holds + (fails - holds) / 2;
            if (test.test(middle)) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }
}
