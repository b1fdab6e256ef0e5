package org.nestyear.app.cli;

import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.SunAnswer;
import org.nestyear.app.service.SunQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.sun.Observer;
import org.nestyear.core.sun.StandardPressure;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "sun", description = "Say where the sun stands, when it rises and sets, and how much light it gives.")
final class SunCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--lat", required = true, paramLabel = "DEGREES", description = "Degrees north, -90 to 90.")
    String latitude = "";

    @Option(names = "--lon", required = true, paramLabel = "DEGREES", description = "Degrees east, -180 to 180.")
    String longitude = "";

    @Option(
            names = "--at",
            required = true,
            paramLabel = "TIME",
            description = "Date and time with offset, such as 2015-04-20T12:00:00-04:00.")
    String at = "";

    @Option(
            names = "--faces",
            paramLabel = "DEGREES",
            description = "Where a front looks, clockwise from north: 90 east, 180 south.")
    @Nullable
    String faces;

    @Option(names = "--elevation-m", paramLabel = "METRES", description = "Metres above sea level (default 0).")
    String elevation = "0";

    @Option(
            names = "--pressure-hpa",
            paramLabel = "HPA",
            description = "Air pressure at the place (default: the standard pressure of its elevation).")
    @Nullable
    String pressure;

    @Option(names = "--air-c", paramLabel = "TEMPERATURE", description = "Air temperature (default 12 °C).")
    String air = "12";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    SunCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Wording words = new Wording(options.unitSystem(), surroundings.today().getYear());
        double metres = Arguments.number("--elevation-m", elevation, -430, 9000, "m");
        OffsetDateTime moment = Arguments.moment("--at", at);
        SunAnswer answer = SunAnswer.of(new SunQuestion(
                new Observer(
                        Arguments.latitude("--lat", latitude),
                        Arguments.number("--lon", longitude, -180, 180, "degrees east"),
                        metres,
                        pressure == null
                                ? StandardPressure.hPa(metres)
                                : Arguments.number("--pressure-hpa", pressure, 300, 1100, "hPa"),
                        Arguments.celsius("--air-c", air, -60, 60)),
                moment,
                faces == null ? null : Arguments.number("--faces", faces, 0, 360, "degrees")));
        options.print(surroundings, () -> SunJson.of(answer), () -> SunText.of(answer, words));
        return ExitCode.ANSWERED;
    }
}
