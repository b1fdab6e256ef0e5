package org.nestyear.core.season;

import java.time.LocalDate;
import java.time.MonthDay;
import org.jspecify.annotations.Nullable;

/** When a plant blooms: the keeper's own dates of this season, a sum of warmth, or what its past years say. */
public sealed interface BloomDates {
    /**
     * The keeper's own first and last day of bloom, in this season; a date after today is a forecast.
     */
    record Dated(LocalDate first, LocalDate last) implements BloomDates {
        public Dated {
            if (last.isBefore(first)) {
                throw new IllegalArgumentException("bloom ends on " + last + ", before it begins on " + first);
            }
        }
    }

    /**
     * The middle of bloom falls on the day when the degree-days since {@code start} reach a sum.
     *
     * @param start first day counted
     * @param baseC base temperature, °C
     * @param degreeDays sum at the <em>middle</em> of bloom, °C·d, above 0
     * @param daysOpen days from first to last bloom, at least 1
     */
    record ThermalTime(MonthDay start, double baseC, double degreeDays, int daysOpen) implements BloomDates {
        public ThermalTime {
            if (!(degreeDays > 0) || daysOpen < 1) {
                throw new IllegalArgumentException(
                        "a bloom sum needs degree-days above 0 and at least one day open, got " + degreeDays + " and "
                                + daysOpen);
            }
        }
    }
    /**
     * Worked out from the keeper's own dates of past years, by whichever model does best on them.
     *
     * @param daysOpen days from first to last bloom, at least 1; null for the usual length
     */
    record FromPastDates(@Nullable Integer daysOpen) implements BloomDates {
        public FromPastDates {
            if (daysOpen != null && daysOpen < 1) {
                throw new IllegalArgumentException("bloom needs at least one day open, got " + daysOpen);
            }
        }
    }
}
