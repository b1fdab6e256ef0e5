package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.WinterAnswer;
import org.nestyear.app.service.WinterQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.winter.StoreAir;
import org.nestyear.core.advice.winter.WinterCheck;
import org.nestyear.core.season.Wintered;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "winter", description = "Judge a winter store by its log: cold had, fat spent, days left, what to do.")
final class WinterCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--species", required = true, paramLabel = "NAME", description = "Latin name, in quotes.")
    String species = "";

    @Option(
            names = "--log",
            required = true,
            paramLabel = "FILE",
            description = "Temperatures among the cocoons or cells: columns time, temp_c.")
    Path log = Path.of("");

    @Option(
            names = "--kept",
            paramLabel = "WHERE",
            description = "fridge (default), shed, outdoors, or unopened: the limits of the fridge are for it alone.")
    @Nullable
    String kept;

    @Option(names = "--before-days", paramLabel = "DAYS", description = "Days of cold before the log began.")
    @Nullable
    String beforeDays;

    @Option(names = "--before-c", paramLabel = "TEMPERATURE", description = "Their temperature.")
    @Nullable
    String beforeC;

    @Option(
            names = "--cold",
            paramLabel = "DATE",
            description = "The day the cold began, for a log that begins when the bees were adult in autumn.")
    @Nullable
    String cold;

    @Option(names = "--rh", paramLabel = "PERCENT", description = "Relative humidity in the store.")
    @Nullable
    String humidity;

    @Option(names = "--room-c", paramLabel = "TEMPERATURE", description = "The room where the store is opened.")
    @Nullable
    String room;

    @Option(names = "--room-rh", paramLabel = "PERCENT", description = "Relative humidity of that room.")
    @Nullable
    String roomHumidity;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    WinterCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        WinterAnswer answer = WinterAnswer.of(new WinterQuestion(
                EitherBee.named(species),
                log,
                Objects.requireNonNullElse(
                        Arguments.word("--kept", kept, Wintered.values(), Wintered::word), Wintered.FRIDGE),
                before(),
                cold == null ? null : Arguments.date("--cold", cold),
                air()));
        Wording words =
                new Wording(options.unitSystem(), answer.to().toLocalDate().getYear());
        options.printLaid(surroundings, () -> WinterPrint.json(answer, words), () -> WinterPrint.text(answer, words));
        return ExitCode.ANSWERED;
    }

    private WinterCheck.Before before() {
        if (beforeDays == null && beforeC == null) {
            return WinterCheck.Before.NONE;
        }
        if (beforeDays == null || beforeC == null || cold != null) {
            throw Refusal.usage(
                    "it is not clear what cold came before the log; expected --before-days and --before-c together, and"
                            + " then no --cold.",
                    "");
        }
        return new WinterCheck.Before(
                Arguments.number("--before-days", beforeDays, 0, 400, "days"),
                Arguments.celsius("--before-c", beforeC, -20, 15));
    }

    private @Nullable StoreAir air() {
        if ((room == null) != (roomHumidity == null) || (room != null && humidity == null)) {
            throw Refusal.usage("--rh, --room-c and --room-rh go together; expected all three, or --rh alone.", "");
        }
        if (humidity == null) {
            return null;
        }
        return new StoreAir(
                Arguments.number("--rh", humidity, 1, 100, "per cent"),
                room == null || roomHumidity == null
                        ? null
                        : new StoreAir.Room(
                                Arguments.celsius("--room-c", room, -10, 45),
                                Arguments.number("--room-rh", roomHumidity, 1, 100, "per cent")));
    }
}
