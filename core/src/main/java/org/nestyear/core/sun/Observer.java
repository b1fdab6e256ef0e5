package org.nestyear.core.sun;

import java.time.ZoneOffset;
import org.nestyear.core.place.Site;

/**
 * Where and through what air the sun is watched. Pressure and temperature matter only to the refraction, which is half
 * a degree at the horizon and next to nothing high up.
 *
 * @param latitudeDeg degrees north, −90 to 90
 * @param longitudeDeg degrees east, −180 to 180
 * @param elevationM metres above sea level
 * @param pressureHPa air pressure at the place, hPa, above 0 and up to 1200
 * @param temperatureC air temperature, °C, above −100 and below 70
 */
public record Observer(
        double latitudeDeg, double longitudeDeg, double elevationM, double pressureHPa, double temperatureC) {
    /** Highest pressure accepted, by definition of a plausible input: the record at sea level is 1084 hPa. */
    private static final double HIGHEST_PRESSURE_HPA = 1200;
    /** Coldest air accepted, by definition of a plausible input: the record is −89 °C. */
    private static final double COLDEST_C = -100;
    /** Warmest air accepted, by definition of a plausible input: the record is 57 °C. */
    private static final double WARMEST_C = 70;
    /** Highest ground accepted, by definition of a plausible input, and about the same below sea level. */
    private static final double HIGHEST_M = 9000;
    /** Latitude of a pole, by definition. */
    private static final double POLE_DEG = 90;
    /** Half a turn, by definition. */
    private static final double HALF_TURN_DEG = 180;
    /** Yearly mean temperature customary in tables made with the algorithm of Reda and Andreas (2004). */
    private static final double CUSTOMARY_C = 12;

    public Observer {
        check("latitude", latitudeDeg, -POLE_DEG, POLE_DEG, "degrees");
        check("longitude", longitudeDeg, -HALF_TURN_DEG, HALF_TURN_DEG, "degrees");
        check("elevation", elevationM, -HIGHEST_M, HIGHEST_M, "m");
        check("pressure", pressureHPa, Double.MIN_NORMAL, HIGHEST_PRESSURE_HPA, "hPa");
        check("temperature", temperatureC, COLDEST_C, WARMEST_C, "°C");
    }

    /** The site under the standard pressure of its elevation and the customary 12 °C. */
    public static Observer at(Site site) {
        return new Observer(
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                StandardPressure.hPa(site.elevationM()),
                CUSTOMARY_C);
    }

    /** Mean solar time of the place: the offset at which the sun stands highest near noon, to the second. */
    ZoneOffset meanSolarTime() {
        double days = longitudeDeg / (2 * HALF_TURN_DEG);
        return ZoneOffset.ofTotalSeconds((int) Math.round(days * 24 * 60 * 60));
    }

    private static void check(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " " + value + " is outside " + low + " to " + high + " " + unit);
        }
    }
}
