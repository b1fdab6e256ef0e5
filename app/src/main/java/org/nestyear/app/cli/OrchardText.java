package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.OrchardAnswer;
import org.nestyear.app.service.OrchardQuestion;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.stocking.Spread;

/** Bees and tunnels of an orchard in words. */
final class OrchardText {
    private static final double ACRE_HA = 0.40468564224;

    private OrchardText() {}

    /** The lines of the answer. */
    static String of(OrchardAnswer answer, Wording words, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        OrchardQuestion question = answer.question();
        lines.add("For " + what(question, answer.hectares(), units) + " about " + spread(answer.females())
                + " females of the " + question.species().commonName() + " ("
                + question.species().latinName()
                + ") should nest.");
        lines.add("For that, put out about " + spread(answer.femaleCocoons()) + " female "
                + EitherBee.young(question.species()) + " with the "
                + spread(answer.maleCocoons())
                + " males that go with them: some do not come out, and of those that do only a"
                + " part stays.");
        lines.add("Hang " + spread(answer.tunnels()) + " tunnels, " + TunnelsCommand.size(answer.need(), words)
                + (EitherBee.isLeafcutter(question.species())
                        ? ", in shelters spread over the field. A second brood may want more."
                        : ", in houses spread among the trees."));
        if (question.trees() != null && question.squareMetresPerTree() == null) {
            lines.add(
                    "Rates go by area, and how far apart the trees stand was not told: with --spacing the range is much"
                            + " narrower.");
        }
        String borrowed = BasisWords.borrowed(answer.basis(), question.species().latinName());
        lines.addAll(Grounds.lines(
                "the rate is published advice for whole "
                        + (EitherBee.isLeafcutter(question.species()) ? "fields" : "orchards")
                        + " in bloom, not a measured need of yours; more bees than"
                        + " flowers can feed will not stay."
                        + (borrowed.isEmpty() ? "" : " " + borrowed),
                List.of(),
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String what(OrchardQuestion question, Spread hectares, UnitSystem units) {
        Integer trees = question.trees();
        if (trees != null) {
            return Wording.number(trees, 0) + " " + question.crop() + (trees == 1 ? " tree" : " trees");
        }
        return area(hectares.value(), units) + " of " + question.crop();
    }

    private static String area(double hectares, UnitSystem units) {
        if (units == UnitSystem.US) {
            double acres = hectares / ACRE_HA;
            String text = Measures.trimmed(acres, 2);
            return text + (text.equals("1") ? " acre" : " acres");
        }
        return hectares < 0.1 ? Wording.number(hectares * 10_000, 0) + " m²" : Measures.trimmed(hectares, 2) + " ha";
    }

    private static String spread(Spread spread) {
        String value = Wording.number(spread.value(), 0);
        return spread.low() == spread.high()
                ? value
                : value + " (" + Wording.number(spread.low(), 0) + " to " + Wording.number(spread.high(), 0) + ")";
    }
}
