package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.SampleAnswer;
import org.nestyear.app.service.SampleQuestion;
import org.nestyear.app.service.SampleQuestion.Things;
import org.nestyear.app.service.Wording;

/** How many to look at, in words. */
final class SampleText {
    /** What tells something of cocoons and destroys nothing. */
    static final List<String> NOTHING_DESTROYED = List.of(
            "hold each cocoon before a strong lamp (candling)",
            "look through a lens at what the rinse water leaves behind",
            "count the dead and failed cells found at opening",
            "look over the debris of the tunnels for mites and cadavers");

    private final SampleAnswer answer;
    private final Things things;

    private SampleText(SampleAnswer answer) {
        this.answer = answer;
        this.things = answer.question().things();
    }

    /** The lines of the answer. */
    static String of(SampleAnswer answer) {
        SampleText text = new SampleText(answer);
        List<String> lines = new ArrayList<>();
        lines.add(text.number());
        if (text.things == Things.COCOONS) {
            text.opening(lines);
        } else if (text.things == Things.NESTS) {
            lines.add(
                    "Take whole nests, not single cells: cells of a nest share a mother. A handbook looks at a random "
                            + text.share("nests_first_share")
                            + " of nests in winter, and at all of them when more than "
                            + text.share("nests_open_all_share") + " hold disease or parasites.");
        }
        lines.addAll(Grounds.lines(text.known(), methods(answer), answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private String number() {
        SampleQuestion question = answer.question();
        String of = question.population().isPresent()
                ? " of " + things.counted(question.population().getAsInt())
                : " of very many " + things.word();
        String look = "Look at " + Wording.number(answer.n(), 0) + of;
        Double best = answer.chance();
        if (best != null && !answer.isReached()) {
            return "Even looking at all " + things.counted(answer.n()) + " shows an ill one with only "
                    + Wording.share(best, 0)
                    + " chance, because an ill one can be missed. Look in a surer way, or ask for less.";
        }
        if (answer.lookAtAll()) {
            return "Look at all " + things.counted(answer.n()) + ": with so few, a part of them tells too little.";
        }
        if (question.aim() instanceof SampleQuestion.See see) {
            Integer ill = answer.ill();
            return look + ", taken at random: if " + IntervalText.percent(see.prevalence()) + " % or more"
                    + (ill == null ? "" : " (" + things.counted(ill) + ")")
                    + " are ill" + missed(see) + ", you see at least one with " + IntervalText.percent(see.confidence())
                    + " % confidence."
                    + exact();
        }
        if (question.aim() instanceof SampleQuestion.Know know) {
            return look + ", taken at random: with " + IntervalText.percent(know.confidence())
                    + " % confidence the share you find is within " + IntervalText.percent(know.margin())
                    + " points of the true one, if that is near " + IntervalText.percent(know.expected()) + " %.";
        }
        return "Draw " + Wording.number(answer.n(), 0) + " samples from "
                + things.counted(question.population().orElse(1))
                + " of loose leafcutter cells, the same way in each lot, and have them tested.";
    }

    private static String missed(SampleQuestion.See see) {
        return see.sensitivity() == 1
                ? ""
                : ", and " + IntervalText.percent(see.sensitivity())
                        + " % of the ill ones you look at are told to be ill";
    }

    private String exact() {
        @Nullable Integer exact = answer.exact();
        return exact == null || exact == answer.n()
                ? ""
                : " By exact odds " + Wording.number(exact, 0) + " are enough.";
    }

    private void opening(List<String> lines) {
        SampleAnswer.Opening opening = answer.opening();
        String small = Wording.number(Grounds.value(answer.basis(), "small_stock_check"), 0);
        if (answer.question().population().isEmpty()) {
            lines.add("Opening kills the bee: open at most " + share("open_share_most")
                    + " of a stock, and none of one under " + small
                    + ". Look first at what tells something and destroys nothing:");
        } else if (opening.smallStock()) {
            lines.add("Do not open any: opening kills the bee, and under " + small
                    + " cocoons a sample costs more than it tells. Look at all of them in ways that destroy nothing:");
        } else if (!opening.allowed()) {
            Double chance = opening.chanceWithMost();
            lines.add("Do not open so many: opening kills the bee, so at most " + share("open_share_most")
                    + " of the cocoons, here " + Wording.number(opening.most(), 0) + ", may be spent"
                    + (chance == null ? "." : "; with those the chance to see one is " + Wording.share(chance, 0) + ".")
                    + " Look at all of them in ways that destroy nothing:");
        } else {
            lines.add("Opening kills the bee. So many may be opened, since they are at most " + share("open_share_most")
                    + " of the stock; look first at what tells something and destroys nothing:");
        }
        NOTHING_DESTROYED.forEach(check -> lines.add("- " + check + ";"));
        lines.set(lines.size() - 1, lines.get(lines.size() - 1).replace(';', '.'));
    }

    private String share(String id) {
        return Wording.share(Grounds.value(answer.basis(), id), 0);
    }

    private String known() {
        boolean missing = answer.question().aim() instanceof SampleQuestion.See see && see.sensitivity() < 1;
        return answer.question().aim() instanceof SampleQuestion.Lot
                ? "a government's guide asks for this number; it is a rule, not a result."
                : "this is arithmetic. It takes for granted that those looked at are taken at random, that an ill one is"
                        + (missing
                                ? " missed by chance alone, and none that is well is called ill, and that illness"
                                : " seen to be ill (else say how often with --sensitivity), and that illness")
                        + " does not gather in a few nests; where it does, look at more.";
    }

    /** The published methods behind the number. */
    static List<String> methods(SampleAnswer answer) {
        if (answer.question().aim() instanceof SampleQuestion.See) {
            return List.of(
                    answer.question().aim() instanceof SampleQuestion.See see && see.sensitivity() < 1
                            ? "Number: Cannon 2001, Prev. Vet. Med. 49:141 (from memory); exact odds hypergeometric, each ill"
                                    + " one told with the chance given"
                            : "Number: Cannon & Roe 1982, Livestock disease surveys; exact odds hypergeometric");
        }
        return answer.question().aim() instanceof SampleQuestion.Know
                ? List.of("Number: Cochran 1977, Sampling Techniques, with a finite population")
                : List.of();
    }
}
