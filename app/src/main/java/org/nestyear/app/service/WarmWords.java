package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.leafcutter.Holding;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Stage;

/** Says in words what a warming of leafcutters wants heeding: the hold, the winter, the hazards. */
public final class WarmWords {
    private static final List<String> ALWAYS = List.of(
            "calendar_c",
            "release_air_c",
            "hold_mild_low_c",
            "hold_mild_high_c",
            "hold_mild_days",
            "hold_cold_low_c",
            "hold_cold_days",
            "hold_pulse_short_hours",
            "hold_pulse_short_days",
            "hold_pulse_long_hours",
            "hold_pulse_long_days",
            "egg_prepupa_cool_c",
            "egg_prepupa_cool_death",
            "lab_life_f_days",
            "lab_life_m_days",
            "store_low_c",
            "store_high_c",
            "store_watch_c",
            "store_brief_low_c",
            "store_brief_high_c",
            "store_brief_days",
            "store_even_days",
            "autumn_warm_c",
            "autumn_warm_days",
            "autumn_hot_c",
            "autumn_hot_days");
    private static final List<String> INDOORS =
            List.of("polystyrene_excess_c", "paper_excess_c", "wood_excess_c", "nest_heat_air_c");

    private WarmWords() {}

    /**
     * A hazard and what to do about it.
     *
     * @param id stable name
     * @param text one or two sentences
     */
    public record Caution(String id, String text) {}

    /** Names of the numbers that the words about this question say. */
    static List<String> rows(WarmQuestion question) {
        List<String> rows = new ArrayList<>(ALWAYS);
        if (isIndoors(question)) {
            rows.addAll(INDOORS);
        }
        return rows;
    }

    private static boolean isIndoors(WarmQuestion question) {
        return !(question.warmth() instanceof WarmQuestion.Outdoors);
    }

    /** The cautions, the most pressing first; never empty. */
    public static List<Caution> cautions(WarmAnswer answer, Wording words) {
        List<Caution> cautions = new ArrayList<>();
        if (answer.tooHotHours() >= 1) {
            cautions.add(
                    new Caution(
                            "heat",
                            Wording.number(answer.tooHotHours(), 0) + " hours "
                                    + (answer.years() == null ? "of the log" : "of a mean summer") + " are above "
                                    + celsius(words, answer.value("heat_watch_c"), 0)
                                    + ", and in steady heat like that no bee came out: shade them, air them, and measure among the cells."));
        }
        if (isIndoors(answer.question())) {
            cautions.add(new Caution(
                    "nest-heat",
                    "From the tenth day on closed nests warm themselves: at "
                            + celsius(words, answer.value("nest_heat_air_c"), 0) + " in the room it was "
                            + celsius(words, heated(answer, "polystyrene_excess_c"), 0) + " in polystyrene boards, "
                            + celsius(words, heated(answer, "paper_excess_c"), 0) + " in paper nests and "
                            + celsius(words, heated(answer, "wood_excess_c"), 0)
                            + " in wood. Measure among the cells, not in the air, and let air through."));
        }
        boolean warmed = !(answer.question().before() instanceof WarmQuestion.Fresh);
        if (warmed && answer.start().equals(answer.date(Milestone.FIRST_MALE).early())) {
            cautions.add(new Caution(
                    "already-out",
                    "By the warmth they have had, the first bees may be out in the box: keep it closed, dark and cool, and"
                            + " open it among the nests."));
        }
        Double stored = answer.question().storedDays();
        if (stored != null && stored < answer.value("store_even_days")) {
            cautions.add(new Caution(
                    "stored-briefly",
                    "They were stored " + words.quantity(Quantity.days(stored)) + "; about "
                            + words.quantity(Quantity.days(answer.value("store_even_days")))
                            + " in the cold make them come out evenly, so expect stragglers."));
        }
        cautions.add(new Caution(
                "dust",
                "Dust of leaves, moulds, droppings and mites comes off cells and nests: wear a dust mask and work"
                        + " outdoors or by an open window."));
        cautions.add(
                new Caution(
                        "light-trap",
                        "A dim ultraviolet lamp over a tray of soapy water in the dark room draws the parasitoids. It draws and"
                                + " drowns bees as well: put it out before the first males. Fix it so that it cannot fall into"
                                + " the water, and do not look into it. Insecticide strips only where label and law allow them."));
        cautions.add(new Caution(
                "never-rinse",
                "Never rinse, float or bleach leaf cells: leaves let water in, and the young drown. Washing is for mason"
                        + " cocoons."));
        cautions.add(new Caution(
                "moving-bees",
                "Rules on bringing bees over a border, also between states and provinces, differ and change: ask the"
                        + " agriculture authority before you buy, sell or move them, and never release them where this"
                        + " species does not live already."));
        return cautions;
    }

    private static double heated(WarmAnswer answer, String excess) {
        return answer.value("nest_heat_air_c") + answer.value(excess);
    }

    /** What may be held, at which temperature, how long, and what it costs. */
    public static List<String> holding(WarmAnswer answer, Wording words) {
        if (!isIndoors(answer.question())) {
            return List.of(
                    "Outdoors a cool spell slows them by itself: leave them where they are. Cells that have begun are"
                            + " not put back into the cold: that was tried only at later stages, indoors.");
        }
        DateBand eyes = answer.date(Milestone.COLOURED_EYES);
        DateBand white = answer.date(Milestone.WHITE_PUPAE);
        List<String> lines = new ArrayList<>();
        lines.add("To wait for better weather, go on until the pupae have coloured eyes (about " + band(words, eyes)
                + "; open one cell and look). From then until the first bees come out they bear "
                + celsius(words, answer.value("hold_mild_low_c"), 0) + " to "
                + celsius(words, answer.value("hold_mild_high_c"), 0) + " for "
                + days(words, answer.value("hold_mild_days")) + " without loss; the warmer end is the better one.");
        lines.add("Colder, down to " + celsius(words, answer.value("hold_cold_low_c"), 0) + ", at most "
                + days(words, answer.value("hold_cold_days")) + ", and fewer nest afterwards; with a warm spell of "
                + celsius(words, 20, 0) + " to " + celsius(words, 25, 0) + " every day, "
                + days(words, answer.value("hold_pulse_short_days")) + " with one of "
                + Wording.number(answer.value("hold_pulse_short_hours"), 0) + " hour and "
                + days(words, answer.value("hold_pulse_long_days")) + " with one of "
                + Wording.number(answer.value("hold_pulse_long_hours"), 0) + " hours.");
        lines.add("Do not cool them from the first white pupae (about " + band(words, white)
                + ") until the eyes colour: nobody has tried it.");
        return lines;
    }

    /** What is known of the hold asked for. */
    public static String verdict(WarmAnswer.HoldAnswer hold, WarmAnswer answer, Wording words) {
        WarmQuestion.Hold asked = answer.question().hold();
        if (asked == null) {
            throw new IllegalStateException("no hold was asked for");
        }
        String what = "Held at " + celsius(words, asked.celsius(), 0) + " from " + words.date(asked.from()) + " for "
                + days(words, asked.days())
                + (asked.pulseHours() > 0
                        ? ", with " + words.quantity(new Quantity(asked.pulseHours(), Unit.HOUR, 0))
                                + " of warmth a day"
                        : "")
                + ": ";
        return what + sentence(hold.verdict()) + " The foremost cells are then at: " + stages(hold.least(), hold.most())
                + ". The dates above count the hold in.";
    }

    private static String sentence(Holding.Verdict verdict) {
        return switch (verdict) {
            case SAFE -> "bees held so survived as well as others.";
            case COSTS -> "bees held so live, but fewer of them nest afterwards.";
            case TOO_LONG -> "too long; more of them die or never nest.";
            case UNTESTED -> "nobody has tried it at this stage or so cold, so do not.";
            case NOT_A_HOLD -> "too warm to hold them; they go on.";
            case TOO_LATE ->
                "too late; bees want out, so let them out or keep them in the dark and cool for a night only.";
        };
    }

    /** Degrees north, as far as told. */
    static @Nullable Double latitude(WarmQuestion question) {
        return question.warmth() instanceof WarmQuestion.Outdoors outdoors
                ? Double.valueOf(outdoors.latitudeDeg())
                : question.latitudeDeg();
    }

    /** One stage, or two between which it lies. */
    public static String stages(Stage least, Stage most) {
        return least == most ? least.words() : least.words() + " or " + most.words();
    }

    /** What follows emergence, to the next winter. */
    public static List<String> afterwards(WarmAnswer answer, Wording words) {
        WarmAnswer.After after = answer.after();
        List<String> lines = new ArrayList<>();
        String air = celsius(words, answer.value("release_air_c"), 0);
        lines.add(
                isIndoors(answer.question())
                        ? "Have the nests in their place before the first males, and put the bees out when the days reach "
                                + air + "."
                        : "Have the nests in their place before the first males; they fly on days that reach " + air
                                + ".");
        lines.add(
                "Nesting: about " + band(words, after.nesting()) + ". A female matures for a week and then nests about "
                        + days(words, after.nestingDays()) + " on average; in cages females lived "
                        + days(words, answer.value("lab_life_f_days")) + " and males "
                        + days(words, answer.value("lab_life_m_days")) + ".");
        LocalDate reopening = after.reopening();
        lines.add("A second generation may fly the same summer from "
                + (reopening == null ? "its fourth week" : words.date(reopening))
                + " on: of the early brood " + Wording.share(after.secondLow(), 0) + " to "
                + Wording.share(after.secondHigh(), 0)
                + (latitude(answer.question()) == null ? ", few in the north, more in the south" : "")
                + ". A plug chewed open is a bee, many pinholes are parasitoids. Keep spare clean"
                + " tunnels ready, and neither bag nor chill nests before that is over.");
        lines.add("The last cells need " + days(words, after.daysToPrepupa().get(0)) + " at " + celsius(words, 25, 0)
                + " or " + days(words, after.daysToPrepupa().get(1)) + " at " + celsius(words, 20, 0)
                + " to spin in. At " + celsius(words, answer.value("egg_prepupa_cool_c"), 0) + " "
                + Wording.share(answer.value("egg_prepupa_cool_death"), 0)
                + " of the young died, so leave nests in summer warmth until then.");
        return lines;
    }

    /** Winter. */
    public static String winter(WarmAnswer answer, Wording words) {
        return "They winter as grubs in their cells (prepupae), at " + celsius(words, answer.value("store_low_c"), 0)
                + " to "
                + celsius(words, answer.value("store_high_c"), 0) + ", about "
                + days(words, answer.value("store_even_days")) + "; watch below "
                + celsius(words, answer.value("store_watch_c"), 0) + "; "
                + celsius(words, answer.value("store_brief_low_c"), 0) + " to "
                + celsius(words, answer.value("store_brief_high_c"), 0) + " for a short time only, "
                + days(words, answer.value("store_brief_days")) + " at most. More than "
                + days(words, answer.value("autumn_warm_days")) + " of autumn at "
                + celsius(words, answer.value("autumn_warm_c"), 0) + " and above, or "
                + days(words, answer.value("autumn_hot_days")) + " at "
                + celsius(words, answer.value("autumn_hot_c"), 0)
                + ", and they may not come out in spring.";
    }

    /** A band of days in words. */
    public static String band(Wording words, DateBand band) {
        LocalDate early = band.early();
        LocalDate late = band.late();
        if (early == null) {
            return "not in what is known";
        }
        return late == null ? words.date(early) + " or later, if at all" : words.range(early, late);
    }

    private static String days(Wording words, double days) {
        return words.quantity(Quantity.days(days));
    }

    private static String celsius(Wording words, double celsius, int decimals) {
        return words.quantity(new Quantity(celsius, Unit.CELSIUS, decimals));
    }

    /** The temperature they are warmed at, or null where it changes. */
    public static @Nullable Double steadyC(WarmQuestion question) {
        if (question.warmth() instanceof WarmQuestion.Steady steady) {
            return steady.celsius();
        }
        return question.warmth() instanceof WarmQuestion.ReadyBy ready ? Double.valueOf(ready.celsius()) : null;
    }
}
