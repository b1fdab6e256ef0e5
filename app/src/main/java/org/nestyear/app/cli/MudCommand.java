package org.nestyear.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.MudAnswer;
import org.nestyear.app.service.MudQuestion;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.mud.Settling;
import org.nestyear.core.mud.Soil;
import org.nestyear.core.sun.ExtraterrestrialRadiation;
import org.nestyear.core.weather.ReferenceEvaporation;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "mud",
        description = "Say what soil this is, how long a jar of it settles, and how much water keeps a tray wet.")
final class MudCommand implements Callable<Integer> {
    private static final double ROUNDED_SUM_POINTS = 1.5;

    private final Surroundings surroundings;

    @Option(names = "--sand", paramLabel = "PERCENT", description = "Sand, per cent, from a laboratory.")
    @Nullable
    String sand;

    @Option(names = "--silt", paramLabel = "PERCENT", description = "Silt, per cent.")
    @Nullable
    String silt;

    @Option(names = "--clay", paramLabel = "PERCENT", description = "Clay, per cent.")
    @Nullable
    String clay;

    @Option(
            names = "--jar",
            paramLabel = "SAND,SILT,CLAY",
            description = "Heights of the settled layers, from below, in mm, such as 40,25,8.")
    @Nullable
    String jar;

    @Option(names = "--height", paramLabel = "LENGTH", description = "Height of the water in the jar (default 100mm).")
    String height = "100mm";

    @Option(names = "--water-c", paramLabel = "TEMPERATURE", description = "Its temperature (default 20 °C).")
    String water = "20";

    @Option(names = "--tray", paramLabel = "AREA", description = "Surface of a tray of mud, such as 30x40cm or 0.12m2.")
    @Nullable
    String tray;

    @Option(names = "--et0-mm", paramLabel = "MM", description = "Evaporation of short grass, mm a day, with --tray.")
    @Nullable
    String et0;

    @Option(names = "--min-c", paramLabel = "TEMPERATURE", description = "Lowest air of the day, instead of --et0-mm.")
    @Nullable
    String min;

    @Option(names = "--max-c", paramLabel = "TEMPERATURE", description = "Highest air of the day.")
    @Nullable
    String max;

    @Option(names = "--lat", paramLabel = "DEGREES", description = "Degrees north, with --min-c and --max-c.")
    @Nullable
    String latitude;

    @Option(names = "--on", paramLabel = "DATE", description = "The day, with --min-c and --max-c.")
    @Nullable
    String date;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    MudCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        UnitSystem units = options.unitSystem();
        double mm = Amounts.millimetres("--height", height);
        if (mm < 10 || mm > 1000) {
            throw Refusal.usage("--height is \"" + height + "\"; expected from 10 mm to 1 m.", "");
        }
        MudAnswer answer = MudAnswer.of(new MudQuestion(
                soil(), jar != null, new Settling(mm, Arguments.celsius("--water-c", water, 1, 40)), tray()));
        Wording words = new Wording(units, surroundings.today().getYear());
        options.print(surroundings, () -> MudJson.of(answer), () -> MudText.of(answer, words, units));
        return ExitCode.ANSWERED;
    }

    private Soil soil() {
        if (jar != null && sand == null && silt == null && clay == null) {
            return jarSoil(jar);
        }
        if (jar == null && sand != null && silt != null && clay != null) {
            double one = Arguments.number("--sand", sand, 0, 100, "per cent");
            double two = Arguments.number("--silt", silt, 0, 100, "per cent");
            double three = Arguments.number("--clay", clay, 0, 100, "per cent");
            double sum = one + two + three;
            if (Math.abs(sum - 100) > ROUNDED_SUM_POINTS) {
                throw Refusal.usage(
                        "sand, silt and clay add up to " + Measures.trimmed(sum, 1) + " %; expected 100 %.",
                        "Maybe organic matter or gravel is counted with them: leave it out.");
            }
            return Soil.ofParts(one, two, three);
        }
        throw Refusal.usage(
                "it is not clear what the soil holds; expected either --sand, --silt and --clay in per cent, or --jar"
                        + " SAND,SILT,CLAY in mm.",
                "");
    }

    private static Soil jarSoil(String text) {
        List<Double> layers = new ArrayList<>();
        String[] parts = text.split(",", -1);
        for (String part : parts) {
            layers.add(Arguments.number("--jar", part.strip().replaceFirst("mm$", ""), 0, 1000, "mm for each layer"));
        }
        if (layers.size() != 3) {
            throw Refusal.usage(
                    "--jar is \"" + text
                            + "\"; expected three heights from below, sand, silt and clay, such as 40,25,8.",
                    "");
        }
        if (layers.get(0) + layers.get(1) + layers.get(2) < 5) {
            throw Refusal.usage("--jar is \"" + text + "\"; expected layers of 5 mm or more together.", "");
        }
        return Soil.ofParts(layers.get(0), layers.get(1), layers.get(2));
    }

    private MudQuestion.@Nullable Tray tray() {
        boolean weather = min != null && max != null && latitude != null && date != null;
        boolean none = min == null && max == null && latitude == null && date == null;
        if (tray == null && et0 == null && none) {
            return null;
        }
        if (tray != null && et0 != null && none) {
            return new MudQuestion.Tray(trayArea(tray), Arguments.number("--et0-mm", et0, 0, 20, "mm a day"));
        }
        if (tray != null && et0 == null && weather) {
            return new MudQuestion.Tray(trayArea(tray), evaporation());
        }
        throw Refusal.usage(
                "it is not clear how fast the tray dries; expected --tray AREA with either --et0-mm MM, or --min-c, --max-c,"
                        + " --lat and --on together.",
                "");
    }

    private double evaporation() {
        double low = Arguments.celsius("--min-c", String.valueOf(min), -40, 55);
        double high = Arguments.celsius("--max-c", String.valueOf(max), -40, 55);
        if (low > high) {
            throw Refusal.usage("--min-c is above --max-c; expected the lowest and the highest of one day.", "");
        }
        LocalDate on = Arguments.date("--on", String.valueOf(date));
        double north = Arguments.latitude("--lat", String.valueOf(latitude));
        return ReferenceEvaporation.hargreavesMm(
                low, high, ExtraterrestrialRadiation.dailyMjM2(north, on.getDayOfYear()));
    }

    /** An area, or two sides with an x between them. */
    private static double trayArea(String text) {
        double area = Amounts.rectangleOrArea("--tray", text);
        if (area > 10) {
            throw Refusal.usage("--tray is \"" + text + "\"; expected at most 10 m2.", "");
        }
        return area;
    }
}
