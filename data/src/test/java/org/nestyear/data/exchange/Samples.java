package org.nestyear.data.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.nestyear.core.losses.Cause;
import org.nestyear.data.exchange.NestOccurrence.Found;
import org.nestyear.data.exchange.NestOccurrence.NativeHere;
import org.nestyear.data.exchange.NestOccurrence.Stage;
import org.nestyear.data.exchange.NestOccurrence.Stock;

/** Invented sites, plants, jobs and openings. */
final class Samples {
    static final Instant NOON = Instant.parse("2015-03-10T12:00:00Z");
    static final PlacedSite LANE = new PlacedSite(
            "3f0c1f6e-6f0e-4d55-8a3a-0d3d5c1f2a01",
            "Tansy Lane, orchard; \"upper\" \\ end",
            new Coordinates(40.781234, -73.967891),
            25.0,
            40.0,
            135.0);
    /** A name of many-octet characters: Turkish, Chinese and a sign beyond the first 65 536. */
    static final PlacedSite FAR = new PlacedSite(
            "3f0c1f6e-6f0e-4d55-8a3a-0d3d5c1f2a02",
            "Iğdır bahçesi 蜜蜂園 🐝",
            new Coordinates(39.92, 44.04),
            null,
            null,
            null);

    private Samples() {}

    static CalendarJob job(String id, String from, String to) {
        return job(LANE, id, from, to, "Cool mornings keep them in the box; it lies dry, dark and near the nests.");
    }

    static CalendarJob job(PlacedSite site, String id, String from, String to, String reason) {
        return new CalendarJob(
                site.id(),
                site.name(),
                "Osmia lignaria",
                2015,
                id,
                "Put the cocoons out",
                LocalDate.parse(from),
                LocalDate.parse(to),
                "120 females and 210 males.",
                reason,
                "A week later costs 7 % of the daughters (3 to 12 %).",
                "Use a steady ladder.",
                List.of("chill_days 150 d, measured: Bosch & Kemp 2003; table 2.", "box excess 2 °C, assumed."));
    }

    static NestOccurrence opening(int number, Found found) {
        return new NestOccurrence(
                UUID.fromString(String.format("00000000-0000-4000-8000-%012d", number)),
                LANE,
                "east",
                "T" + number,
                NestTaxon.bee("Osmia lignaria", "blue orchard bee"),
                LocalDate.parse("2015-10-03"),
                LocalDate.parse("2015-10-05"),
                Stock.MANAGED,
                NativeHere.NATIVE,
                Stage.ADULT,
                found,
                8.0,
                "R. Keeper, \"the younger\"",
                NOON);
    }

    static Found tally() {
        return new Found(4, 31, 9, 14, 2, Map.of(Cause.CHALKBROOD, 1, Cause.WASPS, 4, Cause.POLLEN_BALLS, 1));
    }
}
