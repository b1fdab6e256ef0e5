package org.nestyear.checks.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Site;
import org.nestyear.core.sun.FrontSun;

/** The sun's day on a front, where geometry tells the answer (spherical astronomy of any handbook). */
class FrontSunTest {
    private static final LocalDate EQUINOX = LocalDate.of(2015, 3, 20);

    private static Site site(double latitude, List<HorizonPoint> horizon) {
        return new Site("Invented", latitude, 0, 0, ZoneOffset.UTC, null, horizon);
    }

    private static FrontSun front(Site site, LocalDate date, double faces) {
        return FrontSun.of(site, date, List.of(faces)).get(0);
    }

    private static Instant first(FrontSun front) {
        Instant first = front.firstSun();
        return Objects.requireNonNull(first, "no sun on the front");
    }

    /**
     * At the equinox the sun rises due east at six by the sun and climbs 15° an hour at the equator: an east front has it
     * from sunrise, four hours before ten; a west front from noon on. A skyline of 30° all round takes two hours.
     */
    @Test
    void atTheEquatorAtTheEquinox() {
        FrontSun east = front(site(0, List.of()), EQUINOX, 90);
        FrontSun west = front(site(0, List.of()), EQUINOX, 270);
        Comparison minutes = new Comparison("minutes of sun before ten", 6);
        minutes.add("east", east.morningMinutes(), 240);
        minutes.add("west", west.morningMinutes(), 0);
        FrontSun walled = front(site(0, List.of(new HorizonPoint(0, 30), new HorizonPoint(180, 30))), EQUINOX, 90);
        minutes.add("east behind 30°", walled.morningMinutes(), 120);
        minutes.check(3);
        Comparison hours = new Comparison("hours from first sun east to first sun west", 0.15);
        hours.add("equator", Duration.between(first(east), first(west)).toMinutes() / 60.0, 6);
        hours.check(1);
    }

    /** Mirror: north and south of the equator, half a year apart, a front turned about the east-west line gets the same. */
    @Test
    void theSouthMirrorsTheNorth() {
        for (double faces : List.of(45.0, 90.0, 135.0, 180.0)) {
            FrontSun north = front(site(45, List.of()), LocalDate.of(2015, 6, 21), faces);
            FrontSun south = front(site(-45, List.of()), LocalDate.of(2015, 12, 22), (540 - faces) % 360);
            assertThat(south.morningWhM2()).isCloseTo(north.morningWhM2(), within(0.02 * north.morningWhM2()));
            assertThat(south.morningMinutes()).isCloseTo(north.morningMinutes(), within(10.0));
        }
    }

    /** North of the polar circle in midwinter there is no sun, and nothing is invented. */
    @Test
    void thePolarNightHasNoSun() {
        FrontSun dark = front(site(75, List.of()), LocalDate.of(2015, 12, 21), 180);
        assertThat(dark.firstSun()).isNull();
        assertThat(dark.morningWhM2()).isZero();
        assertThat(dark.hottestWm2()).isZero();
    }
}
