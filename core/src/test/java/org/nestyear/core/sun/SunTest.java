package org.nestyear.core.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.core.place.Site;

/** Edges and refusals; the numbers themselves are checked against published values in module checks. */
class SunTest {
    private static final Observer LYON = new Observer(45.72, 5.08, 200, 990, 12);

    @Test
    void polarDaysAreSaidInWords() {
        DaySpan day = DayLength.of(70, 172);
        assertThat(day).isEqualTo(new DaySpan(0, 24, 24));
        assertThat(day.isPolarDay()).isTrue();
        assertThat(day.isPolarNight()).isFalse();
        DaySpan night = DayLength.of(70, 355);
        assertThat(night).isEqualTo(new DaySpan(12, 12, 0));
        assertThat(night.isPolarNight()).isTrue();
        assertThat(night.isPolarDay()).isFalse();
        assertThat(DayLength.of(45, 172).isPolarDay()).isFalse();
        assertThat(DayLength.of(45, 172).isPolarNight()).isFalse();
    }

    @Test
    void polesHaveDayAndNight() {
        assertThat(DayLength.of(90, 172).isPolarDay()).isTrue();
        assertThat(DayLength.of(90, 355).isPolarNight()).isTrue();
        assertThat(DayLength.of(-90, 355).isPolarDay()).isTrue();
        assertThat(DayLength.of(-90, 172).isPolarNight()).isTrue();
        assertThat(ExtraterrestrialRadiation.dailyMjM2(90, 355)).isCloseTo(0, within(1e-9));
        double[] even = new double[24];
        Arrays.fill(even, 1.0 / 24);
        assertThat(ExtraterrestrialRadiation.hourlyShares(90, 172)).containsExactly(even, within(1e-9));
    }

    @Test
    void refusesPlacesAndDaysThatAreNone() {
        assertThatThrownBy(() -> DayLength.of(90.1, 1)).hasMessageContaining("latitude 90.1");
        assertThatThrownBy(() -> DayLength.of(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DayLength.of(45, 0)).hasMessageContaining("day of year 0");
        assertThatThrownBy(() -> DayLength.of(45, 367)).hasMessageContaining("day of year 367");
        assertThatThrownBy(() -> ExtraterrestrialRadiation.dailyMjM2(-91, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ExtraterrestrialRadiation.hourlyShares(45, 400))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DaySpan(13, 12, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Observer(45, 181, 0, 1000, 10)).hasMessageContaining("longitude 181.0");
        assertThatThrownBy(() -> new Observer(45, 0, 0, 0, 10)).hasMessageContaining("pressure 0.0");
        assertThatThrownBy(() -> new Observer(45, 0, 0, 1000, Double.NaN)).hasMessageContaining("temperature NaN");
        assertThatThrownBy(() -> StandardPressure.hPa(50_000)).hasMessageContaining("50000.0 m");
    }

    /** FAO-56 table 2.1, from memory: 101.3 kPa at sea level; example 2: 81.8 kPa at 1800 m. */
    @Test
    void standardPressureFallsWithHeight() {
        assertThat(StandardPressure.hPa(0)).isEqualTo(1013);
        assertThat(StandardPressure.hPa(1800)).isCloseTo(818, within(0.5));
        Site site = new Site("invented", 39.7, -105.2, 1800, ZoneOffset.ofHours(-7), null, List.of());
        Observer observer = Observer.at(site);
        assertThat(observer.pressureHPa()).isEqualTo(StandardPressure.hPa(1800));
        assertThat(observer.latitudeDeg()).isEqualTo(39.7);
        assertThat(observer.longitudeDeg()).isEqualTo(-105.2);
    }

    /** A second of time moves the sun by at most 15″, so an estimate of delta T within a few seconds shows nowhere. */
    @Test
    void estimatedTimeDifferenceShowsNowhere() {
        Instant noon = Instant.parse("2015-04-20T11:40:00Z");
        SunPosition estimated = SunPosition.of(LYON, noon);
        SunPosition given = SunPosition.of(LYON, noon, 67.6);
        assertThat(estimated.zenithDeg()).isCloseTo(given.zenithDeg(), within(1e-3));
        assertThat(estimated.azimuthDeg()).isCloseTo(given.azimuthDeg(), within(1e-3));
        assertThat(estimated.azimuthDeg()).isCloseTo(180, within(2.0));
        assertThat(estimated.elevationDeg()).isCloseTo(90 - estimated.zenithDeg(), within(1e-12));
    }

    @Test
    void airLiftsALowSunByHalfADegreeAndASunkenOneNotAtAll() {
        SunTimes.RisesAndSets day =
                (SunTimes.RisesAndSets) SunTimes.of(LYON, LocalDate.of(2015, 4, 20), ZoneOffset.UTC);
        SunPosition rising = SunPosition.of(LYON, day.sunrise().plusSeconds(120));
        assertThat(rising.refractionDeg()).isBetween(0.3, 0.6);
        SunPosition midnight = SunPosition.of(LYON, Instant.parse("2015-04-20T23:40:00Z"));
        assertThat(midnight.refractionDeg()).isEqualTo(0);
        assertThat(midnight.elevationDeg()).isNegative();
        assertThat(ClearSky.at(midnight.zenithDeg())).isEqualTo(Light.NONE);
    }

    @Test
    void refusesDirectionsAndLightThatCannotBe() {
        assertThatThrownBy(() -> SunPosition.of(LYON, Instant.EPOCH, Double.NaN))
                .hasMessageContaining("delta T of NaN s");
        assertThatThrownBy(() -> SunTimes.of(LYON, LocalDate.EPOCH, ZoneOffset.UTC, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SunPosition(181, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SunPosition(80, 0, 361)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SunPosition(80, -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Light(100, 101, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Light(100, 10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClearSky.globalWm2(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ClearSky.globalWm2(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        SunPosition sun = new SunPosition(60, 0, 90);
        assertThatThrownBy(() -> Facade.irradianceWm2(sun, Light.NONE, 400, 0.2))
                .hasMessageContaining("facing 400.0");
        assertThatThrownBy(() -> Facade.irradianceWm2(sun, Light.NONE, 90, 1.2)).hasMessageContaining("albedo 1.2");
    }
}
