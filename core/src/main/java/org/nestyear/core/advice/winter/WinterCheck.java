package org.nestyear.core.advice.winter;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.winter.BodyFat;
import org.nestyear.core.winter.PreWinter;

/**
 * A winter of mason bees as logged so far, worked out.
 *
 * @param table numbers of the species
 * @param kept where they winter
 * @param chillDays days of chill so far, the told ones before the log among them
 * @param coldDays days since the cold began, d
 * @param nowC mean temperature of the last day of the log, °C
 * @param hottestC warmest hour of the log's cold, °C
 * @param coldestC coldest hour, °C
 * @param warmDays days above the warmest that served for long, counted by hours
 * @param tooWarmDays days at or above the limit of chill, counted by hours
 * @param lostPercent weight lost since the cold began, per cent of the first
 * @param fat what they spend
 * @param preWinter degree-days between adulthood and the cold, °C·d, or null where that time was not logged
 * @param air air of the store, or null
 * @param basis numbers read to work this out
 */
public record WinterCheck(
        ParameterTable table,
        Wintered kept,
        double chillDays,
        double coldDays,
        double nowC,
        double hottestC,
        double coldestC,
        double warmDays,
        double tooWarmDays,
        double lostPercent,
        BodyFat fat,
        @Nullable Double preWinter,
        @Nullable StoreAir air,
        List<Parameter> basis) {
    private static final int DAY_HOURS = 24;
    /** Rules for a fridge, gravest first. */
    private static final List<WinterRule> FRIDGE =
            List.of(new TooWarmRule(), new WarmTooLongRule(), new TooColdRule(), new TooLongRule());

    private static final List<WinterRule> OTHERS = List.of(
            new FatRule(),
            new PreWinterRule(),
            new MildSpellRule(),
            new ChillRule(),
            new HandlingRule(),
            new AirRule(),
            new WetOnOpeningRule());

    public WinterCheck {
        basis = List.copyOf(basis);
    }

    /**
     * Cold told for the time before the log.
     *
     * @param days days of it, d
     * @param celsius its temperature, °C
     */
    public record Before(double days, double celsius) {
        /** None. */
        public static final Before NONE = new Before(0, 0);
    }

    /**
     * Works a log out.
     *
     * @param hourlyC temperature of the cocoons by the hour, °C, at least a day
     * @param adultHours hours at its beginning, from adulthood on, that came before the cold; 0 for a log that begins with
     *     the cold
     */
    public static WinterCheck of(
            ParameterTable table,
            Wintered kept,
            Before before,
            double[] hourlyC,
            int adultHours,
            @Nullable StoreAir air) {
        ReadLog read = new ReadLog(table);
        double[] cold = Arrays.copyOfRange(hourlyC, adultHours, hourlyC.length);
        BodyFat fat = BodyFat.of(read);
        double chillC = read.value("chill_limit_c");
        double earlier = before.celsius() < chillC ? before.days() : 0;
        int chilled = 0;
        for (int from = 0; from + DAY_HOURS <= cold.length; from += DAY_HOURS) {
            chilled += mean(cold, from, from + DAY_HOURS) < chillC ? 1 : 0;
        }
        Double preWinter = adultHours == 0
                ? null
                : Double.valueOf(PreWinter.of(read).degreeDays(Arrays.copyOf(hourlyC, adultHours)));
        double warmC = Math.nextUp(read.value("fridge_high_c"));
        return new WinterCheck(
                table,
                kept,
                earlier + chilled,
                before.days() + (double) cold.length / DAY_HOURS,
                mean(cold, Math.max(0, cold.length - DAY_HOURS), cold.length),
                Arrays.stream(cold).max().orElse(Double.NaN),
                Arrays.stream(cold).min().orElse(Double.NaN),
                daysAbove(cold, warmC),
                daysAbove(cold, chillC),
                before.days() * fat.percentPerDay(before.celsius()) + fat.percentOver(cold),
                fat,
                preWinter,
                air,
                read.read());
    }

    private static double mean(double[] values, int from, int to) {
        return Arrays.stream(values, from, to).average().orElse(Double.NaN);
    }

    private static double daysAbove(double[] hourlyC, double limitC) {
        return HourlyTemperatures.daysWithin(hourlyC, limitC, Double.POSITIVE_INFINITY);
    }

    /** True for cocoons in a fridge, the only ones its limits are for. */
    boolean inFridge() {
        return kept == Wintered.FRIDGE;
    }

    /** Share of the bearable loss that is spent, 0 or more. */
    public double spent() {
        return lostPercent / fat.bearablePercent();
    }

    /** Days until the bearable loss is reached at the temperature of the last day. */
    public double fatDaysLeft() {
        return fat.daysLeft(lostPercent, nowC);
    }

    /** Days until the longest cold that served, for a fridge; null elsewhere. */
    public @Nullable Double testedDaysLeft() {
        if (!inFridge()) {
            return null;
        }
        boolean warm = nowC > table.value("fridge_high_c");
        return Math.max(0, table.value(warm ? "fridge_warm_days" : "fridge_long_days") - coldDays);
    }

    /** The smaller of both. */
    public double daysLeft() {
        Double tested = testedDaysLeft();
        return tested == null ? fatDaysLeft() : Math.min(tested, fatDaysLeft());
    }

    /** What the rules find, most pressing first. */
    public List<Finding> findings() {
        return Stream.concat(FRIDGE.stream(), OTHERS.stream())
                .map(rule -> rule.find(this))
                .flatMap(Optional::stream)
                .sorted((a, b) -> b.level().compareTo(a.level()))
                .toList();
    }

    /**
     * The gravest finding about a fridge of one temperature.
     *
     * @param days days in it, d
     * @param celsius its temperature, °C
     */
    public static Optional<Finding> ofSteadyFridge(ParameterTable table, double days, double celsius) {
        ReadLog read = new ReadLog(table);
        BodyFat fat = BodyFat.of(read);
        boolean warm = celsius > read.value("fridge_high_c");
        boolean tooWarm = celsius >= read.value("chill_limit_c");
        WinterCheck check = new WinterCheck(
                table,
                Wintered.FRIDGE,
                tooWarm ? 0 : days,
                days,
                celsius,
                celsius,
                celsius,
                warm ? days : 0,
                tooWarm ? days : 0,
                days * fat.percentPerDay(celsius),
                fat,
                null,
                null,
                read.read());
        return FRIDGE.stream()
                .map(rule -> rule.find(check))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** A log of the numbers a rule reads. */
    ReadLog read() {
        return new ReadLog(table);
    }
}
