package org.nestyear.core.leafcutter;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.weather.HourlyTemperatures;

/** What settled prepupae bear from the end of summer to the start of warming. */
public final class WinterLimits {
    private final double storeLowC;
    private final double storeHighC;
    private final double watchC;
    private final double briefLowC;
    private final double briefHighC;
    private final double briefDays;
    private final double evenDays;
    private final double warmC;
    private final double warmDays;
    private final double hotC;
    private final double hotDays;

    public WinterLimits(ParameterReader parameters) {
        storeLowC = parameters.value("store_low_c");
        storeHighC = parameters.value("store_high_c");
        watchC = parameters.value("store_watch_c");
        briefLowC = parameters.value("store_brief_low_c");
        briefHighC = parameters.value("store_brief_high_c");
        briefDays = parameters.value("store_brief_days");
        evenDays = parameters.value("store_even_days");
        warmC = parameters.value("autumn_warm_c");
        warmDays = parameters.value("autumn_warm_days");
        hotC = parameters.value("autumn_hot_c");
        hotDays = parameters.value("autumn_hot_days");
    }

    /** What a record of temperatures shows against the limits. */
    public enum Flag {
        /** So much autumn warmth that bees may fail to come out in spring. */
        AUTUMN_TOO_WARM,
        /** Colder than the store should be. */
        BELOW_FREEZING,
        /** Longer in mild air than a short stay. */
        MILD_TOO_LONG
    }

    /** Coldest temperature of the store asked for, °C. */
    public double storeLowC() {
        return storeLowC;
    }

    /** Warmest temperature of the store asked for, °C. */
    public double storeHighC() {
        return storeHighC;
    }

    /** Days of cold for even emergence. */
    public double evenDays() {
        return evenDays;
    }

    /**
     * What hours from the end of summer on show against the limits.
     *
     * @param hourlyC temperature of the cells, °C
     * @return flags raised, in the order of {@link Flag}
     */
    public List<Flag> flags(double[] hourlyC) {
        List<Flag> flags = new ArrayList<>();
        if (HourlyTemperatures.daysWithin(hourlyC, warmC, Double.POSITIVE_INFINITY) > warmDays
                || HourlyTemperatures.daysWithin(hourlyC, hotC, Double.POSITIVE_INFINITY) > hotDays) {
            flags.add(Flag.AUTUMN_TOO_WARM);
        }
        if (HourlyTemperatures.daysWithin(hourlyC, Double.NEGATIVE_INFINITY, watchC) > 0) {
            flags.add(Flag.BELOW_FREEZING);
        }
        if (HourlyTemperatures.daysWithin(hourlyC, briefLowC, Math.nextUp(briefHighC)) > briefDays) {
            flags.add(Flag.MILD_TOO_LONG);
        }
        return flags;
    }
}
