package org.nestyear.core.forage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.nestyear.core.place.Region;
import org.nestyear.core.source.Source;

/**
 * A plant of the plant list.
 *
 * @param id its name in the tables of numbers
 * @param name common name
 * @param latinName Latin name
 * @param otherNames other names a keeper may use
 * @param growth how it grows
 * @param bloom when it blooms, in a word
 * @param bloomSource where that word comes from
 * @param standings what it is in each region
 * @param mason whether mason bees gather its pollen
 * @param leafcutter whether leafcutter bees do
 * @param beesSource where that comes from
 * @param leaf whether leafcutter bees cut its leaves
 * @param leafSource where that comes from
 * @param breeding what breeders made of its flowers
 * @param counted what is counted as one flower
 * @param note a caution or a hint, or empty
 */
public record GardenPlant(
        String id,
        String name,
        String latinName,
        List<String> otherNames,
        Growth growth,
        BloomWord bloom,
        Source bloomSource,
        Map<Region, Standing> standings,
        boolean mason,
        boolean leafcutter,
        Source beesSource,
        boolean leaf,
        Source leafSource,
        Breeding breeding,
        Counted counted,
        String note) {
    public GardenPlant {
        otherNames = List.copyOf(otherNames);
        standings = Map.copyOf(standings);
        for (Region region : Region.values()) {
            if (!standings.containsKey(region)) {
                throw new IllegalArgumentException(name + " has no standing in " + region.word());
            }
        }
    }

    /** What it is in a region. */
    public Standing in(Region region) {
        return Objects.requireNonNull(standings.get(region));
    }

    /** True when it goes by this name, whatever the case of its letters. */
    public boolean isCalled(String given) {
        return Stream.concat(Stream.of(name, latinName), otherNames.stream()).anyMatch(given.strip()::equalsIgnoreCase);
    }
}
