package org.nestyear.core.sun;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;

/**
 * The sun on a house front through one clear day, over the site's skyline.
 *
 * @param date the day
 * @param facesDeg where the front looks, degrees clockwise from north
 * @param firstSun when the sun first shines on the front, or null if it never does
 * @param morningMinutes minutes of sun on the front before two hours short of the sun's highest stand (10:00 by the sun)
 * @param morningWhM2 light on the front up to then, the sky's and the ground's included, Wh/m²
 * @param hottestWm2 most light on the front after the sun's highest stand, W/m²
 */
public record FrontSun(
        LocalDate date,
        double facesDeg,
        @Nullable Instant firstSun,
        double morningMinutes,
        double morningWhM2,
        double hottestWm2) {
    /** Minutes between two looks at the sun; numerical. */
    private static final int STEP_MINUTES = 5;
    /** Minutes in an hour, by definition. */
    private static final double HOUR_MINUTES = 60;
    /** From 10:00 to noon by the sun, by definition. */
    private static final Duration TEN_TO_NOON = Duration.ofHours(2);
    /** Half a day before the sun's highest stand and after it, by definition. */
    private static final Duration HALF_DAY = Duration.ofHours(12);
    /** A right angle, by definition: the sun is in front of a wall. */
    private static final double RIGHT_DEG = 90;
    /** A turn, by definition. */
    private static final double TURN_DEG = 360;

    /** The sun and its light at one look. */
    private record Look(Instant at, SunPosition sun, Light light) {}

    /**
     * The day on fronts of several facings.
     *
     * @param facingsDeg degrees clockwise from north, 0 to 360
     */
    public static List<FrontSun> of(Site site, LocalDate date, List<Double> facingsDeg) {
        Observer observer = Observer.at(site);
        Instant noon = SunTimes.of(observer, date, site.zone()).transit();
        List<Look> looks = new ArrayList<>();
        for (Instant at = noon.minus(HALF_DAY);
                at.isBefore(noon.plus(HALF_DAY));
                at = at.plus(Duration.ofMinutes(STEP_MINUTES))) {
            SunPosition sun = SunPosition.of(observer, at);
            if (sun.elevationDeg() > 0) {
                looks.add(new Look(at, sun, ClearSky.at(sun.zenithDeg())));
            }
        }
        return facingsDeg.stream()
                .map(faces -> front(site, date, noon, looks, faces))
                .toList();
    }

    private static FrontSun front(Site site, LocalDate date, Instant noon, List<Look> looks, double facesDeg) {
        @Nullable Instant first = null;
        double minutes = 0;
        double energy = 0;
        double hottest = 0;
        for (Look look : looks) {
            boolean shines =
                    look.sun().elevationDeg() > site.horizonDeg(look.sun().azimuthDeg())
                            && between(look.sun().azimuthDeg(), facesDeg) < RIGHT_DEG;
            double light = Facade.irradianceWm2(site, look.sun(), look.light(), facesDeg, Facade.CUSTOMARY_ALBEDO);
            if (shines && first == null) {
                first = look.at();
            }
            if (look.at().isBefore(noon.minus(TEN_TO_NOON))) {
                minutes += shines ? STEP_MINUTES : 0;
                energy += light * STEP_MINUTES / HOUR_MINUTES;
            }
            if (look.at().isAfter(noon)) {
                hottest = Math.max(hottest, light);
            }
        }
        return new FrontSun(date, facesDeg, first, minutes, energy, hottest);
    }

    /** The angle between two directions, 0 to 180 degrees. */
    private static double between(double a, double b) {
        double apart = Math.abs(a - b) % TURN_DEG;
        return Math.min(apart, TURN_DEG - apart);
    }
}
