package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.FlowersAnswer;
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

/** Flowers in reach as a page of text. */
final class FlowersText {
    static final List<String> METHODS = List.of(
            "Cells fed: open flowers over the life of a flower, over the flowers whose pollen a cell takes, of which a part"
                    + " reaches one bee (Müller et al. 2006)",
            "Cells wanted: females that nest times what the weather lets each build, were food no limit");

    private static final double SMALL = 10;

    private FlowersText() {}

    static String of(FlowersAnswer answer, Wording words) {
        Page page = new Page();
        Forage forage = answer.forage();
        headline(page, answer, words);
        if (!forage.weeks().isEmpty()) {
            page.heading("CELLS WANTED AND CELLS FED, WEEK BY WEEK");
            page.table(0, weeks(answer, words));
            page.paragraph(0, "In brackets: eight cases in ten." + other(answer));
        }
        page.heading("YOUR PLANTS");
        page.table(0, plants(forage));
        FlowersNotes.of(answer, words).forEach(note -> page.paragraph(0, note));
        forage.gaps().forEach(gap -> gap(page, answer, gap, words));
        leaves(page, answer);
        page.heading("HOW WELL THIS IS KNOWN");
        known(answer, words).forEach(line -> page.paragraph(0, line));
        METHODS.forEach(method -> page.hanging(0, 4, method + "."));
        forage.basis().forEach(row -> page.hanging(0, 4, BasisWords.line(row)));
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
                answer.release() == null
                        ? "The cells are the number you told, the same each day."
                        : "The cells are those of the plan, with the "
                                + answer.species().commonName() + " out on " + words.date(answer.release()) + ".");
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

    private static List<List<String>> plants(Forage forage) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("plant", ">m²", ">open per m²", "", ">needed per cell", ">feeds a day in full bloom"));
        for (ToldFlowers told : forage.plants()) {
            rows.add(List.of(
                    told.plant().name(),
                    Wording.number(told.plant().coverM2(), 0),
                    Wording.number(told.yield().openM2().middle(), 0),
                    told.yield().counted().plural(),
                    band(told.yield().flowersACell()),
                    told.counts() ? band(told.cells()) + " cells" : "does not count"));
        }
        return rows;
    }

    private static void gap(Page page, FlowersAnswer answer, ForageGap gap, Wording words) {
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
            page.hanging(0, 4, suggested(suggestion, gap, words));
        }
        if (!gap.littleUse().isEmpty()) {
            page.hanging(
                    0,
                    4,
                    "Of little use, though in bloom then: "
                            + gap.littleUse().stream().map(FlowersText::poor).collect(Collectors.joining(", ")) + ".");
        }
    }

    private static String suggested(Suggestion suggestion, ForageGap gap, Wording words) {
        GardenPlant plant = suggestion.plant();
        Band area = suggestion.areaM2();
        return plant.name() + " (" + plant.latinName() + "), "
                + plant.growth().word() + ", " + suggestion.standing().words() + ": "
                + plant.bloom().word() + ", about "
                + words.range(suggestion.bloom().from(), suggestion.bloom().to())
                + (area == null ? "" : "; " + band(area) + " m² in flower")
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
                        + " Read the middle as a guess and the band as the answer.");
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
        lines.add(BasisWords.weakness(answer.forage().basis()));
        return lines;
    }

    /** A number of cells or square metres: whole from ten on, with a decimal below. */
    static String amount(double value) {
        return Wording.number(value, value < SMALL ? 1 : 0);
    }

    /** The middle with the ends of the band behind it. */
    static String band(Band band) {
        return amount(band.middle()) + " (" + amount(band.low()) + " to " + amount(band.high()) + ")";
    }
}
