package org.nestyear.core.forage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.source.ParameterTable;

/**
 * The plant list.
 *
 * @param plants the plants
 * @param regions the regions, the first that holds a place being its own
 * @param numbers flowers, needs and distances
 */
public record Flora(List<GardenPlant> plants, List<RegionBloom> regions, ParameterTable numbers) {
    public Flora {
        plants = List.copyOf(plants);
        regions = List.copyOf(regions);
    }

    /** The list's plant that goes by a name. */
    public Optional<GardenPlant> find(String name) {
        return plants.stream().filter(plant -> plant.isCalled(name)).findFirst();
    }

    /** The list's plant that a told plant is: by its species where that is told, else by the keeper's own name. */
    public Optional<GardenPlant> find(Plant told) {
        String species = told.stand().species();
        return find(species == null ? told.name() : species);
    }

    /** The region of a place: as told, else the one in whose box it lies; empty elsewhere. */
    public Optional<RegionBloom> region(Site site) {
        Region told = site.region();
        return regions.stream()
                .filter(each -> told == null ? each.holds(site) : each.region() == told)
                .findFirst();
    }

    /**
     * When a plant of a bloom word blooms at a place: the region's dates, in spring later with latitude and height.
     *
     * @param read the numbers, read through a log
     * @return empty where the region is not known or does not have the word
     */
    public Optional<BloomSpan> bloom(BloomWord word, Site site, int year, ParameterReader read) {
        return region(site)
                .flatMap(region -> Optional.ofNullable(region.dates(word)).map(dates -> {
                    double degrees = site.latitudeDeg()
                            - region.wordsLatDeg()
                            + (site.elevationM() - region.wordsHeightM()) / read.value("height_per_degree_m");
                    long late = Math.round(dates.moves() * degrees * read.value("later_per_degree_days"));
                    return new BloomSpan(
                            day(dates.from().atYear(year), late),
                            day(dates.peak().atYear(year), late),
                            day(dates.to().atYear(year), late));
                }));
    }

    private static LocalDate day(LocalDate date, long late) {
        return date.plusDays(late);
    }
}
