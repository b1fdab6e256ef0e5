package org.nestyear.core.mud;

/**
 * How grains sink in still water, by Stokes (1851): v = g d² (ρs − ρw) / (18 η). Holds for grains up to about 0.1 mm, far
 * apart from each other.
 *
 * @param heightMm how far they sink, mm, above 0
 * @param waterC temperature of the water, °C, 0 to 60
 */
public record Settling(double heightMm, double waterC) {
    /** Smallest sand, mm (USDA Soil Survey Manual 1993). */
    public static final double SAND_LEAST_MM = 0.05;
    /** Smallest silt, mm (USDA Soil Survey Manual 1993). */
    public static final double SILT_LEAST_MM = 0.002;

    /** Standard gravity, m/s² (3rd General Conference on Weights and Measures, 1901). */
    private static final double GRAVITY = 9.80665;
    /** Density of soil grains, kg/m³, by convention that of quartz. */
    private static final double GRAIN_DENSITY = 2650;
    /** Density of water at 20 °C, kg/m³, by convention; over 0 to 40 °C it moves the times by half a per cent. */
    private static final double WATER_DENSITY = 998.2;
    /** Stokes (1851): 2/9 of the radius squared is 1/18 of the diameter squared. */
    private static final double STOKES = 18;
    /** Viscosity of water as A · 10^(B / (T − C)), A in Pa·s (Al-Shemmeri 2012, from memory). */
    private static final double VISCOSITY_A = 2.414e-5;
    /** B of that formula, K (Al-Shemmeri 2012, from memory). */
    private static final double VISCOSITY_B = 247.8;
    /** C of that formula, K (Al-Shemmeri 2012, from memory). */
    private static final double VISCOSITY_C = 140;
    /** Ice point, K, by definition. */
    private static final double ICE_POINT = 273.15;
    /** Warmest water the formula is used for, °C; convention of this page. */
    private static final double WARMEST_C = 60;
    /** Millimetres in a metre, by definition. */
    private static final double MM_PER_M = 1000;

    public Settling {
        if (!(heightMm > 0 && heightMm < Double.POSITIVE_INFINITY) || !(waterC >= 0 && waterC <= WARMEST_C)) {
            throw new IllegalArgumentException(
                    "grains settle through some water at 0 to 60 °C, got " + heightMm + " mm at " + waterC + " °C");
        }
    }

    /**
     * Minutes until every grain of this size has sunk through the whole height.
     *
     * @param diameterMm above 0
     */
    public double minutes(double diameterMm) {
        return heightMm / (speedOfOneMm() * diameterMm * diameterMm) / 60;
    }

    /**
     * The smallest grain that has sunk through the whole height after so long, mm.
     *
     * @param minutes above 0
     */
    public double diameterMm(double minutes) {
        return Math.sqrt(heightMm / (speedOfOneMm() * minutes * 60));
    }

    /** Viscosity of the water, Pa·s. */
    double viscosity() {
        return VISCOSITY_A * Math.pow(10, VISCOSITY_B / (waterC + ICE_POINT - VISCOSITY_C));
    }

    /** Speed in mm/s per square millimetre of diameter. */
    private double speedOfOneMm() {
        return GRAVITY * (GRAIN_DENSITY - WATER_DENSITY) / (STOKES * viscosity()) / MM_PER_M;
    }
}
