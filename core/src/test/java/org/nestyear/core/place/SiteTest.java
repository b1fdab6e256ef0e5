package org.nestyear.core.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class SiteTest {
    @Test
    void skylineIsLevelWhereNothingWasSighted() {
        assertThat(site().horizonDeg(123)).isEqualTo(0);
    }

    /** By hand: half way from 12° at 60° to 5° at 120° it is 8.5°. */
    @Test
    void skylineRunsStraightBetweenSightedPoints() {
        Site site = site(new HorizonPoint(60, 12), new HorizonPoint(120, 5), new HorizonPoint(200, 20));
        assertThat(site.horizonDeg(60)).isEqualTo(12);
        assertThat(site.horizonDeg(90)).isCloseTo(8.5, within(1e-12));
        assertThat(site.horizonDeg(120)).isEqualTo(5);
        assertThat(site.horizonDeg(160)).isCloseTo(12.5, within(1e-12));
        assertThat(site.horizonDeg(200)).isEqualTo(20);
    }

    /** By hand: from 20° at 200° to 12° at 60°, 220° on: at north 160/220 of the way, 20 − 8 · 160/220 = 14.1818. */
    @Test
    void skylineGoesRoundThroughNorth() {
        Site site = site(new HorizonPoint(60, 12), new HorizonPoint(120, 5), new HorizonPoint(200, 20));
        assertThat(site.horizonDeg(0)).isCloseTo(14.1818, within(1e-4));
        assertThat(site.horizonDeg(360)).isEqualTo(site.horizonDeg(0));
        assertThat(site.horizonDeg(310)).isCloseTo(16, within(1e-12));
        assertThat(site.horizonDeg(5)).isCloseTo(14, within(1e-12));
    }

    @Test
    void oneSightedPointHoldsAllRoundAndBothNorthsMayBeSighted() {
        assertThat(site(new HorizonPoint(90, 7)).horizonDeg(250)).isCloseTo(7, within(1e-12));
        Site site = site(new HorizonPoint(0, 10), new HorizonPoint(180, 0), new HorizonPoint(360, 10));
        assertThat(site.horizonDeg(0)).isEqualTo(10);
        assertThat(site.horizonDeg(360)).isEqualTo(10);
        assertThat(site.horizonDeg(270)).isCloseTo(5, within(1e-12));
    }

    @Test
    void refusesASkylineOutOfOrderAndAnAzimuthThatIsNone() {
        assertThatThrownBy(() -> site(new HorizonPoint(120, 5), new HorizonPoint(60, 12)))
                .hasMessageContaining("60.0 does not come after 120.0");
        assertThatThrownBy(() -> site(new HorizonPoint(60, 5), new HorizonPoint(60, 12)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> site().horizonDeg(-1)).hasMessageContaining("azimuth -1.0");
        assertThatThrownBy(() -> site().horizonDeg(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Site site(HorizonPoint... points) {
        return new Site("invented", 45, 8, 200, ZoneOffset.UTC, null, List.of(points));
    }
}
