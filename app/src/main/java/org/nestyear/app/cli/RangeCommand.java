package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.service.RangeAnswer;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.count.Limits;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "range", description = "Say how far a bee finds home from, and how far from the nest it really works.")
final class RangeCommand implements Callable<Integer> {
    private static final double LEAST_MM = 0.3;
    private static final double MOST_MM = 10;
    private static final List<String> METHODS = List.of(
            "Homing: Greenleaf, Williams, Winfree & Kremen 2007, Oecologia 153:589, table 1; base-10 logarithms",
            "Working flights: Hofmann, Fleischmann & Renner 2020, J. Hymenopt. Res. 77:105");

    private final Surroundings surroundings;

    @Option(
            names = "--span-mm",
            required = true,
            paramLabel = "MM",
            description = "Distance between the wing bases (intertegular span), mm; 2.9 for a blue orchard bee.")
    String span = "";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    RangeCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        UnitSystem units = options.unitSystem();
        double mm = Amounts.millimetres("--span-mm", span);
        if (mm < LEAST_MM || mm > MOST_MM) {
            throw Refusal.usage(
                    "--span-mm is \"" + span + "\"; expected from 0.3 to 10 mm between the wing bases.",
                    mm > MOST_MM ? "Maybe the length of the whole bee was measured." : "");
        }
        RangeAnswer answer = RangeAnswer.of(mm);
        Wording words = new Wording(units, surroundings.today().getYear());
        options.print(surroundings, () -> json(answer), () -> text(answer, words, units));
        return ExitCode.ANSWERED;
    }

    private static String text(RangeAnswer answer, Wording words, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        lines.add("Count on flowers within "
                + words.quantity(Quantity.metres(answer.reach().workingM()))
                + " of the nest. "
                + (answer.isCapped()
                        ? "A bee so small finds home from no farther."
                        : "Females of mason bees and kin watched at work flew "
                                + words.quantity(
                                        Quantity.metres(answer.workingM().low()))
                                + " and more on average; flowers out to "
                                + words.quantity(
                                        Quantity.metres(answer.workingM().high())) + " count half."));
        lines.add("A bee " + Measures.trimmed(answer.spanMm(), 2)
                + " mm between the wing bases finds home much farther than it works: half return from "
                + Measures.kilometres(answer.reach().typicalKm(), units) + " (" + range(answer.typicalKm(), units)
                + " in relatives that were tried), a tenth from "
                + Measures.kilometres(answer.reach().maxKm(), units) + " ("
                + range(answer.maxKm(), units) + ").");
        if (answer.outside()) {
            lines.add(
                    "No bee of that size was watched at work, so its working distance is taken from smaller or larger ones.");
        }
        lines.addAll(Grounds.lines(
                "the equation is a line through 16 species of bees, with wide ranges of its own; most bees fly less far than"
                        + " it says. The working distance is from six species in one city.",
                METHODS,
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String range(Limits kilometres, UnitSystem units) {
        return Measures.kilometres(kilometres.low(), units) + " to " + Measures.kilometres(kilometres.high(), units);
    }

    /** The answer as one JSON object; its schema is {@code schema/range.schema.json}. */
    private static String json(RangeAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.number("span_mm", answer.spanMm());
            json.number("typical_km", answer.reach().typicalKm());
            json.object("typical_range_km", limits -> IntervalJson.limits(limits, answer.typicalKm()));
            json.number("max_km", answer.reach().maxKm());
            json.object("max_range_km", limits -> IntervalJson.limits(limits, answer.maxKm()));
            json.number("working_m", answer.reach().workingM());
            json.object("working_range_m", limits -> IntervalJson.limits(limits, answer.workingM()));
            json.flag("size_watched_at_work", !answer.outside());
            BasisJson.write(json, answer.basis());
            json.texts("methods", METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
