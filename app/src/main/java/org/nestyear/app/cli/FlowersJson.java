package org.nestyear.app.cli;

import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FlowersAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.forage.Band;
import org.nestyear.core.forage.ForageGap;
import org.nestyear.core.forage.ForageWeek;
import org.nestyear.core.forage.GardenPlant;
import org.nestyear.core.forage.RegionBloom;
import org.nestyear.core.forage.Suggestion;
import org.nestyear.core.forage.ToldFlowers;

/** Flowers in reach as JSON of the schema {@code schema/flowers.schema.json}. */
final class FlowersJson {
    private FlowersJson() {}

    static String of(FlowersAnswer answer) {
        RegionBloom region = answer.forage().region();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.date("release", answer.release());
            json.text("region", region == null ? null : region.region().word());
            json.flag("region_told", answer.inputs().site().region() != null);
            json.flag("other_bloom_counts", answer.countsOtherBloom());
            json.objects("weeks", answer.forage().weeks(), FlowersJson::week);
            json.objects("gaps", answer.forage().gaps(), FlowersJson::gap);
            json.objects("plants", answer.forage().plants(), FlowersJson::plant);
            json.texts("not_counted", answer.undated());
            json.texts(
                    "leaf_plants",
                    answer.forage().leafPlants().stream()
                            .map(told -> told.plant().name())
                            .toList());
            json.objects("leaf_suggestions", answer.forage().leafSuggestions(), (entry, suggestion) -> {
                listed(entry, suggestion.plant());
                entry.text("standing", suggestion.standing().words());
            });
            json.numberOrNull("nectar_alfalfa_flowers_per_cell", answer.forage().nectarFlowers());
            BasisJson.write(json, answer.forage().basis());
            json.texts("methods", FlowersText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void week(JsonText json, ForageWeek week) {
        json.date("from", week.from());
        json.date("to", week.to());
        json.number("cells_wanted", week.cells());
        band(json, "plants_feed_cells", week.fromPlants());
        json.number("other_bloom_feeds_cells", week.fromOther());
        band(json, "ratio", week.ratio());
        json.text("stands", week.fed().words());
    }

    private static void gap(JsonText json, ForageGap gap) {
        json.date("from", gap.from());
        json.date("to", gap.to());
        json.number("cells_wanted", gap.cells());
        band(json, "feed_cells", gap.supply());
        json.objects("suggestions", gap.suggestions(), FlowersJson::suggestion);
        json.texts(
                "little_use",
                gap.littleUse().stream().map(GardenPlant::latinName).toList());
    }

    private static void suggestion(JsonText json, Suggestion suggestion) {
        listed(json, suggestion.plant());
        json.text("standing", suggestion.standing().words());
        json.text("bloom", suggestion.plant().bloom().word());
        json.date("bloom_from", suggestion.bloom().from());
        json.date("bloom_to", suggestion.bloom().to());
        json.whole("weeks_covered", suggestion.weeks());
        band(json, "area_m2", suggestion.areaM2());
    }

    private static void listed(JsonText json, GardenPlant plant) {
        json.text("name", plant.name());
        json.text("latin_name", plant.latinName());
        json.text("growth", plant.growth().word());
        json.text("note", plant.note().isEmpty() ? null : plant.note());
    }

    private static void plant(JsonText json, ToldFlowers told) {
        GardenPlant known = told.known();
        json.text("name", told.plant().name());
        json.text("known_as", known == null ? null : known.latinName());
        json.number("cover_m2", told.plant().coverM2());
        json.numberOrNull("distance_m", told.plant().stand().distanceM());
        json.number("weight", told.counts() ? told.weight() : 0);
        json.flag("within_300_ft", told.inTradeRing());
        json.flag("dates_from_word", told.plant().stand().fromWord());
        json.text("counted_as", told.yield().counted().plural());
        json.text("count_from", told.yield().from().word());
        band(json, "open_per_m2", told.yield().openM2());
        band(json, "per_cell", told.yield().flowersACell());
        band(json, "cells_a_day", told.cells());
    }

    private static void band(JsonText json, String name, @Nullable Band band) {
        if (band == null) {
            return;
        }
        json.object(name, entry -> {
            entry.number("low", band.low());
            entry.number("middle", band.middle());
            entry.number("high", band.high());
        });
    }
}
