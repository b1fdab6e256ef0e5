package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.TunnelsAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.stocking.Spread;
import org.nestyear.core.stocking.TunnelNeed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "tunnels", description = "Say how many tunnels, how wide and how deep, so many females want.")
final class TunnelsCommand implements Callable<Integer> {
    private static final int MOST = 10_000_000;

    private final Surroundings surroundings;

    @Option(names = "--species", required = true, paramLabel = "NAME", description = "Latin name, in quotes.")
    String species = "";

    @Option(
            names = "--females",
            required = true,
            paramLabel = "N",
            description = "Female cocoons (leafcutters: female cells) that are put out.")
    String females = "";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    TunnelsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        TunnelsAnswer answer = TunnelsAnswer.of(EitherBee.named(species), Amounts.whole("--females", females, 1, MOST));
        options.print(surroundings, () -> json(answer), () -> text(answer, words));
        return ExitCode.ANSWERED;
    }

    private static String text(TunnelsAnswer answer, Wording words) {
        TunnelNeed need = answer.need();
        List<String> lines = new ArrayList<>();
        lines.add("Hang " + Wording.number(need.needed(), 0) + " tunnels, " + size(need, words) + ", for "
                + Wording.number(answer.females(), 0) + " female " + EitherBee.young(answer.species()) + " of the "
                + answer.species().commonName() + " ("
                + answer.species().latinName() + ").");
        lines.add("Of these females " + Wording.number(answer.nesting().low(), 0) + " to "
                + Wording.number(answer.nesting().high(), 0) + " are likely to stay and nest, most likely about "
                + Wording.number(answer.nesting().value(), 0) + ". They should fill about "
                + Wording.number(need.used(), 0)
                + " tunnels of up to " + Wording.number(Math.floor(need.cellsEach()), 0)
                + " cells; " + number(answer, "tunnels_per_female")
                + " for each female that may stay, and " + number(answer, "tunnels_least")
                + " for the smallest house, are hung so that none flies off for want of one. With a generous choice it would be "
                + Wording.number(need.high(), 0) + ".");
        Spread second = answer.secondBrood();
        if (second != null) {
            lines.add("Part of the young may fly the same summer and nest at once: have "
                    + Wording.number(second.low(), 0)
                    + " to " + Wording.number(second.high(), 0)
                    + " clean tunnels more at hand from the fourth week on. North of 50° few or none do.");
        }
        lines.add("Some narrower and wider tunnels beside them make room for wild guests.");
        String borrowed = BasisWords.borrowed(answer.basis(), answer.species().latinName());
        lines.addAll(Grounds.lines(
                "how many stay depends most on bloom and weather, and is the widest of these ranges."
                        + (borrowed.isEmpty() ? "" : " " + borrowed),
                List.of(),
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String number(TunnelsAnswer answer, String id) {
        return Wording.number(Grounds.value(answer.basis(), id), 0);
    }

    /** Width and depth in words. */
    static String size(TunnelNeed need, Wording words) {
        return words.quantity(Quantity.millimetres(need.holeWidthMm()).withDecimals(1))
                        .replace(".0 ", " ") + " wide and " + words.quantity(Quantity.millimetres(need.lengthMm()))
                + " deep";
    }

    /** The answer as one JSON object; its schema is {@code schema/tunnels.schema.json}. */
    private static String json(TunnelsAnswer answer) {
        TunnelNeed need = answer.need();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.whole("females", answer.females());
            json.object("nesting_females", nesting -> {
                nesting.number("value", answer.nesting().value());
                nesting.number("low", answer.nesting().low());
                nesting.number("high", answer.nesting().high());
            });
            json.number("tunnels_needed", need.needed());
            json.number("low", Math.min(need.used(), need.needed()));
            json.number("high", need.high());
            json.number("hole_width_mm", need.holeWidthMm());
            json.number("length_mm", need.lengthMm());
            json.number("cells_per_tunnel", need.cellsEach());
            Spread second = answer.secondBrood();
            if (second != null) {
                json.object("second_brood_tunnels", more -> {
                    more.number("value", second.value());
                    more.number("low", second.low());
                    more.number("high", second.high());
                });
            }
            BasisJson.write(json, answer.basis());
            json.texts("methods", List.of());
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
