package org.nestyear.core.hygiene;

/**
 * Household bleach in water.
 *
 * @param labelPercent sodium hypochlorite in the bottle by its label, per cent, above 0, at most 100
 * @param bleachMl bleach, ml, above 0
 * @param waterMl water it is poured into, ml, 0 or more
 */
public record Mixture(double labelPercent, double bleachMl, double waterMl) {
    /** Parts per million in one per cent, by definition; numerical. */
    private static final double PPM_PER_PERCENT = 10_000;

    public Mixture {
        if (!(labelPercent > 0 && labelPercent <= 100)) {
            throw new IllegalArgumentException("bleach has more than 0 and at most 100 %, got " + labelPercent);
        }
        if (!(bleachMl > 0 && bleachMl < Double.POSITIVE_INFINITY)
                || !(waterMl >= 0 && waterMl < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a mixture needs bleach and water, got " + bleachMl + " ml and " + waterMl + " ml");
        }
    }

    /**
     * The mixture of a wanted strength.
     *
     * @param ppm available chlorine wanted, above 0 and below what the bottle holds
     * @param waterMl water it is poured into, ml, above 0
     * @throws IllegalArgumentException if the bottle is not stronger than that
     */
    public static Mixture ofStrength(double labelPercent, double ppm, double waterMl) {
        double bottle = labelPercent * PPM_PER_PERCENT;
        if (!(ppm > 0 && ppm < bottle)) {
            throw new IllegalArgumentException(
                    "the bottle holds " + bottle + " ppm, which cannot be thinned to " + ppm);
        }
        return new Mixture(labelPercent, waterMl * ppm / (bottle - ppm), waterMl);
    }

    /**
     * Available chlorine, parts per million, as health authorities reckon it: label % × 10 000 × bleach / (bleach +
     * water) (WHO 2014, annex G: 1 part in 100 of 5 % is 500 ppm).
     */
    public double ppm() {
        return bottlePpm() * bleachMl / (bleachMl + waterMl);
    }

    /** Strength of the bottle itself, ppm. */
    public double bottlePpm() {
        return labelPercent * PPM_PER_PERCENT;
    }
}
