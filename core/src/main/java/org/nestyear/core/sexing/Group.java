package org.nestyear.core.sexing;

import org.hipparchus.special.Erf;

/**
 * One sex as a normal distribution of sizes.
 *
 * @param mean mean size, in the unit of the measure
 * @param sd standard deviation, above 0
 * @param weight share of all cocoons, 0 to 1
 */
public record Group(double mean, double sd, double weight) {
    /** √(2π), of the normal density; numerical. */
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    public Group {
        if (!(sd > 0 && weight >= 0 && weight <= 1) || !Double.isFinite(mean)) {
            throw new IllegalArgumentException("no group: mean " + mean + ", sd " + sd + ", weight " + weight);
        }
    }

    /** Weight times density of a measured size, or times the chance to fall between two sieves. */
    double mass(Sized sized) {
        return weight * (sized.isPoint() ? density(z(sized.from())) / sd : above(sized.from()) - above(sized.to()));
    }

    /** Mean size of this group's cocoons within the range. */
    double meanWithin(Sized sized) {
        if (sized.isPoint()) {
            return sized.from();
        }
        double chance = above(sized.from()) - above(sized.to());
        return mean + sd * (density(z(sized.from())) - density(z(sized.to()))) / chance;
    }

    /** Mean square distance of this group's cocoons within the range from a centre. */
    double squareWithin(Sized sized, double centre) {
        if (sized.isPoint()) {
            return (sized.from() - centre) * (sized.from() - centre);
        }
        double a = z(sized.from());
        double b = z(sized.to());
        double chance = above(sized.from()) - above(sized.to());
        double shift = (density(a) - density(b)) / chance;
        double second = 1 + (edge(a) - edge(b)) / chance;
        double offset = mean - centre;
        return sd * sd * second + 2 * offset * sd * shift + offset * offset;
    }

    private double z(double size) {
        return (size - mean) / sd;
    }

    private double above(double size) {
        return Erf.erfc(z(size) / Math.sqrt(2)) / 2;
    }

    private static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    private static double edge(double z) {
        return Double.isInfinite(z) ? 0 : z * density(z);
    }
}
