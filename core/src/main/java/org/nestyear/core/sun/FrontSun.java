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
 * @param warmFrom when the front first has the light asked for, or null if it never does
 * @param morningMinutes minutes of sun on the front before two hours short of the sun's highest stand (10:00 by the sun)
 * @param morningWhM2 light on the front up to then, the sky's and the ground's included, Wh/m²
 * @param hottestWm2 most light on the front after the sun's highest stand, W/m²
 */
public record FrontSun(
        LocalDate date,
        double facesDeg,
        @Nullable Instant firstSun,
        @Nullable Instant warmFrom,
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
    /** The sun and its light at one look. */
    private record Look(Instant at, SunPosition sun, Light light) {}

    /**
     * The day on fronts of several facings.
     *
     * @param facingsDeg degrees clockwise from north, 0 to 360
     * @param warmWm2 light with which a bee on the front warms enough, W/m²
     */
    public static List<FrontSun> of(Site site, LocalDate date, List<Double> facingsDeg, double warmWm2) {
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
                .map(faces -> day(Front.of(site, faces), date, noon, looks, warmWm2))
                .toList();
    }

    private static FrontSun day(Front front, LocalDate date, Instant noon, List<Look> looks, double warmWm2) {
        @Nullable Instant first = null;
        @Nullable Instant warm = null;
        double minutes = 0;
        double energy = 0;
        double hottest = 0;
        for (Look look : looks) {
            boolean shines = front.shines(look.sun());
            double light = front.irradianceWm2(look.sun(), look.light(), Facade.CUSTOMARY_ALBEDO);
            if (shines && first == null) {
                first = look.at();
            }
            if (light >= warmWm2 && warm == null) {
                warm = look.at();
            }
            if (look.at().isBefore(noon.minus(TEN_TO_NOON))) {
                minutes += shines ? STEP_MINUTES : 0;
                energy += light * STEP_MINUTES / HOUR_MINUTES;
            }
            if (look.at().isAfter(noon)) {
                hottest = Math.max(hottest, light);
            }
        }
        return new FrontSun(date, front.facesDeg(), first, warm, minutes, energy, hottest);
    }
}
