package org.nestyear.data;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Overhang;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Wintered;
import org.tomlj.TomlArray;

/** Makes the parts of a season out of their tables. Each method throws the first fault of its table. */
final class SeasonParts {
    /** Dates of bloom further from the day of the plan than this belong to another season. */
    private static final int SEASON_DAYS = 300;

    private static final double CM_IN_M = 100;
    private static final int MOST_COCOONS = 1_000_000;

    private SeasonParts() {}

    static Site site(SeasonTable table) {
        return new Site(
                table.text("name"),
                table.number("latitude", -90, 90, "degrees north"),
                table.number("longitude", -180, 180, "degrees east"),
                table.number("elevation_m", -430, 6000, "m"),
                zone(table),
                table.numberOrNull("faces_deg", 0, 360, "degrees clockwise from north"),
                table.has("horizon") ? horizon(table) : List.of(),
                roof(table),
                table.has("region") ? table.word("region", Region.values(), Region::word) : null);
    }

    private static @Nullable Overhang roof(SeasonTable table) {
        if (!table.has("roof_out_cm") && !table.has("roof_above_cm")) {
            return null;
        }
        return new Overhang(
                table.number("roof_out_cm", 1, 500, "cm out from the tunnels' face") / CM_IN_M,
                table.number("roof_above_cm", 1, 1000, "cm above the tunnels' middle") / CM_IN_M);
    }

    private static ZoneId zone(SeasonTable table) {
        String name = table.text("zone");
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            Set<String> known = ZoneId.getAvailableZoneIds();
            throw table.wrongWord("zone", name, "a time zone such as America/New_York", List.copyOf(known));
        }
    }

    private static List<HorizonPoint> horizon(SeasonTable table) {
        String expected = "a list of [azimuth, elevation] in degrees";
        TomlArray list = table.list("horizon", expected);
        List<HorizonPoint> points = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            boolean pair = list.get(i) instanceof TomlArray two
                    && two.size() == 2
                    && two.get(0) instanceof Number
                    && two.get(1) instanceof Number;
            if (!pair) {
                throw new DataFault(
                        FaultCode.SEASON_TYPE,
                        table.elementPosition(list, i),
                        "point " + (i + 1) + " of the horizon is not a pair of numbers",
                        expected,
                        "");
            }
            TomlArray two = list.getArray(i);
            double azimuth = ((Number) two.get(0)).doubleValue();
            double elevation = ((Number) two.get(1)).doubleValue();
            if (!(azimuth >= 0 && azimuth <= 360 && elevation >= 0 && elevation <= 90)) {
                throw new DataFault(
                        FaultCode.SEASON_RANGE,
                        table.elementPosition(list, i),
                        "point " + (i + 1) + " of the horizon is [" + azimuth + ", " + elevation + "]",
                        "an azimuth from 0 to 360 and an elevation from 0 to 90 degrees",
                        elevation > 90 ? "the two numbers are swapped" : "");
            }
            points.add(new HorizonPoint(azimuth, elevation));
        }
        points.sort(Comparator.comparingDouble(HorizonPoint::azimuthDeg));
        return points;
    }

    static Batch batch(SeasonTable table) {
        if (table.has("winter_log")) {
            throw new DataFault(
                    FaultCode.SEASON_NOT_YET,
                    table.keyPosition("winter_log"),
                    "a winter log is not read yet",
                    "chill_days and chill_c",
                    "");
        }
        String species = table.text("species");
        String origin = table.text("origin");
        int females = table.whole("females", 0, MOST_COCOONS);
        int males = table.whole("males", 0, MOST_COCOONS);
        if (females + males == 0) {
            throw new DataFault(
                    FaultCode.SEASON_NO_BEES,
                    table.valuePosition("females"),
                    "the batch holds no cocoons",
                    "at least one female or male",
                    "");
        }
        Wintered wintered = table.word("wintered", Wintered.values(), Wintered::word);
        if (wintered != Wintered.FRIDGE) {
            for (String key : List.of("chill_days", "chill_c")) {
                if (table.has(key)) {
                    throw new DataFault(
                            FaultCode.SEASON_KEY,
                            table.keyPosition(key),
                            key + " is given for a batch wintered \"" + wintered.word() + "\"",
                            "that only with wintered = \"fridge\"; elsewhere the weather is used",
                            "");
                }
            }
            return new Batch(species, origin, females, males, wintered, null, null);
        }
        return new Batch(
                species,
                origin,
                females,
                males,
                wintered,
                table.number("chill_days", 0, 400, "days in the fridge up to today"),
                table.number("chill_c", -10, 15, "°C"));
    }

    static Nests nests(SeasonTable table) {
        return new Nests(
                table.word("kind", NestKind.values(), NestKind::word),
                table.flag("openable"),
                table.number("hole_width_mm", 1, 30, "mm"),
                table.number("length_mm", 10, 500, "mm"),
                table.whole("count", 0, MOST_COCOONS));
    }

    static CommunityBloom community(SeasonTable table, LocalDate today) {
        LocalDate from = thisSeason(table, "from", today);
        LocalDate peak = thisSeason(table, "peak", today);
        LocalDate to = thisSeason(table, "to", today);
        inOrder(table, "from", from, "peak", peak);
        inOrder(table, "peak", peak, "to", to);
        return new CommunityBloom(from, peak, to, table.number("level", 0, 1, "(1 feeds every bee that flies)"));
    }

    /** A date near the day of the plan. */
    static LocalDate thisSeason(SeasonTable table, String key, LocalDate today) {
        LocalDate date = table.date(key);
        if (Math.abs(ChronoUnit.DAYS.between(today, date)) > SEASON_DAYS) {
            throw new DataFault(
                    FaultCode.SEASON_RANGE,
                    table.valuePosition(key),
                    key + " is " + date + ", but the plan is made for " + today,
                    "a date of the same season",
                    "the year is that of another season, or \"today\" under [aim] is missing");
        }
        return date;
    }

    static void inOrder(SeasonTable table, String earlierKey, LocalDate earlier, String laterKey, LocalDate later) {
        if (later.isBefore(earlier)) {
            throw new DataFault(
                    FaultCode.SEASON_ORDER,
                    table.valuePosition(laterKey),
                    "\"" + laterKey + "\" is " + later + ", before \"" + earlierKey + "\" on " + earlier,
                    "\"" + laterKey + "\" on the day of \"" + earlierKey + "\" or later",
                    "the two dates are swapped");
        }
    }
}
