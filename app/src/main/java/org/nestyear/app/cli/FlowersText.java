package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.FlowersAnswer;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.forage.Band;
import org.nestyear.core.forage.Breeding;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.forage.ForageGap;
import org.nestyear.core.forage.ForageWeek;
import org.nestyear.core.forage.GardenPlant;
import org.nestyear.core.forage.RegionBloom;
import org.nestyear.core.forage.Suggestion;
import org.nestyear.core.forage.ToldFlowers;
import org.nestyear.core.source.Parameter;

/** Flowers in reach as a page of text. */
final class FlowersText {
    private static final List<String> FED = List.of(
            "Cells fed: open flowers over the life of a flower, over the flowers whose pollen a cell takes, of which a part"
                    + " reaches one bee (Müller et al. 2006)");

    /** From here on a decimal says nothing; numerical. */
    private static final double SMALL = 9.95;

    private static final double SMALLEST = 0.1;
    /** By definition. */
    private static final double SQUARE_FOOT_M2 = 0.09290304;

    private FlowersText() {}

    /** How the answer was worked out. */
    static List<String> methods(FlowersAnswer answer) {
        List<String> methods = new ArrayList<>(FED);
        if (answer.cells() == FlowersAnswer.Cells.PLAN) {
            methods.add("Cells wanted: females that nest times what the weather lets each build, were food no limit");
        }
        return methods;
    }

    static String of(FlowersAnswer answer, Wording words, UnitSystem units) {
        Page page = new Page();
        Forage forage = answer.forage();
        headline(page, answer, words);
        if (!forage.weeks().isEmpty()) {
            page.heading("CELLS WANTED AND CELLS FED, WEEK BY WEEK");
            page.table(0, weeks(answer, words));
            page.paragraph(0, "In brackets: eight cases in ten." + other(answer));
        }
        page.heading("YOUR PLANTS");
        page.table(0, plants(forage, units));
        FlowersNotes.of(answer, words).forEach(note -> page.paragraph(0, note));
        forage.gaps().forEach(gap -> gap(page, answer, gap, words, units));
        leaves(page, answer);
        page.heading("HOW WELL THIS IS KNOWN");
        known(answer, words).forEach(line -> page.paragraph(0, line));
        methods(answer).forEach(method -> page.hanging(0, 4, method + "."));
        SourceList.write(page, answer.basis());
        return page.toString();
    }

    private static void headline(Page page, FlowersAnswer answer, Wording words) {
        Forage forage = answer.forage();
        if (forage.weeks().isEmpty()) {
            page.paragraph(0, "Nothing to feed: no cell is expected of these bees.");
        } else if (forage.gaps().isEmpty()) {
            page.paragraph(0, "The flowers in reach can probably feed the cells of every week.");
        }
        for (ForageGap gap : forage.gaps()) {
            page.paragraph(
                    0,
                    "Flowers " + (gap.isSure() ? "fall short" : "probably fall short") + " from "
                            + words.date(gap.from()) + " to " + words.dateWithYear(gap.to()) + ": food for "
                            + band(gap.supply()) + " cells, against "
                            + Wording.number(gap.cells(), 0) + " that the bees could build.");
        }
        page.paragraph(
                0,
                switch (answer.cells()) {
                    case PLAN ->
                        "The cells are those of the plan, with the "
                                + answer.species().commonName() + " out on "
                                + words.date(Objects.requireNonNull(answer.release())) + ".";
                    case LEAFCUTTERS -> leafcutters(answer, words);
                    case TOLD -> "The cells are the number you told, the same each day.";
                });
    }

    private static String leafcutters(FlowersAnswer answer, Wording words) {
        List<Parameter> basis = answer.basis();
        return "The cells are a rough count without weather: of your females "
                + Wording.share(Grounds.value(basis, "leafcutter_staying"), 0) + " nest from "
                + words.date(Objects.requireNonNull(answer.release())) + " on and build about "
                + Wording.number(Grounds.value(basis, "leafcutter_cells_a_female"), 0)
                + " cells each, fewer females every day.";
    }

    private static String other(FlowersAnswer answer) {
        return answer.countsOtherBloom()
                ? " Other bloom is the [[community]] you told, whose level is a share of the bees."
                : " Other bloom is not told under [[community]] and does not count.";
    }

    private static List<List<String>> weeks(FlowersAnswer answer, Wording words) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("week", ">wanted", ">your plants", ">other bloom", ">fed per cell", "stands"));
        for (ForageWeek week : answer.forage().weeks()) {
            rows.add(List.of(
                    words.range(week.from(), week.to()).replace("Mon ", "").replace("Sun ", ""),
                    amount(week.cells()),
                    band(week.fromPlants()),
                    amount(week.fromOther()),
                    Wording.number(week.ratio().middle(), 1),
                    week.fed().words()));
        }
        return rows;
    }

    private static List<List<String>> plants(Forage forage, UnitSystem units) {
        List<List<String>> rows = new ArrayList<>();
        String unit = units == UnitSystem.US ? "sq ft" : "m²";
        rows.add(List.of(
                "plant", ">" + unit, ">open per " + unit, "", ">needed per cell", ">feeds a day in full bloom"));
        for (ToldFlowers told : forage.plants()) {
            rows.add(List.of(
                    told.plant().name(),
                    Wording.number(told.plant().coverM2() / unitM2(units), 0),
                    amount(told.yield().openM2().middle() * unitM2(units)),
                    told.yield().counted().plural(),
                    band(told.yield().flowersACell()),
                    told.counts() ? band(told.cells()) + " cells" : "does not count"));
        }
        return rows;
    }

    private static void gap(Page page, FlowersAnswer answer, ForageGap gap, Wording words, UnitSystem units) {
        page.heading("TO CLOSE " + words.range(gap.from(), gap.to()).toUpperCase(Locale.ROOT));
        RegionBloom region = answer.forage().region();
        if (region == null) {
            page.paragraph(
                    0,
                    "For this part of the world there is no plant list. Ask what native plants bloom then, or name a"
                            + " region under [site].");
            return;
        }
        if (gap.suggestions().isEmpty()) {
            page.paragraph(0, "No plant of the list blooms then in " + region.name() + ".");
        }
        for (Suggestion suggestion : gap.suggestions()) {
            page.hanging(0, 4, suggested(suggestion, gap, words, units));
        }
        if (!gap.littleUse().isEmpty()) {
            page.hanging(
                    0,
                    4,
                    "Of little use, though in bloom then: "
                            + gap.littleUse().stream().map(FlowersText::poor).collect(Collectors.joining(", ")) + ".");
        }
    }

    private static String suggested(Suggestion suggestion, ForageGap gap, Wording words, UnitSystem units) {
        GardenPlant plant = suggestion.plant();
        Band area = suggestion.areaM2();
        return plant.name() + " (" + plant.latinName() + "), "
                + plant.growth().word() + ", " + suggestion.standing().words() + ": "
                + plant.bloom().word() + ", about "
                + words.range(suggestion.bloom().from(), suggestion.bloom().to())
                + (area == null ? "" : "; " + area(area, units) + " in flower")
                + (suggestion.weeks() < gap.weeks().size()
                        ? " for " + suggestion.weeks() + " of the "
                                + gap.weeks().size() + " weeks"
                        : "")
                + "." + (plant.note().isEmpty() ? "" : " Note: " + plant.note() + ".");
    }

    private static String poor(GardenPlant plant) {
        return plant.name() + " (" + (plant.breeding() == Breeding.DOUBLE ? "double" : "hybrid") + ")";
    }

    private static void leaves(Page page, FlowersAnswer answer) {
        if (!answer.wantsLeaves()) {
            return;
        }
        page.heading("LEAVES");
        Forage forage = answer.forage();
        page.paragraph(
                0,
                forage.leafPlants().isEmpty()
                        ? "None of the plants you told gives the soft leaves these bees cut."
                        : "Leaves to cut: "
                                + forage.leafPlants().stream()
                                        .map(told -> told.plant().name())
                                        .collect(Collectors.joining(", "))
                                + ".");
        forage.leafSuggestions()
                .forEach(suggestion -> page.hanging(
                        0,
                        4,
                        suggestion.plant().name() + " ("
                                + suggestion.plant().latinName() + "), "
                                + suggestion.plant().growth().word() + ", "
                                + suggestion.standing().words() + "."));
    }

    private static List<String> known(FlowersAnswer answer, Wording words) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "Nobody has measured the pollen of one flower for each of these plants where the program could read it."
                        + " So a cell is taken to need what 41 European bees need, and that differs widely; the band is as wide."
                        + " Read the middle as a guess and the band as the answer; where flowers are tiny and thousands stand"
                        + " on a square metre, read its low end.");
        RegionBloom region = answer.forage().region();
        if (region != null && !answer.forage().gaps().isEmpty()) {
            double error = Grounds.value(answer.forage().basis(), "words_error_days");
            lines.add("Bloom words are no dates: those of the list hold to about "
                    + words.quantity(Quantity.days(error)) + " either way in " + region.name()
                    + (answer.inputs().site().region() == null ? " (taken from the place)" : "")
                    + ", and whether a plant is native changes from state to state. Your own dates win.");
        }
        Double nectar = answer.forage().nectarFlowers();
        if (nectar != null) {
            lines.add("The nectar of a cell alone is that of about " + Wording.number(nectar, 0)
                    + " alfalfa flowers (Cane and others 2011); its pollen takes more visits.");
        }
        lines.add(BasisWords.weakness(answer.basis()));
        return lines;
    }

    private static double unitM2(UnitSystem units) {
        return units == UnitSystem.US ? SQUARE_FOOT_M2 : 1;
    }

    private static String area(Band area, UnitSystem units) {
        Band shown = area.times(1 / unitM2(units));
        return band(shown) + (units == UnitSystem.US ? " sq ft" : " m²");
    }

    /** A number of cells or of square metres: whole from ten on, with a decimal below. */
    static String amount(double value) {
        if (value > 0 && value < SMALLEST) {
            return "under " + SMALLEST;
        }
        return Wording.number(value, value > 0 && value < SMALL ? 1 : 0);
    }

    /** The middle with the ends of the band behind it. */
    static String band(Band band) {
        return amount(band.middle()) + " (" + amount(band.low()) + " to " + amount(band.high()) + ")";
    }
}
