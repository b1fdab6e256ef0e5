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
import org.nestyear.core.place.Overhang;
import org.nestyear.core.place.Site;
import org.nestyear.core.sun.Front;
import org.nestyear.core.sun.FrontSun;

/** The sun's day on a front, where geometry tells the answer (spherical astronomy of any handbook). */
class FrontSunTest {
    private static final LocalDate EQUINOX = LocalDate.of(2015, 3, 20);

    private static Site site(double latitude, List<HorizonPoint> horizon) {
        return new Site("Invented", latitude, 0, 0, ZoneOffset.UTC, null, horizon);
    }

    private static FrontSun front(Site site, LocalDate date, double faces) {
        return FrontSun.of(site, date, List.of(faces), 200).get(0);
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

    /**
     * The vertical shadow angle of building design: at the equator at the equinox the sun climbs straight up before an east
     * front, so a roof that reaches out as far as it is high shades it from 45° on, three hours after sunrise.
     */
    @Test
    void aRoofTakesTheHighSun() {
        Site roofed = new Site("Invented", 0, 0, 0, ZoneOffset.UTC, null, List.of(), new Overhang(0.3, 0.3), null);
        Comparison minutes = new Comparison("minutes of sun before ten below a roof", 6);
        minutes.add("45°", front(roofed, EQUINOX, 90).morningMinutes(), 180);
        minutes.check(1);
        assertThat(front(roofed, EQUINOX, 90).hottestWm2())
                .isLessThan(front(site(0, List.of()), EQUINOX, 90).hottestWm2());
    }

    /** Light enough comes no sooner than the sun itself, and never where more is asked than the sun gives. */
    @Test
    void warmLightFollowsTheFirstSun() {
        FrontSun east = front(site(45, List.of()), EQUINOX, 90);
        assertThat(Objects.requireNonNull(east.warmFrom())).isAfterOrEqualTo(first(east));
        assertThat(FrontSun.of(site(45, List.of()), EQUINOX, List.of(90.0), 1400)
                        .get(0)
                        .warmFrom())
                .isNull();
    }

    /**
     * Shares of an even sky on a wall, by the cosine law: half of an open one; sin(φ)/2 below a roof with shadow angle φ (a
     * strip, exact); (90° − h − sin h cos h)/180° above a skyline of height h all round.
     */
    @Test
    void aWallSeesItsShareOfTheSky() {
        Comparison shares = new Comparison("share of an even sky", 2e-4);
        shares.add("open", Front.of(site(45, List.of()), 135).skyShare(), 0.5);
        Site roofed = new Site("Invented", 45, 0, 0, ZoneOffset.UTC, null, List.of(), new Overhang(0.3, 0.3), null);
        shares.add("below a roof", Front.of(roofed, 135).skyShare(), Math.sin(Math.PI / 4) / 2);
        Site walled = site(45, List.of(new HorizonPoint(0, 30), new HorizonPoint(180, 30)));
        double h = Math.PI / 6;
        shares.add(
                "above 30°", Front.of(walled, 135).skyShare(), (Math.PI / 2 - h - Math.sin(h) * Math.cos(h)) / Math.PI);
        shares.check(3);
    }
}
