package org.nestyear.data;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.MonthDay;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.nestyear.core.forage.BloomWord;
import org.nestyear.core.forage.Breeding;
import org.nestyear.core.forage.Counted;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.GardenPlant;
import org.nestyear.core.forage.Growth;
import org.nestyear.core.forage.RegionBloom;
import org.nestyear.core.forage.Standing;
import org.nestyear.core.forage.WordDates;
import org.nestyear.core.place.Region;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.Source;

/** Makes the plant list out of its tables: {@code plants}, {@code regions} and {@code bloom_words}. */
final class FloraFiles {
    private FloraFiles() {}

    static Flora of(
            List<NamedCsvRecord> plants,
            List<NamedCsvRecord> regions,
            List<NamedCsvRecord> words,
            ParameterTable numbers,
            Map<String, Source> sources) {
        return new Flora(
                plants.stream().map(row -> plant(row, sources)).toList(),
                regions.stream().map(row -> region(row, words)).toList(),
                numbers);
    }

    private static GardenPlant plant(NamedCsvRecord row, Map<String, Source> sources) {
        String other = row.getField("other_names");
        String bees = row.getField("bees");
        Map<Region, Standing> standings = new EnumMap<>(Region.class);
        standings.put(Region.EASTERN_NORTH_AMERICA, standing(row.getField("east")));
        standings.put(Region.WESTERN_NORTH_AMERICA, standing(row.getField("west")));
        standings.put(Region.NORTH_WEST_EUROPE, standing(row.getField("north_west")));
        standings.put(Region.CENTRAL_EUROPE, standing(row.getField("central")));
        return new GardenPlant(
                row.getField("id"),
                row.getField("name"),
                row.getField("latin_name"),
                other.isEmpty() ? List.of() : List.of(other.split(";")),
                word(row.getField("form"), Growth.values(), Growth::word),
                BloomWord.ofWord(row.getField("bloom")),
                source(row.getField("bloom_source"), sources),
                standings,
                bees.equals("mason") || bees.equals("both"),
                bees.equals("leafcutter") || bees.equals("both"),
                source(row.getField("bees_source"), sources),
                row.getField("leaf").equals("yes"),
                source(row.getField("leaf_source"), sources),
                word(row.getField("kind"), Breeding.values(), Breeding::word),
                word(
                        row.getField("counted_as"),
                        Counted.values(),
                        each -> each.name().toLowerCase(Locale.ROOT)),
                row.getField("note"));
    }

    private static Standing standing(String word) {
        return word(
                word.equals("no") ? "absent" : word,
                Standing.values(),
                each -> each.name().toLowerCase(Locale.ROOT));
    }

    private static RegionBloom region(NamedCsvRecord row, List<NamedCsvRecord> words) {
        Map<BloomWord, WordDates> dates = new EnumMap<>(BloomWord.class);
        for (NamedCsvRecord word : words) {
            if (word.getField("region").equals(row.getField("region"))) {
                dates.put(
                        BloomWord.ofWord(word.getField("word")),
                        new WordDates(
                                day(word.getField("from")),
                                day(word.getField("peak")),
                                day(word.getField("to")),
                                number(word, "moves")));
            }
        }
        return new RegionBloom(
                Region.ofWord(row.getField("region")),
                row.getField("name"),
                number(row, "lat_low"),
                number(row, "lat_high"),
                number(row, "lon_low"),
                number(row, "lon_high"),
                number(row, "words_lat"),
                number(row, "words_height_m"),
                dates);
    }

    private static double number(NamedCsvRecord row, String field) {
        return Double.parseDouble(row.getField(field));
    }

    private static MonthDay day(String text) {
        return MonthDay.parse("--" + text);
    }

    private static Source source(String key, Map<String, Source> sources) {
        Source source = sources.get(key);
        if (source == null) {
            throw new IllegalStateException("catalogue table plants: no source has the key \"" + key + "\"");
        }
        return source;
    }

    private static <E extends Enum<E>> E word(String given, E[] values, Function<E, String> word) {
        for (E value : values) {
            if (word.apply(value).equals(given)) {
                return value;
            }
        }
        throw new IllegalStateException("catalogue table plants: \"" + given + "\" is none of its words");
    }
}
