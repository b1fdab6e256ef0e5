package org.nestyear.data;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.PlantStand;
import org.nestyear.core.season.SeasonFrame;
import org.tomlj.TomlArray;

/** Makes a plant out of its table: its bloom this season, or what its bloom is worked out from. */
final class PlantPart {
    private static final String THERMAL_TIME = "thermal-time";
    private static final int MOST_DAYS_OPEN = 200;
    private static final double FARTHEST_M = 5000;
    private static final double FEWEST_M2 = 0.01;
    private static final double MOST_M2 = 1e6;
    private static final List<String> OF_BLOOM =
            List.of("first_bloom", "last_bloom", "model", "from", "base_c", "degree_days", "days_open", "past_bloom");
    private static final String PAST_EXPECTED = "a list of dates such as [2013-04-11, 2014-04-09], one a past year";

    private PlantPart() {}

    /**
     * The plant; throws the first fault of its table.
     *
     * @param site the place, by which a plant without dates takes those of its bloom word, or null where it is at fault
     */
    static Plant of(SeasonTable table, LocalDate today, @Nullable Site site) {
        String name = table.text("name");
        double cover = table.has("cover_m2") ? table.number("cover_m2", 0, 1e7, "m²") : 0;
        boolean target = table.has("target") && table.flag("target");
        String species = table.has("species") ? table.text("species") : null;
        Double distance = table.numberOrNull("distance_m", 0, FARTHEST_M, "m from the nests");
        Double flowers = table.numberOrNull("flowers_m2", FEWEST_M2, MOST_M2, "open flowers a square metre");
        BloomDates byWord = byWord(table, today, site, species == null ? name : species, target);
        return new Plant(
                name,
                cover,
                target,
                byWord == null ? bloom(table, today) : byWord,
                past(table, today),
                new PlantStand(species, distance, flowers, byWord != null));
    }

    /** Dates of its bloom word for a listed plant without any of its own that is not the target, else null. */
    private static @Nullable BloomDates byWord(
            SeasonTable table, LocalDate today, @Nullable Site site, String known, boolean target) {
        boolean told = OF_BLOOM.stream().anyMatch(table::has);
        if (told || target || site == null) {
            return null;
        }
        Flora flora = CatalogueFiles.flora();
        int year = SeasonFrame.planningFrom(today).year();
        return flora.find(known)
                .flatMap(plant -> flora.bloom(plant.bloom(), site, year, flora.numbers()))
                .map(span -> new BloomDates.Dated(span.from(), span.to()))
                .orElse(null);
    }

    private static BloomDates bloom(SeasonTable table, LocalDate today) {
        if (table.has("model")) {
            return thermalTime(table);
        }
        refuse(table, List.of("from", "base_c", "degree_days"), "without a model", modelBeside());
        boolean dated = table.has("first_bloom") || table.has("last_bloom");
        if (!dated && table.has("past_bloom")) {
            return new BloomDates.FromPastDates(
                    table.has("days_open") ? table.whole("days_open", 1, MOST_DAYS_OPEN) : null);
        }
        refuse(
                table,
                List.of("days_open"),
                dated ? "beside first_bloom and last_bloom" : "without a model",
                dated ? "it only where those two are not given" : modelBeside());
        if (!dated) {
            throw table.missing(
                    "first_bloom",
                    "first_bloom and last_bloom, or past_bloom, or model = \"" + THERMAL_TIME
                            + "\"; only a plant of the plant list that is not the target may have none");
        }
        LocalDate first = SeasonParts.thisSeason(table, "first_bloom", today);
        LocalDate last = SeasonParts.thisSeason(table, "last_bloom", today);
        SeasonParts.inOrder(table, "first_bloom", first, "last_bloom", last);
        return new BloomDates.Dated(first, last);
    }

    private static String modelBeside() {
        return "model = \"" + THERMAL_TIME + "\" beside it";
    }

    private static BloomDates thermalTime(SeasonTable table) {
        String model = table.text("model");
        if (!model.equals(THERMAL_TIME)) {
            throw table.wrongWord("model", model, "\"" + THERMAL_TIME + "\"", List.of(THERMAL_TIME));
        }
        refuse(table, List.of("first_bloom", "last_bloom", "past_bloom"), "beside a model", "either dates or a model");
        return new BloomDates.ThermalTime(
                monthDay(table),
                table.number("base_c", -5, 20, "°C"),
                table.number("degree_days", 1, 5000, "degree-days"),
                table.whole("days_open", 1, MOST_DAYS_OPEN));
    }

    private static void refuse(SeasonTable table, List<String> keys, String where, String expected) {
        for (String key : keys) {
            if (table.has(key)) {
                throw new DataFault(
                        FaultCode.SEASON_KEY, table.keyPosition(key), key + " is given " + where, expected, "");
            }
        }
    }

    private static MonthDay monthDay(SeasonTable table) {
        String text = table.text("from");
        try {
            return MonthDay.parse("--" + text);
        } catch (DateTimeException e) {
            throw table.wrongWord("from", text, "month and day such as \"02-01\"", List.of());
        }
    }

    private static List<LocalDate> past(SeasonTable table, LocalDate today) {
        if (!table.has("past_bloom")) {
            return List.of();
        }
        TomlArray list = table.list("past_bloom", PAST_EXPECTED);
        if (list.isEmpty()) {
            throw new DataFault(
                    FaultCode.SEASON_MISSING,
                    table.valuePosition("past_bloom"),
                    "the list of past bloom dates is empty",
                    "at least one date, or the line left out",
                    "");
        }
        List<LocalDate> dates = new ArrayList<>();
        Set<Integer> years = new TreeSet<>();
        for (int i = 0; i < list.size(); i++) {
            LocalDate date = pastDate(list.get(i), table.elementPosition(list, i), today);
            if (!years.add(date.getYear())) {
                throw new DataFault(
                        FaultCode.SEASON_ORDER,
                        table.elementPosition(list, i),
                        "past_bloom has two dates in " + date.getYear(),
                        "one date a year, the day of full bloom",
                        "");
            }
            dates.add(date);
        }
        return dates;
    }

    private static LocalDate pastDate(Object value, Position at, LocalDate today) {
        if (!(value instanceof LocalDate date)) {
            boolean quoted = value instanceof String text && Cells.date(text) != null;
            throw new DataFault(
                    FaultCode.SEASON_TYPE,
                    at,
                    "past_bloom holds " + SeasonTable.described(value),
                    PAST_EXPECTED,
                    quoted ? "take the quotation marks away" : "");
        }
        if (date.isAfter(today)) {
            throw new DataFault(
                    FaultCode.SEASON_RANGE,
                    at,
                    "past_bloom holds " + date + ", after the day of the plan, " + today,
                    "dates of past years",
                    "this season's bloom belongs under first_bloom and last_bloom");
        }
        if (date.getYear() == SeasonFrame.planningFrom(today).year()) {
            throw new DataFault(
                    FaultCode.SEASON_RANGE,
                    at,
                    "past_bloom holds " + date + ", of the season that is planned",
                    "dates of past years",
                    "this season's bloom belongs under first_bloom and last_bloom");
        }
        return date;
    }
}
