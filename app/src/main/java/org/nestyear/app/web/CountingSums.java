package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumFact.span;
import static org.nestyear.app.web.SumField.choice;
import static org.nestyear.app.web.SumField.percent;
import static org.nestyear.app.web.SumField.several;
import static org.nestyear.app.web.SumField.table;
import static org.nestyear.app.web.SumField.text;
import static org.nestyear.app.web.SumField.tick;

import java.util.List;
import org.nestyear.app.web.SumField.Choice;
import org.nestyear.core.advice.Unit;

/** Calculators of samples and counts. */
final class CountingSums {
    private static final String WEIGHTS = """
            weight_mg
            62
            71
            118
            94
            130
            66
            109
            75
            58
            124
            """;

    private CountingSums() {}

    static List<Sum> all() {
        return List.of(interval(), nests(), sample(), margin(), sexes());
    }

    private static Sum interval() {
        return Sum.of(
                        "interval",
                        "What a share may really be",
                        "So many of so many: how far off can that be?",
                        "interval")
                .asks(
                        text("--found", "Found", "9"),
                        text("--of", "Looked at", "120"),
                        text("--against", "Compared with", "3/100")
                                .optional()
                                .help("Another tally, found and looked at with a slash between, such as 3/100."),
                        level())
                .shows(shareFacts())
                .leads(1);
    }

    private static Sum nests() {
        return Sum.of(
                        "interval-nests",
                        "A share counted nest by nest",
                        "Cells of a nest share a mother: how far off can the share of all be?",
                        "interval")
                .asks(
                        several("--nest", "Found and looked at in each nest", "2/7 0/6 4/6 1/8")
                                .help("With a slash, a nest after the other: 2/7 0/6 4/6."),
                        level())
                .shows(shareFacts());
    }

    private static SumFact[] shareFacts() {
        return new SumFact[] {
            SumFact.of("Share found", "share", Unit.SHARE, 1),
            span("True share (Wilson)", "wilson/low", "wilson/high", Unit.SHARE, 1),
            span("True share (exact)", "clopper_pearson/low", "clopper_pearson/high", Unit.SHARE, 1),
            number("Worth as many single ones as", "clusters/effective_of", 0, ""),
            span("Difference", "newcombe_difference/low", "newcombe_difference/high", Unit.SHARE, 1)
        };
    }

    private static SumField level() {
        return percent("--level", "Confidence, %", "").optional().help("95 unless told.");
    }

    private static Sum sample() {
        return Sum.of("sample", "How many to look at", "How many show a disease if so many are ill?", "sample")
                .asks(
                        things(),
                        text("--population", "How many there are", "200")
                                .optional()
                                .help("Very many unless told."),
                        percent("--prevalence", "Smallest share of ill ones not to be missed, %", "5"),
                        confidence())
                .shows(
                        number("Look at", "n", 0, ""),
                        number("By exact odds", "n_exact", 0, ""),
                        number("Open at most", "open_at_most", 0, ""),
                        SumFact.of("Chance to see one with those", "chance_with_those", Unit.SHARE, 0));
    }

    private static Sum margin() {
        return Sum.of(
                        "sample-share",
                        "How many to tell a share",
                        "How many to look at to know a share so closely?",
                        "sample")
                .asks(
                        things(),
                        text("--population", "How many there are", "500")
                                .optional()
                                .help("Very many unless told."),
                        percent("--margin", "As close as, points of per cent", "5")
                                .help("With 5, a share found to be 30 % is between 25 and 35 %."),
                        percent("--prevalence", "Share expected, %", "")
                                .optional()
                                .help("50 unless told, which is safe."),
                        confidence())
                .shows(number("Look at", "n", 0, ""), number("Open at most", "open_at_most", 0, ""));
    }

    private static SumField things() {
        return choice(
                        "--of",
                        "Of what",
                        "cocoons",
                        () -> List.of(new Choice("cocoons", "cocoons"), new Choice("nests", "whole nests")))
                .help("Opening kills the bee, so cocoons and nests are not looked at alike.");
    }

    private static SumField confidence() {
        return percent("--confidence", "Confidence, %", "").optional().help("95 unless told.");
    }

    private static Sum sexes() {
        return Sum.of("sex-count", "Males and females of a lot", "How many of these cocoons are female?", "sex-count")
                .asks(
                        choice("--species", "Bee", "Osmia bicornis", BeeChoices::weighed),
                        table("FILE", "Weights, widths or sieves", WEIGHTS)
                                .help("A heading and a line a cocoon: weight_mg, or size_mm for the width. Or a line a"
                                        + " sieve: sieve_mm,count with the number that stayed on it."),
                        tick("--mixed", "Several kinds or places are in the lot"))
                .shows(
                        number("Cocoons", "cocoons", 0, ""),
                        number("Females", "females", 0, ""),
                        span("Females, 90 % confidence", "low", "high", Unit.COUNT, 0),
                        number("Surely female", "sure_females", 0, ""),
                        number("Surely male", "sure_males", 0, ""),
                        number("Cannot be told", "cannot_tell", 0, ""));
    }
}
