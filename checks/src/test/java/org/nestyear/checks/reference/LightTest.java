package org.nestyear.checks.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Site;
import org.nestyear.core.sun.ClearSky;
import org.nestyear.core.sun.Facade;
import org.nestyear.core.sun.Front;
import org.nestyear.core.sun.Light;
import org.nestyear.core.sun.SunPosition;

/** Light under a clear sky and on a wall. The values below are cited numbers, so these tests need no file. */
class LightTest {
    /**
     * Haurwitz (1945) as published with the test suite of a solar energy library: elevation in degrees and W/m², five
     * decimals; the sun at and below the horizon gives none.
     */
    @Test
    void haurwitzAgreesWithPublishedValues() {
        double[][] published = {
            {5, 48.62987}, {10, 135.74175}, {30, 487.89413}, {50, 778.76669}, {90, 1035.09203}, {0, 0}, {-20, 0}
        };
        Comparison global = new Comparison("Haurwitz clear sky, W/m²", 5e-5);
        for (double[] row : published) {
            global.add("elevation " + row[0], ClearSky.globalWm2(90 - row[0]), row[1]);
        }
        global.check(7);
    }

    /**
     * The chain Haurwitz, Erbs et al. (1982), isotropic wall with albedo .2, worked by hand apart from this code and
     * printed to .1 and 1 W/m²: zenith angle, global, diffuse, beam, wall at 0, 45 and 90° from the sun.
     */
    @Test
    void wallAgreesWithTheChainWorkedByHand() {
        double[][] byHand = {
            {30, 888.3, 160.0, 840.9, 589, 466, 169},
            {50, 643.9, 126.5, 804.9, 744, 564, 128},
            {70, 316.0, 88.2, 666.2, 702, 518, 76}
        };
        Comparison parts = new Comparison("parts of clear light, W/m²", 0.05);
        Comparison wall = new Comparison("light on a wall, W/m²", 0.5);
        for (double[] row : byHand) {
            String name = "zenith angle " + row[0];
            Light light = ClearSky.at(row[0]);
            parts.add(name + " global", light.globalWm2(), row[1]);
            parts.add(name + " diffuse", light.diffuseWm2(), row[2]);
            parts.add(name + " beam", light.beamWm2(), row[3]);
            for (int i = 0; i < 3; i++) {
                double facing = 135 + 45 * i;
                double computed =
                        Facade.irradianceWm2(new SunPosition(row[0], 0, 135), light, facing, Facade.CUSTOMARY_ALBEDO);
                wall.add(name + " facing " + facing, computed, row[4 + i]);
            }
        }
        parts.check(9);
        wall.check(9);
    }

    @Test
    void beamAndSkyAndGroundAddUpToTheLevel() {
        Comparison level = new Comparison("diffuse + beam · cos Z, W/m²", 1e-9);
        for (double zenith = 0; zenith < 90; zenith += 0.5) {
            Light light = ClearSky.at(zenith);
            level.add(
                    "zenith angle " + zenith,
                    light.diffuseWm2() + light.beamWm2() * Math.cos(Math.toRadians(zenith)),
                    light.globalWm2());
        }
        level.check(180);
    }

    /** At 20° the sun stands above a skyline of 19.9° and below one of 20.1°; only the beam goes. */
    @Test
    void skylineHidesTheBeamAndNothingElse() {
        SunPosition sun = new SunPosition(70, 0, 90);
        Light light = ClearSky.at(70);
        double open = Facade.irradianceWm2(sun, light, 90, 0.2);
        Front above = Front.of(siteWithHorizon(19.9), 90);
        Front below = Front.of(siteWithHorizon(20.1), 90);
        double lostSky = (0.5 - above.skyShare()) * light.diffuseWm2();
        assertThat(above.irradianceWm2(sun, light, 0.2)).isCloseTo(open - lostSky, within(1e-9));
        assertThat(below.irradianceWm2(sun, light, 0.2))
                .isCloseTo(below.skyShare() * light.diffuseWm2() + 0.5 * 0.2 * light.globalWm2(), within(1e-9));
        assertThat(below.skyShare()).isLessThan(above.skyShare()).isLessThan(0.5);
    }

    @Test
    void sunBehindTheWallGivesNoBeam() {
        SunPosition sun = new SunPosition(60, 0, 270);
        double back = Facade.irradianceWm2(sun, new Light(500, 100, 800), 90, 0);
        assertThat(back).isEqualTo(50);
    }

    private static Site siteWithHorizon(double elevationDeg) {
        return new Site(
                "invented",
                45,
                8,
                200,
                ZoneOffset.UTC,
                90.0,
                List.of(new HorizonPoint(80, elevationDeg), new HorizonPoint(100, elevationDeg)));
    }
}
