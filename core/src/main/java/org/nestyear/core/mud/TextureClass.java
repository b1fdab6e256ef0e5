package org.nestyear.core.mud;

import java.util.EnumSet;
import java.util.Set;

/**
 * The twelve texture classes of the United States Department of Agriculture, by the tests of Benham, Ahrens and Nettleton
 * (2009), Clarification of soil texture class boundaries, USDA-NRCS (Soil Survey Manual 1993).
 */
public enum TextureClass {
    SAND("sand"),
    LOAMY_SAND("loamy sand"),
    SANDY_LOAM("sandy loam"),
    LOAM("loam"),
    SILT_LOAM("silt loam"),
    SILT("silt"),
    SANDY_CLAY_LOAM("sandy clay loam"),
    CLAY_LOAM("clay loam"),
    SILTY_CLAY_LOAM("silty clay loam"),
    SANDY_CLAY("sandy clay"),
    SILTY_CLAY("silty clay"),
    CLAY("clay");

    /** Silt + 1.5 clay below which a soil is sand, Benham et al. 2009. */
    private static final double SAND_MOST = 15;
    /** Weight of clay in that sum, Benham et al. 2009. */
    private static final double SAND_CLAY_WEIGHT = 1.5;
    /** Silt + 2 clay below which a soil is loamy sand, Benham et al. 2009. */
    private static final double LOAMY_SAND_MOST = 30;
    /** Clay from which a loam is one, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_LOAM = 7;
    /** Clay from which silt loam needs no second test, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_SILT_LOAM = 12;
    /** Clay from which a sandy soil is sandy clay loam, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_SANDY_CLAY_LOAM = 20;
    /** Clay from which a soil is clay loam or silty clay loam, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_CLAY_LOAM = 27;
    /** Clay from which a sandy soil is sandy clay, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_SANDY_CLAY = 35;
    /** Clay from which a soil is clay or silty clay, Benham et al. 2009. */
    private static final double CLAY_LEAST_OF_CLAY = 40;
    /** Silt from which a loam is one, Benham et al. 2009. */
    private static final double SILT_LEAST_OF_LOAM = 28;
    /** Silt from which a soil is silt loam, Benham et al. 2009. */
    private static final double SILT_LEAST_OF_SILT_LOAM = 50;
    /** Silt from which a soil is silt, Benham et al. 2009. */
    private static final double SILT_LEAST_OF_SILT = 80;
    /** Silt from which clay is silty, Benham et al. 2009. */
    private static final double SILT_LEAST_OF_SILTY_CLAY = 40;
    /** Sand above which a soil is sandy loam and not loam, Benham et al. 2009. */
    private static final double SAND_MOST_OF_LOAM = 52;
    /** Sand above which a clayey soil is sandy, Benham et al. 2009. */
    private static final double SAND_MOST_OF_CLAY = 45;
    /** Sand above which clay loam is not silty, Benham et al. 2009. */
    private static final double SAND_LEAST_OF_CLAY_LOAM = 20;

    private final String word;

    TextureClass(String word) {
        this.word = word;
    }

    /** The name in words, for instance {@code sandy loam}. */
    public String word() {
        return word;
    }

    /** The class of a soil. */
    public static TextureClass of(Soil soil) {
        double sand = soil.sandPercent();
        double silt = soil.siltPercent();
        double clay = soil.clayPercent();
        if (silt + SAND_CLAY_WEIGHT * clay < SAND_MOST) {
            return SAND;
        }
        if (silt + 2 * clay < LOAMY_SAND_MOST) {
            return LOAMY_SAND;
        }
        if (clay >= CLAY_LEAST_OF_SANDY_CLAY && sand > SAND_MOST_OF_CLAY) {
            return SANDY_CLAY;
        }
        if (clay >= CLAY_LEAST_OF_CLAY) {
            return silt >= SILT_LEAST_OF_SILTY_CLAY ? SILTY_CLAY : CLAY;
        }
        if (clay >= CLAY_LEAST_OF_SANDY_CLAY_LOAM && silt < SILT_LEAST_OF_LOAM && sand > SAND_MOST_OF_CLAY) {
            return SANDY_CLAY_LOAM;
        }
        if (clay >= CLAY_LEAST_OF_CLAY_LOAM) {
            return sand > SAND_LEAST_OF_CLAY_LOAM ? CLAY_LOAM : SILTY_CLAY_LOAM;
        }
        if (silt >= SILT_LEAST_OF_SILT_LOAM) {
            return silt >= SILT_LEAST_OF_SILT && clay < CLAY_LEAST_OF_SILT_LOAM ? SILT : SILT_LOAM;
        }
        boolean sandy = clay < CLAY_LEAST_OF_LOAM || sand > SAND_MOST_OF_LOAM;
        return sandy ? SANDY_LOAM : LOAM;
    }

    /**
     * The classes of all soils whose three shares differ from this one's by no more than so many points, its own among
     * them.
     *
     * @param points 0 or more
     */
    public static Set<TextureClass> within(Soil soil, double points) {
        Set<TextureClass> classes = EnumSet.of(of(soil));
        int steps = (int) Math.ceil(points);
        for (int i = -steps; i <= steps; i++) {
            for (int j = -steps; j <= steps; j++) {
                double sand = soil.sandPercent() + points * i / Math.max(1, steps);
                double silt = soil.siltPercent() + points * j / Math.max(1, steps);
                double clay = 100 - sand - silt;
                boolean near = Math.abs(clay - soil.clayPercent()) <= points;
                if (near && sand >= 0 && silt >= 0 && clay >= 0) {
                    classes.add(of(new Soil(sand, silt, clay)));
                }
            }
        }
        return classes;
    }
}
