package org.nestyear.core.leafcutter;

import java.util.Arrays;
import java.util.List;

/** Times of one event in several summers, drawn together to a band. */
public final class YearsOfDates {
    /** A numerical choice: the band holds eight years of ten. */
    private static final double TAIL = 0.1;

    private YearsOfDates() {}

    /**
     * The band: the early bound of the early years and the late bound of the late ones, a tenth of the years outside on
     * either side. Of few years none is left outside.
     *
     * @param years at least one
     */
    public static Span band(List<Span> years) {
        double[] early = years.stream().mapToDouble(Span::earlyDays).sorted().toArray();
        double[] late = years.stream().mapToDouble(Span::lateDays).sorted().toArray();
        if (early.length == 0) {
            throw new IllegalArgumentException("a band needs a year");
        }
        int outside = (int) Math.floor(TAIL * early.length);
        return new Span(early[outside], late[late.length - 1 - outside]);
    }

    /** In how many of the years the event comes by so many days, even by the later bound. */
    public static int inTime(List<Span> years, double days) {
        double[] late = years.stream().mapToDouble(Span::lateDays).toArray();
        return (int) Arrays.stream(late).filter(value -> value <= days).count();
    }
}
