package org.nestyear.core.mud;

/**
 * The grains of a soil under 2 mm, as per cent of their sum: sand 0.05 to 2 mm, silt 0.002 to 0.05 mm, clay finer (USDA
 * Soil Survey Manual).
 *
 * @param sandPercent 0 to 100
 * @param siltPercent 0 to 100
 * @param clayPercent 0 to 100; the three add up to 100
 */
public record Soil(double sandPercent, double siltPercent, double clayPercent) {
    /** How far from 100 the sum may be by rounding, per cent; numerical, by convention. */
    private static final double ROUNDING = 1e-6;

    public Soil {
        boolean shares = sandPercent >= 0 && siltPercent >= 0 && clayPercent >= 0;
        if (!shares || !(Math.abs(sandPercent + siltPercent + clayPercent - 100) <= ROUNDING)) {
            throw new IllegalArgumentException("sand, silt and clay are parts of 100 %, got " + sandPercent + ", "
                    + siltPercent + " and " + clayPercent);
        }
    }

    /**
     * The soil of three parts in any unit, such as the heights of layers in a jar.
     *
     * @throws IllegalArgumentException if a part is negative or all are nothing
     */
    public static Soil ofParts(double sand, double silt, double clay) {
        double sum = sand + silt + clay;
        if (!(sum > 0 && sum < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a soil has some sand, silt or clay, got " + sum + " in all");
        }
        double sandPercent = sand / sum * 100;
        double siltPercent = silt / sum * 100;
        return new Soil(sandPercent, siltPercent, Math.max(0, 100 - sandPercent - siltPercent));
    }
}
