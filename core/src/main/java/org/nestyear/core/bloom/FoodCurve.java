package org.nestyear.core.bloom;

/**
 * Bloom through one season's days for one member: the target's curve, and all food in reach, both 0 to 1.
 * A season with its bloom some days earlier or later is the same curve moved.
 */
public final class FoodCurve {
    private final double[] target;
    private final double[] food;
    private final double targetMiddle;

    private FoodCurve(double[] target, double[] food, double targetMiddle) {
        this.target = target;
        this.food = food;
        this.targetMiddle = targetMiddle;
    }

    /**
     * @param target target bloom by day, 0 to 1
     * @param food larger of target and other bloom by day, 0 to 1
     * @param targetMiddle middle of the target bloom, day index
     */
    static FoodCurve of(double[] target, double[] food, double targetMiddle) {
        return new FoodCurve(target, food, targetMiddle);
    }

    /** Target bloom on day {@code d}, 0 to 1. */
    public double target(int d) {
        return target[d];
    }

    /** Food in reach on day {@code d}, 0 to 1. */
    public double food(int d) {
        return food[d];
    }

    /** Middle of the target bloom, day index. */
    public double targetMiddle() {
        return targetMiddle;
    }

    /** Days held. */
    public int days() {
        return food.length;
    }
}
