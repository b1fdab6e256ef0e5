package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.leafcutter.Holding;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Span;
import org.nestyear.core.leafcutter.Stage;
import org.nestyear.core.leafcutter.Summer;
import org.nestyear.core.leafcutter.TwoSums;
import org.nestyear.core.leafcutter.Warming;
import org.nestyear.core.leafcutter.WarmthClock;
import org.nestyear.core.leafcutter.WarmthSettings;
import org.nestyear.core.leafcutter.YearsOfDates;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.LoggedTemperatures;
import org.nestyear.data.CatalogueFiles;

/** Answers when leafcutter bees come out: warmed steadily, by a log, or outdoors in the house. */
public final class WarmService {
    /** Days after the last useful day that are still looked at, so that late bees get a date; numerical. */
    private static final int DAYS_BEYOND = 45;

    private static final long DAY_HOURS = 24;
    /** Half a year, from a northern date to the southern one. */
    private static final int HALF_YEAR_MONTHS = 6;

    private final Catalogue catalogue;

    public WarmService(Catalogue leafcutters) {
        this.catalogue = leafcutters;
    }

    /** With the leafcutters that come with the program. */
    public static WarmService standard() {
        return new WarmService(CatalogueFiles.leafcutters());
    }

    /**
     * The leafcutter bee with this Latin name.
     *
     * @throws Refusal if the catalogue has none
     */
    public Species species(String latinName) {
        return catalogue.find(latinName).orElseThrow(() -> {
            boolean mason = PlanService.catalogue().find(latinName).isPresent();
            return Refusal.usage(
                    "\"" + latinName + "\" is not a leafcutter bee of the catalogue; expected one of "
                            + String.join(", ", catalogue.names()) + ".",
                    mason
                            ? "Maybe the command emerge was meant: it is the one for mason bees."
                            : Spelling.advice(latinName, catalogue.names()));
        });
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if a file is wrong, a steady temperature lies outside what is answered, or outdoors the bees would
     *     miss the summer
     */
    public WarmAnswer answer(WarmQuestion question) {
        ReadLog read = new ReadLog(question.species().parameters());
        WarmthSettings settings = WarmthSettings.of(read);
        WarmthClock clock = new WarmthClock(settings);
        TwoSums had = had(question.before(), read, settings, clock);
        Fingerprint print = new Fingerprint(catalogue.fingerprint());
        print.add(question.species().latinName());
        print.add(question.before());
        print.add(String.valueOf(question.hold()));
        print.add(String.valueOf(question.storedDays()));
        print.add(String.valueOf(question.latitudeDeg()));
        Course course = course(question, read, settings, clock, had, print);
        Summer summer = Summer.of(read);
        WarmWords.rows(question).forEach(read::value);
        WarmAnswer.Years years = course.lastUseful == null ? null : years(question, course, clock, had, read);
        Holding holding = new Holding(read);
        Map<Milestone, DateBand> dates = new EnumMap<>(Milestone.class);
        for (Milestone milestone : Milestone.values()) {
            dates.put(milestone, band(course, spans(course, warming -> clock.span(milestone, warming, had))));
        }
        DateBand most = dates.get(Milestone.MOST_OUT);
        DateBand watch = band(course, spans(course, warming -> clock.parasitoidWatch(warming, had)));
        return new WarmAnswer(
                question,
                course.start,
                course.startLatest,
                dates,
                watch,
                stages(dates, course.start, holding),
                hold(question, course.start, settings, had, holding),
                course.log == null ? null : logAnswer(course, settings, had, read),
                years,
                tooHot(course, most == null ? null : most.late(), read),
                WarmAfter.of(question, dates, summer, read),
                read.read(),
                print.digits());
    }

    private static TwoSums had(WarmQuestion.Before before, ReadLog read, WarmthSettings settings, WarmthClock clock) {
        if (before instanceof WarmQuestion.Warmed warmed) {
            return settings.gathered(steady("--warmed-at-c", warmed.celsius(), read, settings), warmed.days());
        }
        if (before instanceof WarmQuestion.FlightIn flight) {
            return clock.hadWhenFlightIsIn(flight.days(), steady("--warmed-at-c", flight.celsius(), read, settings));
        }
        return TwoSums.NONE;
    }

    private static double steady(String option, @Nullable Double celsius, ReadLog read, WarmthSettings settings) {
        double value = celsius == null ? read.value("calendar_c") : celsius;
        if (!settings.answersSteady(value)) {
            boolean cold = value < settings.steadyLowC();
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-WARM-RANGE",
                    "",
                    option + " is " + Wording.number(value, 1) + " °C; steady warming is answered from "
                            + Wording.number(settings.steadyLowC(), 0) + " to "
                            + Wording.number(settings.steadyHighC(), 0) + " °C ("
                            + Wording.number(settings.steadyLowC() * 9 / 5 + 32, 0) + " to "
                            + Wording.number(settings.steadyHighC() * 9 / 5 + 32, 0) + " °F), because "
                            + (cold
                                    ? "colder bees come out late, few, or not at all."
                                    : "in greater heat the count goes wrong and few come out."),
                    "Maybe keep them at " + Wording.number(read.value("calendar_c"), 1)
                            + " °C, for which the days are known best.");
        }
        return value;
    }

    private static Course course(
            WarmQuestion question,
            ReadLog read,
            WarmthSettings settings,
            WarmthClock clock,
            TwoSums had,
            Fingerprint print) {
        if (question.warmth() instanceof WarmQuestion.Steady steady) {
            steady("--at-c", steady.celsius(), read, settings);
            print.add(steady);
            return Course.of(steady.start(), null, heldOr(question, steady.celsius(), steady.start()));
        }
        if (question.warmth() instanceof WarmQuestion.ReadyBy ready) {
            steady("--at-c", ready.celsius(), read, settings);
            print.add(ready);
            Warming warming = Warming.steady(ready.celsius());
            Span half = clock.span(Milestone.HALF_FEMALES, warming, had);
            return Course.of(
                    ready.date().minusDays((long) Math.ceil(half.lateDays())),
                    ready.date().minusDays((long) Math.floor(half.earlyDays())),
                    warming);
        }
        if (question.warmth() instanceof WarmQuestion.Logged logged) {
            if (logged.thenC() != null) {
                steady("--at-c", logged.thenC(), read, settings);
            }
            WarmLog log = WarmLog.read(logged, settings);
            print.add(log.readings().readings());
            print.add(String.valueOf(logged.thenC()));
            return Course.of(log);
        }
        WarmQuestion.Outdoors outdoors = (WarmQuestion.Outdoors) question.warmth();
        LocalDate lastUseful = lastUseful(outdoors, read.value("last_useful_day"));
        LocalDate from = outdoors.out().isAfter(lastUseful) ? outdoors.out() : lastUseful;
        WarmSummers summers = WarmSummers.read(outdoors, from.plusDays(DAYS_BEYOND), read.value("house_excess_c"));
        print.add(outdoors.out());
        print.add(outdoors.latitudeDeg());
        summers.hours().forEach(hours -> print.add(Arrays.toString(hours)));
        return Course.of(outdoors, summers, lastUseful);
    }

    private static Warming heldOr(WarmQuestion question, double celsius, LocalDate start) {
        WarmQuestion.Hold hold = question.hold();
        return hold == null
                ? Warming.steady(celsius)
                : Warming.held(celsius, (int) ChronoUnit.DAYS.between(start, hold.from()), hold.celsius(), hold.days());
    }

    /** The last useful day of the season the day lies in; half a year later south of the equator. */
    private static LocalDate lastUseful(WarmQuestion.Outdoors outdoors, double dayOfYear) {
        LocalDate out = outdoors.out();
        boolean south = outdoors.latitudeDeg() < 0;
        int year = south ? out.minusMonths(HALF_YEAR_MONTHS).getYear() : out.getYear();
        LocalDate north = LocalDate.ofYearDay(year, (int) Math.round(dayOfYear));
        return south ? north.plusMonths(HALF_YEAR_MONTHS) : north;
    }

    private static WarmAnswer.Years years(
            WarmQuestion question, Course course, WarmthClock clock, TwoSums had, ReadLog read) {
        LocalDate last = course.lastUseful;
        if (last == null) {
            throw new IllegalStateException("no summers were read");
        }
        List<Span> half = spans(course, warming -> clock.span(Milestone.HALF_FEMALES, warming, had));
        Parameter excess = read.row("house_excess_c");
        double warmer = excess.high() - excess.value();
        List<Span> warmerHalf = course.hours.stream()
                .map(hours -> Warming.hours(
                        Arrays.stream(hours).map(celsius -> celsius + warmer).toArray()))
                .map(warming -> clock.span(Milestone.HALF_FEMALES, warming, had))
                .toList();
        int days = (int) ChronoUnit.DAYS.between(course.start, last) + 1;
        WarmAnswer.Years years = new WarmAnswer.Years(
                half.size(),
                course.ownDays,
                last,
                YearsOfDates.inTime(half, days),
                (int) half.stream().filter(span -> span.earlyDays() <= days).count(),
                warmer,
                band(course, warmerHalf),
                YearsOfDates.inTime(warmerHalf, days));
        if (2 * years.perhapsInTime() < years.count()) {
            throw notThisSummer(question, course.start, years);
        }
        return years;
    }

    private static Refusal notThisSummer(WarmQuestion question, LocalDate start, WarmAnswer.Years years) {
        Wording words = new Wording(UnitSystem.METRIC, start.getYear());
        return new Refusal(
                Refusal.Kind.NO_ANSWER,
                "NY-WARM-NOT-THIS-SUMMER",
                "",
                "Not this summer: put out on " + words.date(start) + ", half the females are out by "
                        + words.date(years.lastUseful()) + " in " + years.perhapsInTime() + " of " + years.count()
                        + (years.count() == 1 ? " summer" : " summers") + " in the shade, and in "
                        + years.warmerInTime() + " in a house that the sun keeps "
                        + Wording.number(years.warmerC(), 0) + " °C warmer; later bees hardly raise brood.",
                "Maybe warm them indoors: nestyear warm --species \""
                        + question.species().latinName() + "\" --ready-by DATE --at-c 29.4 tells when to begin.");
    }

    private static List<Span> spans(Course course, Function<Warming, Span> span) {
        return course.warmings.stream().map(span).toList();
    }

    private static DateBand band(Course course, List<Span> spans) {
        Span band = YearsOfDates.band(spans);
        return new DateBand(
                day(course.start, Math.floor(band.earlyDays())), day(course.start, Math.ceil(band.lateDays())));
    }

    private static @Nullable LocalDate day(LocalDate start, double days) {
        return Double.isFinite(days) ? start.plusDays((long) days) : null;
    }

    private static List<WarmAnswer.StageDates> stages(
            Map<Milestone, DateBand> dates, LocalDate start, Holding holding) {
        List<WarmAnswer.StageDates> stages = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            Milestone begins = stage.begins();
            DateBand band = begins == null ? null : dates.get(begins);
            stages.add(new WarmAnswer.StageDates(
                    stage, band == null ? new DateBand(start, start) : band, holding.wasTested(stage)));
        }
        return stages;
    }

    private static WarmAnswer.@Nullable HoldAnswer hold(
            WarmQuestion question, LocalDate start, WarmthSettings settings, TwoSums had, Holding holding) {
        WarmQuestion.Hold hold = question.hold();
        Double celsius = WarmWords.steadyC(question);
        if (hold == null || celsius == null) {
            return null;
        }
        // The hour of the day is not told, so the cells may have had almost a day more.
        Warming warming = Warming.steady(celsius);
        int days = (int) ChronoUnit.DAYS.between(start, hold.from());
        Stage least = Stage.slowest(settings, sum(warming.gatheredBy(settings, days), had));
        Stage most = Stage.quickest(settings, sum(warming.gatheredBy(settings, days + 1), had));
        Holding.Verdict verdict = Holding.worse(
                holding.judge(least, hold.celsius(), hold.days(), hold.pulseHours()),
                holding.judge(most, hold.celsius(), hold.days(), hold.pulseHours()));
        return new WarmAnswer.HoldAnswer(least, most, verdict);
    }

    private static WarmAnswer.LogAnswer logAnswer(Course course, WarmthSettings settings, TwoSums had, ReadLog read) {
        WarmLog log = course.log;
        if (log == null) {
            throw new IllegalStateException("no log was read");
        }
        double[] hours = log.hourlyC();
        TwoSums gathered = sum(course.warmings.get(0).gatheredBy(settings, hours.length / 24.0), had);
        double coolBelow = read.value("steady_low_c");
        return new WarmAnswer.LogAnswer(
                log.readings().last(),
                Arrays.stream(hours).average().orElse(Double.NaN),
                log.thenC(),
                log.readings().gaps(),
                Arrays.stream(hours).filter(celsius -> celsius < coolBelow).count(),
                Stage.slowest(settings, gathered),
                Stage.quickest(settings, gathered));
    }

    private static TwoSums sum(TwoSums one, TwoSums other) {
        return new TwoSums(one.lowBase() + other.lowBase(), one.highBase() + other.highBase());
    }

    /** Hours too hot until most bees are out; of a log those of its readings, which an hour's mean would smooth. */
    private static double tooHot(Course course, @Nullable LocalDate mostOut, ReadLog read) {
        if (course.hours.isEmpty()) {
            return 0;
        }
        double limit = read.value("heat_watch_c");
        if (course.log != null) {
            LoggedTemperatures readings = course.log.readings();
            long hot = readings.readings().stream()
                    .filter(reading -> reading.celsius() > limit)
                    .count();
            return readings.usualStepHours() * hot;
        }
        long hours =
                mostOut == null ? Long.MAX_VALUE : DAY_HOURS * (ChronoUnit.DAYS.between(course.start, mostOut) + 1);
        double hot = 0;
        for (double[] run : course.hours) {
            hot += Arrays.stream(run)
                    .limit(hours)
                    .filter(celsius -> celsius > limit)
                    .count();
        }
        return hot / course.hours.size();
    }

    /** The temperatures met, one run or one a summer, and the day from which they count. */
    private record Course(
            LocalDate start,
            @Nullable LocalDate startLatest,
            List<Warming> warmings,
            List<double[]> hours,
            @Nullable WarmLog log,
            @Nullable LocalDate lastUseful,
            long ownDays) {
        static Course of(LocalDate start, @Nullable LocalDate startLatest, Warming warming) {
            return new Course(start, startLatest, List.of(warming), List.of(), null, null, 0);
        }

        static Course of(WarmLog log) {
            LocalDateTime first = log.readings().first();
            double[] hours = log.hourlyC();
            Double then = log.thenC();
            Warming warming = then == null ? Warming.hours(hours) : Warming.hoursThen(hours, then);
            return new Course(first.toLocalDate(), null, List.of(warming), List.of(hours), log, null, 0);
        }

        static Course of(WarmQuestion.Outdoors outdoors, WarmSummers summers, LocalDate lastUseful) {
            List<double[]> hours = summers.hours();
            return new Course(
                    outdoors.out(),
                    null,
                    hours.stream().map(Warming::hours).toList(),
                    hours,
                    null,
                    lastUseful,
                    summers.ownDays());
        }
    }
}
