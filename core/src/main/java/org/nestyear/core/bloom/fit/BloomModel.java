package org.nestyear.core.bloom.fit;

import java.util.OptionalDouble;

/** Says on which day a plant blooms in a given year's weather. */
public sealed interface BloomModel permits MeanDate, ThermalTimeModel, StandardDays, ChillThenHeat, SpringIndexDate {
    /** Its kind. */
    BloomKind kind();

    /**
     * The day of bloom as a number, 1 for midwinter's day 1, with its part of a day.
     *
     * @return empty when the weather does not bring it, or does not reach back far enough
     */
    OptionalDouble day(YearCourse course);
}
