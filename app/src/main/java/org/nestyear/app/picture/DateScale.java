package org.nestyear.app.picture;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts days on a line of the picture from left to right.
 *
 * @param from first day, at {@code left}
 * @param to last day, at {@code right}, after {@code from}
 * @param left picture coordinate of {@code from}
 * @param right picture coordinate of {@code to}
 */
public record DateScale(LocalDate from, LocalDate to, double left, double right) {
    public DateScale {
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException("a scale of days must end after it begins, got " + from + " to " + to);
        }
    }

    /** Picture coordinate of a day; days outside the scale fall outside the line. */
    public double at(LocalDate day) {
        return at(day, 0);
    }

    /** True when the day lies on the scale, both ends included. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** The day of the scale nearest to this one. */
    public LocalDate clamp(LocalDate day) {
        if (day.isBefore(from)) {
            return from;
        }
        return day.isAfter(to) ? to : day;
    }

    /** Picture coordinate of the left edge of the stripe that stands for a whole day. */
    public double leftEdge(LocalDate day) {
        return Math.max(left, at(day, -0.5));
    }

    /** Picture coordinate of the right edge of the stripe that stands for a whole day. */
    public double rightEdge(LocalDate day) {
        return Math.min(right, at(day, 0.5));
    }

    /** Firsts of months on the scale, with days 11 and 21 or day 15 between them as long as at most {@code most} result. */
    public List<LocalDate> ticks(int most) {
        int[][] choices = {{1, 6, 11, 16, 21, 26}, {1, 11, 21}, {1, 15}, {1}};
        for (int[] days : choices) {
            List<LocalDate> ticks = ticksOn(days);
            if (ticks.size() <= most) {
                return ticks;
            }
        }
        List<LocalDate> months = ticksOn(new int[] {1});
        int every = (months.size() + most - 1) / most;
        List<LocalDate> ticks = new ArrayList<>();
        for (int i = 0; i < months.size(); i += every) {
            ticks.add(months.get(i));
        }
        return ticks;
    }

    private List<LocalDate> ticksOn(int[] daysOfMonth) {
        List<LocalDate> ticks = new ArrayList<>();
        for (LocalDate month = from.withDayOfMonth(1); !month.isAfter(to); month = month.plusMonths(1)) {
            for (int day : daysOfMonth) {
                LocalDate tick = month.withDayOfMonth(day);
                if (holds(tick)) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }

    private double at(LocalDate day, double offset) {
        double length = ChronoUnit.DAYS.between(from, to);
        return left + (ChronoUnit.DAYS.between(from, day) + offset) / length * (right - left);
    }
}
