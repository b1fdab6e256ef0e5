package org.nestyear.core.advice.winter;

import java.util.Arrays;
import java.util.List;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.leafcutter.WinterLimits;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.HourlyTemperatures;

/** What a log from the end of summer on shows of leafcutter cells, which winter as prepupae and need no fat watched. */
public final class LeafcutterWinter {
    private LeafcutterWinter() {}

    /**
     * The findings, most pressing first.
     *
     * @param hourlyC temperature of the cells by the hour, °C
     */
    public static List<Finding> findings(ReadLog read, double[] hourlyC) {
        WinterLimits limits = new WinterLimits(read);
        return limits.flags(hourlyC).stream()
                .map(flag -> finding(flag, read, hourlyC))
                .sorted((a, b) -> b.level().compareTo(a.level()))
                .toList();
    }

    /** Days of the log below the warmth of a short stay, counted by hours. */
    public static double coldDays(ReadLog read, double[] hourlyC) {
        return HourlyTemperatures.daysWithin(hourlyC, Double.NEGATIVE_INFINITY, read.value("store_brief_low_c"));
    }

    private static Finding finding(WinterLimits.Flag flag, ReadLog read, double[] hourlyC) {
        Quantity low = Quantity.celsius(read.value("store_low_c"));
        Quantity high = Quantity.celsius(read.value("store_high_c"));
        return switch (flag) {
            case AUTUMN_TOO_WARM ->
                new Finding(
                        "autumn-too-warm",
                        Level.ACT,
                        Phrase.of("So much warmth after the summer that bees may fail to come out next year."),
                        Phrase.of(
                                "{} from {} on, {} from {} on",
                                days(hourlyC, read.value("autumn_warm_c")),
                                Quantity.celsius(read.value("autumn_warm_c")).withDecimals(1),
                                days(hourlyC, read.value("autumn_hot_c")),
                                Quantity.celsius(read.value("autumn_hot_c"))),
                        Phrase.of(
                                "{} and {}",
                                Quantity.days(read.value("autumn_warm_days")),
                                Quantity.days(read.value("autumn_hot_days"))),
                        Phrase.of(
                                "If a look into cells of the newest nest shows settled pale grubs, store them at {} to {}"
                                        + " now.",
                                low,
                                high),
                        null,
                        read.read());
            case BELOW_FREEZING ->
                new Finding(
                        "store-freezing",
                        Level.WATCH,
                        Phrase.of("Below freezing emergence was less even and more bees died."),
                        Phrase.of(
                                "down to {}",
                                Quantity.celsius(Arrays.stream(hourlyC).min().orElse(Double.NaN))
                                        .withDecimals(1)),
                        Phrase.of("{}", Quantity.celsius(read.value("store_watch_c"))),
                        Phrase.of("Move them to {} to {}, in breathable cloth.", low, high),
                        null,
                        read.read());
            case MILD_TOO_LONG ->
                new Finding(
                        "store-mild-too-long",
                        Level.WATCH,
                        Phrase.of("A long mild store spends what the grubs live on."),
                        Phrase.of(
                                "{} between {} and {}",
                                Quantity.days(HourlyTemperatures.daysWithin(
                                        hourlyC,
                                        read.value("store_brief_low_c"),
                                        Math.nextUp(read.value("store_brief_high_c")))),
                                Quantity.celsius(read.value("store_brief_low_c")),
                                Quantity.celsius(read.value("store_brief_high_c"))),
                        Phrase.of("about {}", Quantity.days(read.value("store_brief_days"))),
                        Phrase.of("Store them at {} to {}.", low, high),
                        null,
                        read.read());
        };
    }

    private static Quantity days(double[] hourlyC, double fromC) {
        return Quantity.days(HourlyTemperatures.daysWithin(hourlyC, fromC, Double.POSITIVE_INFINITY));
    }
}
