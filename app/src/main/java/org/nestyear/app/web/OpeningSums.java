package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumFact.span;
import static org.nestyear.app.web.SumField.choice;
import static org.nestyear.app.web.SumField.table;
import static org.nestyear.app.web.SumField.tick;

import java.util.Arrays;
import java.util.List;
import org.nestyear.app.service.EnemiesAnswer;
import org.nestyear.app.service.PartOfYear;
import org.nestyear.app.service.PlugAnswer;
import org.nestyear.app.web.SumField.Choice;
import org.nestyear.core.advice.Unit;

/** Calculators of opening and sorting. */
final class OpeningSums {
    private static final String TALLY = """
            house,nest,cells,chalkbrood,mites,flies,wasps,pollen_balls
            pear tree,a1,8,1,0,0,0,1
            pear tree,a2,6,0,0,0,1,0
            pear tree,a3,7,0,0,0,0,0
            shed,b1,9,3,0,0,0,0
            shed,b2,5,2,0,0,0,1
            """;

    private OpeningSums() {}

    static List<Sum> all() {
        return List.of(plug(), losses(), enemies());
    }

    private static Sum plug() {
        return Sum.of("plug", "What is this in my tunnel?", "Who built here, and should it stay?", "plug")
                .asks(
                        sign("plug", "What closes the tunnel?", "mud-rough"),
                        sign("wall", "What are the walls between cells made of?", ""),
                        sign("contents", "What lies in the cell?", ""),
                        sign("frass", "What do the droppings look like?", ""),
                        sign("holes", "Are there holes in plug or cocoon?", ""),
                        when());
    }

    private static SumField sign(String question, String label, String example) {
        return choice("--" + question, label, example, () -> signs(question)).optional();
    }

    private static List<Choice> signs(String question) {
        return PlugAnswer.signs(question).entrySet().stream()
                .map(sign -> new Choice(sign.getKey(), sign.getValue()))
                .toList();
    }

    private static SumField when() {
        return choice("--when", "Part of the year", "", OpeningSums::seasons).optional();
    }

    private static List<Choice> seasons() {
        return Arrays.stream(PartOfYear.values())
                .map(part -> new Choice(part.word(), part.word()))
                .toList();
    }

    private static List<Choice> bees() {
        return List.of(new Choice("mason", "mason bees"), new Choice("leafcutter", "leafcutter bees"));
    }

    private static Sum losses() {
        return Sum.of(
                        "losses",
                        "What opened nests lost",
                        "How many died, of what, how sure is that, and what now?",
                        "losses")
                .asks(
                        choice("--bees", "Bees", "mason", OpeningSums::bees),
                        table("FILE", "Tally, a line a nest", TALLY)
                                .help("A heading, then a line a nest: cells or alive, and a column for each cause."),
                        tick("--bought", "The bees came from elsewhere this year"))
                .shows(
                        number("Nests", "nests", 0, ""),
                        number("Cells", "cells", 0, ""),
                        number("Alive", "alive", 0, ""),
                        SumFact.of("Lost", "lost/share", Unit.SHARE, 0),
                        span("Lost, 95 % confidence", "lost/low", "lost/high", Unit.SHARE, 0));
    }

    private static Sum enemies() {
        return Sum.of(
                        "enemies",
                        "Enemies of brood",
                        "How do I know it, when does it come, and what do I do?",
                        "enemies")
                .asks(choice(
                        "NAME",
                        "Which?",
                        "pollen-mites",
                        () -> EnemiesAnswer.names().entrySet().stream()
                                .map(enemy -> new Choice(enemy.getKey(), enemy.getValue()))
                                .toList()));
    }
}
