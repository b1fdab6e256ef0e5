package org.nestyear.data.exchange;

import org.jspecify.annotations.Nullable;

/**
 * How coarsely a place is given away.
 *
 * <p>A blurred place is the centre of its cell on a grid laid once over the whole earth. The same place always gives the
 * same centre, so many files together tell no more than one; and every cell of a coarser grid is made of whole cells of
 * the finer, so files on different grids together tell no more than the finest. Bands of latitude are equally high;
 * each is cut into as many equal cells as keep a cell about as wide as high. The first cell of a band begins at the
 * antimeridian, 180° east and 180° west being one place; the bands at the poles are one round cell each, whose centre is
 * the pole.
 */
public enum Blur {
    /** The place as it was told. */
    EXACT(0, 0),
    /** Cells of about 1 km. */
    ONE_KM(1_000, 20_000),
    /** Cells of about 10 km; what is written unless the keeper asks for another. */
    TEN_KM(10_000, 2_000),
    /** Cells of about 100 km. */
    HUNDRED_KM(100_000, 200);

    /** Mean radius of the earth, (2a + b)/3 on WGS 84, m. */
    private static final double MEAN_RADIUS_M = 6_371_008.8;
    /** a²/b on WGS 84, m: the largest radius of curvature anywhere, so that no distance on the globe is made too small. */
    private static final double LARGEST_RADIUS_M = 6_399_593.6;

    private static final double HALF_TURN_DEG = 180;
    private static final double TURN_DEG = 360;

    private final int gridM;
    private final int bands;

    Blur(int gridM, int bands) {
        this.gridM = gridM;
        this.bands = bands;
    }

    /** Side of a cell, m, within about a tenth away from the poles; 0 when nothing is blurred. */
    public int gridM() {
        return gridM;
    }

    /** True for every grid. */
    public boolean isBlurred() {
        return this != EXACT;
    }

    /**
     * The place as this blur gives it away.
     *
     * @param exact where it is
     * @return the centre of its cell and how far from it the place may be; the same place and 0 m for {@link #EXACT}
     */
    public Blurred apply(Coordinates exact) {
        if (this == EXACT) {
            return new Blurred(exact, 0);
        }
        int band = Math.min(bands - 1, (int) Math.floor((exact.latitudeDeg() + 90) / bandDeg()));
        if (isPolar(band)) {
            double pole = band == 0 ? -90 : 90;
            return new Blurred(new Coordinates(pole, 0), metresUp(Math.toRadians(bandDeg())));
        }
        int cells = cells(band);
        double eastDeg = exact.longitudeDeg() == HALF_TURN_DEG ? 0 : exact.longitudeDeg() + HALF_TURN_DEG;
        double widthDeg = TURN_DEG / cells;
        int cell = Math.min(cells - 1, (int) Math.floor(eastDeg / widthDeg));
        Coordinates centre = new Coordinates(middleDeg(band), (cell + 0.5) * widthDeg - HALF_TURN_DEG);
        return new Blurred(centre, metresUp(halfDiagonal(centre.latitudeDeg(), widthDeg)));
    }

    private double bandDeg() {
        return HALF_TURN_DEG / bands;
    }

    private double middleDeg(int band) {
        return (band + 0.5) * bandDeg() - 90;
    }

    private boolean isPolar(int band) {
        return band == 0 || band == bands - 1;
    }

    /** Cells in a band: a whole number for each cell of the coarser grid above it, so that the grids nest. */
    private int cells(int band) {
        if (isPolar(band)) {
            return 1;
        }
        Blur coarser = coarser();
        int above = coarser == null ? 1 : coarser.cells(band / (bands / coarser.bands));
        double roundM = 2 * Math.PI * MEAN_RADIUS_M * Math.cos(Math.toRadians(middleDeg(band)));
        return above * Math.max(1, (int) Math.round(roundM / ((double) gridM * above)));
    }

    private @Nullable Blur coarser() {
        return switch (this) {
            case ONE_KM -> TEN_KM;
            case TEN_KM -> HUNDRED_KM;
            case HUNDRED_KM, EXACT -> null;
        };
    }

    /** Angle from the centre of a cell to its farthest point, which is a corner, radians. */
    private double halfDiagonal(double centreDeg, double widthDeg) {
        double halfWidth = Math.toRadians(widthDeg / 2);
        double north = angle(centreDeg, centreDeg + bandDeg() / 2, halfWidth);
        double south = angle(centreDeg, centreDeg - bandDeg() / 2, halfWidth);
        return Math.max(north, south);
    }

    /** Angle at the earth's centre between two points, by the haversine formula, radians. */
    private static double angle(double fromDeg, double toDeg, double eastward) {
        double from = Math.toRadians(fromDeg);
        double to = Math.toRadians(toDeg);
        double upDown = Math.sin((to - from) / 2);
        double sideways = Math.sin(eastward / 2);
        double h = upDown * upDown + Math.cos(from) * Math.cos(to) * sideways * sideways;
        return 2 * Math.asin(Math.sqrt(Math.min(1, h)));
    }

    /** Whole metres, upwards: latitude is reckoned from the ellipsoid's normal, not from the earth's centre. */
    private static int metresUp(double radians) {
        return (int) Math.ceil(radians * LARGEST_RADIUS_M);
    }

    /**
     * A place as given away.
     *
     * @param at where it is said to be
     * @param withinM how far from there it may be, m, 0 when it is exact
     */
    public record Blurred(Coordinates at, int withinM) {}
}
