package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.WarmAnswer;
import org.nestyear.app.service.WarmQuestion;
import org.nestyear.app.service.WarmService;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "warm",
        description = "Say when to warm leafcutter bees and when they come out: incubator, warm room, or outdoors.")
final class WarmCommand implements Callable<Integer> {
    /** Coldest and hottest that is read as a temperature of warmed cells, °C; what can be answered is narrower. */
    private static final double COLDEST_C = -10;

    private static final double HOTTEST_C = 50;
    private static final double LONGEST_DAYS = 100;
    private static final double LONGEST_STORE_DAYS = 600;

    private final Surroundings surroundings;

    @Option(names = "--species", required = true, paramLabel = "NAME", description = "Latin name, in quotes.")
    String species = "";

    @Option(
            names = "--at-c",
            paramLabel = "TEMPERATURE",
            description = "One temperature among the cells, such as 29.4, 30C or 85F; with --log, after the log ends.")
    @Nullable
    String at;

    @Option(names = "--start", paramLabel = "DATE", description = "The day warming begins, with --at-c.")
    @Nullable
    String start;

    @Option(
            names = "--ready-by",
            paramLabel = "DATE",
            description = "Instead of --start: the day by which half the females are to be out, such as first bloom.")
    @Nullable
    String readyBy;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Temperatures logged among the cells since warming began: columns time, temp_c.")
    @Nullable
    Path log;

    @Option(names = "--weather", paramLabel = "FILE", description = "Daily weather, for cells put out in the house.")
    @Nullable
    Path weather;

    @Option(names = "--out", paramLabel = "DATE", description = "The day they are put out, with --weather.")
    @Nullable
    String out;

    @Option(
            names = "--lat",
            paramLabel = "DEGREES",
            description = "Degrees north; needed with --weather, else for the second generation.")
    @Nullable
    String latitude;

    @Option(
            names = "--days-warmed",
            paramLabel = "DAYS",
            description = "Days the cells were warmed before they came to you.")
    @Nullable
    String daysWarmed;

    @Option(
            names = "--days-to-flight",
            paramLabel = "DAYS",
            description = "Instead of --days-warmed: days to the first bees, as the seller says.")
    @Nullable
    String daysToFlight;

    @Option(
            names = "--warmed-at-c",
            paramLabel = "TEMPERATURE",
            description = "Temperature of that warming (default 29.4, 85 °F).")
    @Nullable
    String warmedAt;

    @Option(
            names = "--hold-from",
            paramLabel = "DATE",
            description = "Break off warming on this day, with --at-c and --start.")
    @Nullable
    String holdFrom;

    @Option(names = "--hold-days", paramLabel = "DAYS", description = "For so many days.")
    @Nullable
    String holdDays;

    @Option(names = "--hold-c", paramLabel = "TEMPERATURE", description = "At this temperature.")
    @Nullable
    String holdAt;

    @Option(
            names = "--hold-pulse-hours",
            paramLabel = "HOURS",
            description = "With so many hours a day at 20 to 25 °C in between.")
    @Nullable
    String holdPulse;

    @Option(names = "--stored-days", paramLabel = "DAYS", description = "Days the cells were in the cold store.")
    @Nullable
    String stored;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    WarmCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        WarmService service = WarmService.standard();
        WarmQuestion.Warmth warmth = warmth();
        WarmAnswer answer = service.answer(new WarmQuestion(
                service.species(species),
                warmth,
                before(),
                hold(warmth),
                stored == null ? null : Arguments.number("--stored-days", stored, 0, LONGEST_STORE_DAYS, "days"),
                latitude == null ? null : Arguments.latitude("--lat", latitude)));
        Wording words = new Wording(options.unitSystem(), answer.start().getYear());
        options.print(surroundings, () -> WarmJson.of(answer), () -> WarmText.of(answer, words, surroundings.today()));
        return answer.isComplete() ? ExitCode.ANSWERED : ExitCode.PARTLY;
    }

    private WarmQuestion.Warmth warmth() {
        boolean noWeather = weather == null && out == null;
        if (log != null && start == null && readyBy == null && noWeather) {
            return new WarmQuestion.Logged(log, at == null ? null : temperature("--at-c", at));
        }
        if (log == null && at != null && start != null && readyBy == null && noWeather) {
            return new WarmQuestion.Steady(temperature("--at-c", at), Arguments.date("--start", start));
        }
        if (log == null && at != null && start == null && readyBy != null && noWeather) {
            return new WarmQuestion.ReadyBy(temperature("--at-c", at), Arguments.date("--ready-by", readyBy));
        }
        boolean onlyWeather = log == null && at == null && start == null && readyBy == null;
        if (onlyWeather && weather != null && out != null && latitude != null) {
            return new WarmQuestion.Outdoors(
                    weather, Arguments.date("--out", out), Arguments.latitude("--lat", latitude));
        }
        throw Refusal.usage(
                "it is not clear how the cells are warmed; expected one of: --at-c TEMPERATURE and --start DATE; --at-c"
                        + " TEMPERATURE and --ready-by DATE; --log FILE; --weather FILE, --out DATE and --lat DEGREES.",
                advice());
    }

    private String advice() {
        if (weather != null && latitude == null) {
            return "Maybe --lat is missing: the length of the day is needed.";
        }
        if (at != null && weather == null && log == null) {
            return "Maybe --start is missing: the day warming begins.";
        }
        return "";
    }

    private WarmQuestion.Before before() {
        Double celsius = warmedAt == null ? null : Double.valueOf(temperature("--warmed-at-c", warmedAt));
        if (daysWarmed != null && daysToFlight == null) {
            return new WarmQuestion.Warmed(
                    Arguments.number("--days-warmed", daysWarmed, 0, LONGEST_DAYS, "days"), celsius);
        }
        if (daysToFlight != null && daysWarmed == null) {
            return new WarmQuestion.FlightIn(
                    Arguments.number("--days-to-flight", daysToFlight, 0, LONGEST_DAYS, "days"), celsius);
        }
        if (daysWarmed != null || celsius != null) {
            throw Refusal.usage(
                    "it is not clear how long the cells were warmed before; expected --days-warmed DAYS or"
                            + " --days-to-flight DAYS, one of them.",
                    "");
        }
        return new WarmQuestion.Fresh();
    }

    private WarmQuestion.@Nullable Hold hold(WarmQuestion.Warmth warmth) {
        if (holdFrom == null && holdDays == null && holdAt == null && holdPulse == null) {
            return null;
        }
        if (holdFrom == null || holdDays == null || holdAt == null || !(warmth instanceof WarmQuestion.Steady steady)) {
            throw Refusal.usage(
                    "a hold is not told in full; expected --hold-from DATE, --hold-days DAYS and --hold-c TEMPERATURE"
                            + " together, beside --at-c and --start.",
                    "");
        }
        LocalDate from = Arguments.date("--hold-from", holdFrom);
        if (from.isBefore(steady.start())) {
            throw Refusal.usage(
                    "--hold-from is " + from + "; expected a day not before the warming begins, " + steady.start()
                            + ".",
                    "");
        }
        return new WarmQuestion.Hold(
                from,
                Arguments.number("--hold-days", holdDays, 0, LONGEST_DAYS, "days"),
                temperature("--hold-c", holdAt),
                holdPulse == null ? 0 : Arguments.number("--hold-pulse-hours", holdPulse, 0, 24, "hours"));
    }

    private static double temperature(String option, String text) {
        return Arguments.celsius(option, text, COLDEST_C, HOTTEST_C);
    }
}
