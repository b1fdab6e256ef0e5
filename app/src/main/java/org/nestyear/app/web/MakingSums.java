package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumFact.span;
import static org.nestyear.app.web.SumField.celsius;
import static org.nestyear.app.web.SumField.choice;
import static org.nestyear.app.web.SumField.measure;
import static org.nestyear.app.web.SumField.text;

import java.util.List;
import org.nestyear.app.web.SumField.Choice;
import org.nestyear.core.advice.Unit;

/** Calculators of rinses, mud, tunnels and bees. */
final class MakingSums {
    private MakingSums() {}

    static List<Sum> all() {
        return List.of(rinse(), rinseTo(), jar(), laboratory(), tunnels(), orchard(), trees(), range());
    }

    private static Sum rinse() {
        return Sum.of("rinse", "A bleach rinse", "How strong is it, and may it be used on this?", "rinse")
                .asks(item(), bottle(), bleach(), water(), age())
                .shows(rinseFacts());
    }

    private static Sum rinseTo() {
        return Sum.of("rinse-to", "A rinse of a wanted strength", "How much bleach for so much water?", "rinse")
                .asks(item(), bottle(), text("--target-ppm", "Strength wanted, ppm", "500"), water(), age())
                .shows(rinseFacts());
    }

    private static SumFact[] rinseFacts() {
        return new SumFact[] {number("Available chlorine", "ppm", 0, "ppm"), number("Bleach", "bleach_ml", 0, "ml")};
    }

    private static SumField item() {
        return choice(
                "--item",
                "What is rinsed",
                "cocoon",
                () -> List.of(
                        new Choice("gear", "empty gear"),
                        new Choice("cocoon", "cocoons of mason bees"),
                        new Choice("leaf-cell", "leaf cells"),
                        new Choice("guest", "cocoons of wild guests")));
    }

    private static SumField bottle() {
        return text("--label-percent", "Sodium hypochlorite by the label, %", "5.25");
    }

    private static SumField bleach() {
        return measure("--bleach", "Bleach, ml", "ml", "60", "Bleach, cups", "cup", "0.25");
    }

    private static SumField water() {
        return measure(
                "--water", "Water it is poured into, litres", "l", "4", "Water it is poured into, gallons", "gal", "1");
    }

    private static SumField age() {
        return text("--bottle-months", "Age of the bottle, months", "").optional();
    }

    private static Sum jar() {
        return soil("mud", "Mud by the jar test")
                .asks(
                        text("--jar", "Layers from below, mm: sand,silt,clay", "40,25,8"),
                        measure(
                                        "--height",
                                        "Height of the water in the jar, mm",
                                        "mm",
                                        "",
                                        "Height of the water in the jar, inches",
                                        "in",
                                        "")
                                .optional()
                                .help("100 mm (4 in) unless told."),
                        celsius("--water-c", "Temperature of the water", "", "")
                                .optional()
                                .help("20 °C (68 °F) unless told."),
                        tray(),
                        evaporation());
    }

    private static Sum laboratory() {
        return soil("mud-laboratory", "Mud by a laboratory")
                .asks(
                        text("--sand", "Sand, %", "40"),
                        text("--silt", "Silt, %", "40"),
                        text("--clay", "Clay, %", "20"),
                        tray(),
                        evaporation());
    }

    private static SumField tray() {
        return measure("--tray", "Tray of mud, sides, cm", "", "30x40cm", "Tray of mud, sides, inches", "", "12x16in")
                .optional()
                .help("With an x between: 30x40cm or 12x16in.");
    }

    private static SumField evaporation() {
        return text("--et0-mm", "Evaporation of short grass, mm a day", "4")
                .optional()
                .help("With the tray; weather services give it as reference evapotranspiration.");
    }

    private static Sum soil(String slug, String title) {
        return Sum.of(slug, title, "Will bees take this soil, and how much water keeps it wet?", "mud")
                .shows(
                        SumFact.word("Soil", "texture_class"),
                        number("Sand", "sand_percent", 0, "%"),
                        number("Silt", "silt_percent", 0, "%"),
                        number("Clay", "clay_percent", 0, "%"),
                        SumFact.of("Water for the tray a day", "water_l_per_day", Unit.LITRE, 2));
    }

    private static Sum tunnels() {
        return Sum.of("tunnels", "Tunnels to hang", "How many tunnels do these females need?", "tunnels")
                .asks(
                        choice("--species", "Bee", "Osmia lignaria", BeeChoices::all),
                        text("--females", "Female cocoons or cells put out", "120"))
                .shows(
                        number("Tunnels to hang", "tunnels_needed", 0, ""),
                        span("Between", "low", "high", Unit.COUNT, 0),
                        SumFact.of("Hole width", "hole_width_mm", Unit.MILLIMETRE, 1),
                        SumFact.of("Depth", "length_mm", Unit.MILLIMETRE, 0),
                        span(
                                "Females that stay and nest",
                                "nesting_females/low",
                                "nesting_females/high",
                                Unit.COUNT,
                                0));
    }

    private static Sum orchard() {
        return bees("orchard", "Bees for an orchard", "How many bees and tunnels does this area want?")
                .asks(
                        crop(),
                        measure("--area", "Area, hectares", "ha", "0.5", "Area, acres", "acre", "1"),
                        orchardBee());
    }

    private static Sum trees() {
        return bees("orchard-trees", "Bees for so many trees", "How many bees and tunnels do these trees want?")
                .asks(
                        crop(),
                        text("--trees", "Trees", "40"),
                        text("--spacing", "Distance of rows and of trees", "5x4m")
                                .optional()
                                .help("With an x between and the unit: 5x4m or 16x13ft."),
                        orchardBee());
    }

    private static SumField crop() {
        return text("--crop", "Crop", "apple")
                .help(
                        "In a word, such as apple, almond, alfalfa or blueberry. Where no rate is published the answer says so.");
    }

    private static SumField orchardBee() {
        return choice("--species", "Bee", "Osmia lignaria", BeeChoices::all);
    }

    private static Sum bees(String slug, String title, String question) {
        return Sum.of(slug, title, question, "orchard")
                .shows(
                        span("Females that should nest", "females_low", "females_high", Unit.COUNT, 0),
                        number("Female cocoons to put out", "female_cocoons", 0, ""),
                        span("Female cocoons, between", "female_cocoons_low", "female_cocoons_high", Unit.COUNT, 0),
                        number("Male cocoons", "male_cocoons", 0, ""),
                        span("Tunnels", "tunnels_low", "tunnels_high", Unit.COUNT, 0));
    }

    private static Sum range() {
        return Sum.of("range", "How far a bee flies", "Within what distance do flowers count?", "range")
                .asks(text("--span-mm", "Distance between the wing bases, mm", "2.9")
                        .help("About 2.9 for a blue orchard bee, 2.2 for an alfalfa leafcutting bee."))
                .shows(
                        SumFact.of("Works within", "working_m", Unit.METRE, 0),
                        span("Works within, relatives", "working_range_m/low", "working_range_m/high", Unit.METRE, 0),
                        number("Half find home from", "typical_km", 2, "km"),
                        number("A tenth find home from", "max_km", 2, "km"));
    }
}
