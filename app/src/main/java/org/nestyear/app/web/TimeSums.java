package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.dates;
import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumFact.span;
import static org.nestyear.app.web.SumField.celsius;
import static org.nestyear.app.web.SumField.choice;
import static org.nestyear.app.web.SumField.date;
import static org.nestyear.app.web.SumField.table;
import static org.nestyear.app.web.SumField.text;

import java.util.List;
import java.util.stream.Stream;
import org.nestyear.app.service.Demo;
import org.nestyear.core.advice.Unit;

/** Calculators of dates, warmth and cold. */
final class TimeSums {
    private static final String LEAFCUTTER = "--species=Megachile rotundata";
    private static final String WEATHER = "Daily weather";
    private static final String LATITUDE = "Latitude, degrees north";
    private static final String LOG = """
            time,temp_c
            2026-06-01 08:00,29.1
            2026-06-01 14:00,29.8
            2026-06-01 20:00,29.6
            2026-06-02 08:00,29.2
            2026-06-02 20:00,29.5
            2026-06-03 08:00,29.3
            """;

    private static final String STORE = """
            time,temp_c
            2025-12-01 08:00,3.1
            2025-12-08 08:00,2.9
            2025-12-15 08:00,3.4
            2025-12-22 08:00,3.0
            """;

    private TimeSums() {}

    static List<Sum> all() {
        return List.of(
                winter(),
                emerge(),
                emergeOutdoors(),
                warm(),
                warmBackwards(),
                warmByLog(),
                degreeDays(),
                degreeDaysOver(),
                chill());
    }

    private static Sum winter() {
        return Sum.of("winter", "The winter store", "Is the store all right, and how long can they wait?", "winter")
                .leads(2)
                .asks(
                        choice("--species", "Bee", "Osmia lignaria", BeeChoices::all),
                        table("--log", "Log of the store", STORE)
                                .help(
                                        "Temperatures among the cocoons: a table with the columns time and temp_c or temp_f."),
                        text("--before-days", "Days of cold before the log began", "40")
                                .optional(),
                        celsius("--before-c", "Temperature of those days", "3", "37")
                                .optional(),
                        text("--rh", "Relative humidity in the store, %", "").optional(),
                        choice("--kept", "Where they are kept", "", TimeSums::stores)
                                .optional()
                                .help("In the fridge unless told: its limits hold for it alone."))
                .shows(
                        number("Days of cold so far", "chill_days", 0, ""),
                        number("Weight spent of what they can spare", "body_fat_spent_percent", 0, "%"),
                        number("Days they can still wait", "days_left", 0, ""));
    }

    private static Sum emerge() {
        return Sum.of(
                        "emerge",
                        "Mason bees after the fridge",
                        "How many days until they leave their cocoons at one temperature?",
                        "emerge")
                .leads(3)
                .asks(bee(), chillDays(), chillTemperature(), celsius("--at-c", "Kept at afterwards", "20", "68"))
                .shows(
                        span("Males: from a tenth to nine tenths out", "male/p10_days", "male/p90_days", Unit.DAY, 1),
                        SumFact.of("Half the males out after", "male/p50_days", Unit.DAY, 1),
                        span(
                                "Females: from a tenth to nine tenths out",
                                "female/p10_days",
                                "female/p90_days",
                                Unit.DAY,
                                1),
                        SumFact.of("Half the females out after", "female/p50_days", Unit.DAY, 1));
    }

    private static Sum emergeOutdoors() {
        return Sum.of(
                        "emerge-outdoors",
                        "Mason bees put out",
                        "On which days do they leave their cocoons in your weather?",
                        "emerge")
                .leads(3)
                .asks(
                        bee(),
                        chillDays(),
                        chillTemperature(),
                        date("--out", "Day they are put out", "2014-04-10"),
                        text("--lat", LATITUDE, "40.78"),
                        weather())
                .shows(
                        dates("Males: from a tenth to nine tenths out", "male/p10", "male/p90"),
                        SumFact.word("Half the males out", "male/p50"),
                        dates("Females: from a tenth to nine tenths out", "female/p10", "female/p90"),
                        SumFact.word("Half the females out", "female/p50"));
    }

    private static SumField bee() {
        return choice("--species", "Bee", "Osmia lignaria", BeeChoices::mason);
    }

    private static SumField chillDays() {
        return text("--chill-days", "Days in the fridge", "150");
    }

    private static SumField chillTemperature() {
        return celsius("--chill-c", "Temperature of the fridge", "3", "37");
    }

    private static List<SumField.Choice> stores() {
        return Stream.of("fridge", "shed", "outdoors", "unopened")
                .map(word -> new SumField.Choice(word, word))
                .toList();
    }

    /** A station's days. */
    static SumField weather() {
        return table("--weather", WEATHER, Demo.weather())
                .help("A table with a line a day: date, tmin_c, tmax_c, rain_mm. Fahrenheit and inches are read where"
                        + " the heading says so. That of the example is real.");
    }

    private static Sum warm() {
        return warming(
                        "warm",
                        "Leafcutter bees in the incubator",
                        "When do they come out if warming begins on this day?")
                .asks(
                        among(),
                        date("--start", "Day warming begins", "2026-06-01"),
                        text("--days-warmed", "Days warmed before", "").optional(),
                        text("--lat", LATITUDE, "").optional().help("For the second generation."));
    }

    private static Sum warmBackwards() {
        return warming(
                        "warm-back",
                        "Leafcutter bees for a day of bloom",
                        "When must warming begin to have half the females out by this day?")
                .asks(among(), date("--ready-by", "Day of bloom", "2026-06-22"));
    }

    private static Sum warmByLog() {
        return warming("warm-log", "Leafcutter bees by your log", "When do they come out, by the warmth so far?")
                .asks(
                        table("--log", "Log of the incubator", LOG)
                                .help("Temperatures among the cells since warming began: a table with the columns time"
                                        + " and temp_c or temp_f."),
                        celsius("--at-c", "Kept at afterwards", "", "")
                                .optional()
                                .help("As on the last day of the log unless told."));
    }

    private static SumField among() {
        return celsius("--at-c", "Temperature among the cells", "29.4", "85")
                .help("Among the cells, not in the air of the room.");
    }

    private static Sum warming(String slug, String title, String question) {
        return Sum.of(slug, title, question, "warm", LEAFCUTTER)
                .shows(
                        dates("First males", "first_male/early", "first_male/late"),
                        dates("First females", "first_female/early", "first_female/late"),
                        dates("Half the females", "half_females/early", "half_females/late"),
                        dates("Most bees", "most_out/early", "most_out/late"),
                        dates("Watch for parasitoids", "parasitoid_watch/from", "parasitoid_watch/to"));
    }

    private static Sum degreeDays() {
        return degreeDays("degree-days", "Degree-days of a day")
                .asks(
                        celsius("--min", "Lowest of the day", "4", "39"),
                        celsius("--max", "Highest of the day", "17", "63"),
                        celsius("--base", "Base", "5", "41").help("Warmth counts above this."),
                        celsius("--cap", "Cap", "", "").optional());
    }

    private static Sum degreeDaysOver() {
        return degreeDays("degree-days-over", "Degree-days over a season")
                .asks(
                        celsius("--base", "Base", "5", "41").help("Warmth counts above this."),
                        celsius("--cap", "Cap", "30", "86").optional(),
                        date("--from", "First day", "2014-03-01"),
                        date("--to", "Last day", "2014-05-31"),
                        weather());
    }

    private static Sum degreeDays(String slug, String title) {
        return Sum.of(slug, title, "How much warmth above a base?", "degree-days")
                .shows(
                        SumFact.of("Warmth above the base", "degree_days", Unit.DEGREE_DAY, 1),
                        SumFact.of("By plain means", "degree_days_of_means", Unit.DEGREE_DAY, 1),
                        number("Days summed", "days", 0, ""));
    }

    private static Sum chill() {
        return Sum.of("chill", "Chill of fruit trees", "How much cold and warmth did the trees count?", "chill")
                .asks(
                        text("--lat", LATITUDE, "40.78"),
                        date("--from", "First day", "2013-11-01"),
                        date("--to", "Last day", "2014-03-15"),
                        weather())
                .shows(
                        number("Chill portions (dynamic model)", "chill_portions", 1, ""),
                        number("Utah chill units", "utah_units", 0, ""),
                        number("Chilling hours", "chilling_hours", 0, ""),
                        SumFact.of("Growing warmth", "growing_degree_hours", Unit.DEGREE_HOUR, 0));
    }
}
