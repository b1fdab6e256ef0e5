package org.nestyear.checks.forage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.nestyear.core.forage.BloomSpan;
import org.nestyear.core.forage.BloomWord;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.RegionBloom;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;
import org.nestyear.data.CatalogueFiles;

/** What bloom words mean from place to place. */
class BloomWordsTest {
    private static final Flora FLORA = CatalogueFiles.flora();

    private static Site site(double latitude, double longitude, double height, @Nullable Region region) {
        return new Site("Invented", latitude, longitude, height, ZoneOffset.UTC, null, List.of(), null, region);
    }

    private static BloomSpan bloom(BloomWord word, Site site) {
        return FLORA.bloom(word, site, 2015, FLORA.numbers()).orElseThrow();
    }

    @Test
    void placesLieInTheirRegions() {
        assertThat(region(site(40.8, -74, 0, null))).isEqualTo(Region.EASTERN_NORTH_AMERICA);
        assertThat(region(site(45.5, -122.7, 0, null))).isEqualTo(Region.WESTERN_NORTH_AMERICA);
        assertThat(region(site(51.5, 0, 0, null))).isEqualTo(Region.NORTH_WEST_EUROPE);
        assertThat(region(site(48.9, 8.7, 0, null))).isEqualTo(Region.CENTRAL_EUROPE);
        assertThat(region(site(51.5, 0, 0, Region.CENTRAL_EUROPE))).isEqualTo(Region.CENTRAL_EUROPE);
        assertThat(FLORA.region(site(-33, 151, 0, null))).isEmpty();
    }

    private static Region region(Site site) {
        return FLORA.region(site).map(RegionBloom::region).orElseThrow();
    }

    /** Hopkins 1918 (from memory): four days a degree of latitude, and 400 ft count as one degree; in spring. */
    @Test
    void springComesLaterFartherNorthAndHigherUp() {
        Site at = site(41, -74, 0, null);
        LocalDate peak = bloom(BloomWord.MID_SPRING, at).peak();
        assertThat(bloom(BloomWord.MID_SPRING, site(43, -74, 0, null)).peak()).isEqualTo(peak.plusDays(8));
        assertThat(bloom(BloomWord.MID_SPRING, site(41, -74, 244, null)).peak()).isEqualTo(peak.plusDays(8));
        LocalDate summer = bloom(BloomWord.LATE_SUMMER, at).peak();
        assertThat(bloom(BloomWord.LATE_SUMMER, site(43, -74, 244, null)).peak())
                .isEqualTo(summer);
    }

    /** Words follow each other through the year in every region, and those without early, mid or late span the others. */
    @Test
    void wordsAreInOrder() {
        List<BloomWord> order = List.of(
                BloomWord.LATE_WINTER,
                BloomWord.EARLY_SPRING,
                BloomWord.MID_SPRING,
                BloomWord.LATE_SPRING,
                BloomWord.EARLY_SUMMER,
                BloomWord.MID_SUMMER,
                BloomWord.LATE_SUMMER,
                BloomWord.FALL);
        int compared = 0;
        for (RegionBloom region : FLORA.regions()) {
            Site site = site(region.wordsLatDeg(), 0, 0, region.region());
            for (int i = 1; i < order.size(); i++) {
                BloomSpan before = bloom(order.get(i - 1), site);
                BloomSpan after = bloom(order.get(i), site);
                assertThat(after.peak()).isAfter(before.peak());
                assertThat(after.from())
                        .isAfter(before.from())
                        .isBefore(before.to().plusDays(1));
                compared++;
            }
            BloomSpan spring = bloom(BloomWord.SPRING, site);
            assertThat(spring.from()).isBefore(bloom(BloomWord.MID_SPRING, site).from());
            assertThat(spring.to()).isAfter(bloom(BloomWord.MID_SPRING, site).to());
        }
        assertThat(compared).isEqualTo(28);
    }
}
