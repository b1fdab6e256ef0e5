package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.nestyear.app.service.FlowersAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.forage.FlowerYield;
import org.nestyear.core.forage.ToldFlowers;

/** What is to be said of the told plants beside their numbers, and the cautions. */
final class FlowersNotes {
    private FlowersNotes() {}

    static List<String> of(FlowersAnswer answer, Wording words) {
        List<ToldFlowers> plants = answer.forage().plants();
        List<String> notes = new ArrayList<>();
        add(notes, plants, told -> told.known() == null, "Not in the plant list and taken for a common herb: ", ".");
        add(
                notes,
                plants,
                told -> told.known() != null && told.yield().from() == FlowerYield.From.ALIKE,
                "Flowers not counted on this plant in any study read, so plants that grow alike stand for it: ",
                ". Count yours on a square metre in full bloom and write flowers_m2.");
        add(notes, plants, ToldFlowers::isDouble, "Double flowers with little or no pollen: ", ".");
        add(notes, plants, told -> told.plant().coverM2() == 0, "Without cover_m2, and so without flowers here: ", ".");
        add(
                notes,
                plants,
                told -> told.plant().stand().fromWord(),
                "No dates told, so its bloom word in your region stands for them: ",
                ". Write first_bloom and last_bloom when you have seen them.");
        double full = Grounds.value(answer.forage().basis(), "full_ring_m");
        double half = Grounds.value(answer.forage().basis(), "half_ring_m");
        double trade = Grounds.value(answer.forage().basis(), "trade_ring_m");
        add(
                notes,
                plants,
                told -> told.weight() > 0 && told.weight() < 1,
                "Between " + metres(words, full) + " and " + metres(words, half) + " away and counted half: ",
                ".");
        add(notes, plants, told -> told.weight() == 0, "Beyond " + metres(words, half) + " and not counted: ", ".");
        add(
                notes,
                plants,
                told -> told.weight() > 0 && !told.inTradeRing(),
                "By the trade's rule of 300 ft (" + Wording.number(trade, 0) + " m) these would not count at all: ",
                ".");
        if (!answer.undated().isEmpty()) {
            notes.add("Not counted, because without a plan their bloom has no date: "
                    + String.join(", ", answer.undated()) + ".");
        }
        if (plants.stream().anyMatch(told -> told.plant().stand().distanceM() == null)) {
            notes.add("Plants without distance_m are taken to stand within " + metres(words, full) + ".");
        }
        if (!answer.forage().gaps().isEmpty()) {
            notes.add(
                    "Trees and shrubs planted now flower in some years; sown annuals in weeks. Ask a local list of weeds"
                            + " before you plant what is not native, and never spray what is in flower.");
        }
        return notes;
    }

    private static void add(
            List<String> notes, List<ToldFlowers> plants, Predicate<ToldFlowers> which, String before, String after) {
        String names =
                plants.stream().filter(which).map(told -> told.plant().name()).collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            notes.add(before + names + after);
        }
    }

    private static String metres(Wording words, double value) {
        return words.quantity(Quantity.metres(value));
    }
}
