package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.MudAnswer;
import org.nestyear.app.service.MudQuestion;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.mud.Soil;
import org.nestyear.core.mud.TextureClass;

/** An answer about mud in words. */
final class MudText {
    static final List<String> METHODS = List.of(
            "Class: USDA, tests of Benham, Ahrens & Nettleton 2009",
            "Settling: Stokes 1851, grains of 2,650 kg/m³; sand ends at 0.05 mm, silt at 0.002 mm",
            "What bees use: Pinilla-Gallego, Crum, Schaetzl & Isaacs 2018, Apidologie: walls of blue orchard and hornfaced"
                    + " bees, by laser");

    private MudText() {}

    /** The lines of the answer. */
    static String of(MudAnswer answer, Wording words, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        Soil soil = answer.question().soil();
        lines.add("This soil is " + answer.texture().word() + ": " + percent(soil.sandPercent()) + " sand, "
                + percent(soil.siltPercent()) + " silt, " + percent(soil.clayPercent()) + " clay."
                + others(answer));
        lines.add(use(answer.texture()));
        lines.add("Keep it wet but firm, with a slope or stones to stand on, within about "
                + words.quantity(Quantity.metres(answer.mudDistanceM())) + " of the nests, from the first flight on.");
        MudQuestion.Tray tray = answer.question().tray();
        if (tray != null && answer.litresADay() != null) {
            lines.add("The tray loses about " + Measures.volume(answer.litresADay() * 1000, units)
                    + " of water on a day of " + Wording.number(tray.et0Mm(), 1)
                    + " mm evaporation; sun on the tray and wind take more.");
        }
        settling(lines, answer, words);
        lines.addAll(Grounds.lines(
                "the class is a definition"
                        + (answer.question().fromJar()
                                ? ", but layers in a jar are loose bulk and clay swells, so each share is good to about "
                                        + Wording.number(answer.errorPoints(), 0) + " points."
                                : ".")
                        + " Only two kinds of bee have had their walls measured, and those varied widely.",
                METHODS,
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String others(MudAnswer answer) {
        List<String> names = new ArrayList<>();
        for (TextureClass each : answer.possible()) {
            if (each != answer.texture()) {
                names.add(each.word());
            }
        }
        return names.isEmpty() ? "" : " Read off a jar it may as well be " + String.join(", ", names) + ".";
    }

    private static String use(TextureClass texture) {
        String measured = "Walls of mason bees that were measured were loam or sandy loam, whatever the soil near by";
        return switch (texture) {
            case LOAM, SANDY_LOAM -> measured + ": just this.";
            case SAND, LOAMY_SAND ->
                measured + ". This one is looser: they may take it, but set a second tray with a finer soil beside it.";
            default ->
                measured + ". This one is finer, as keepers like it (common practice: heavy clay, kept moist); bees mix"
                        + " their own, so a second tray with a sandier soil beside it does no harm.";
        };
    }

    private static void settling(List<String> lines, MudAnswer answer, Wording words) {
        double height = answer.question().settling().heightMm();
        lines.add("In a jar with " + words.quantity(Quantity.millimetres(height)) + " of water at "
                + words.quantity(Quantity.celsius(answer.question().settling().waterC()))
                + ": mark the sand after " + time(answer.sandMinutes()) + ", the silt after "
                + time(answer.siltMinutes())
                + ". The usual two hours for the silt leave out what is finer than "
                + Wording.number(answer.cutAtTwoHoursMm() * 1000, 1) + " µm, so that fine silt counts as clay.");
    }

    static String time(double minutes) {
        if (minutes < 2) {
            return Wording.number(minutes * 60, 0) + " seconds";
        }
        return minutes < 120 ? Wording.number(minutes, 0) + " minutes" : Wording.number(minutes / 60, 1) + " hours";
    }

    private static String percent(double value) {
        return Measures.trimmed(value, 1) + " %";
    }
}
