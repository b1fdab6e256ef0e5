package org.nestyear.app.service;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;

/**
 * Puts values into English words, in the keeper's units. Uses no locale of the machine: names of days and months and the
 * marks in numbers are its own.
 */
public final class Wording {
    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
    private static final List<String> MONTHS = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    private static final double LEAST_SHARE_SHOWN = 0.005;
    private static final double INCH_MM = 25.4;
    private static final double FOOT_M = 0.3048;
    /** US liquid quart, by definition 57.75 cubic inches. */
    private static final double QUART_L = 0.946352946;
    /** Widths up to this are read off drill bits, in sixteenths of an inch. */
    private static final double WIDEST_BIT_MM = 25.4;
    /** Below this, as for rain, a sixteenth would say nothing. */
    private static final double NARROWEST_BIT_MM = 3;

    private static final int SIXTEENTHS = 16;

    private final UnitSystem units;
    private final int year;

    /**
     * @param year the year of the plan, which is left out of dates
     */
    public Wording(UnitSystem units, int year) {
        this.units = units;
        this.year = year;
    }

    /** A sentence with its values in words. */
    public String phrase(Phrase phrase) {
        return fill(phrase, -1);
    }

    /** The headline: as {@link #phrase}, with the year behind the last of its dates. */
    public String headline(Phrase phrase) {
        int last = -1;
        for (int i = 0; i < phrase.arguments().size(); i++) {
            if (phrase.arguments().get(i) instanceof LocalDate) {
                last = i;
            }
        }
        return fill(phrase, last);
    }

    private String fill(Phrase phrase, int withYear) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (int i = 0; i < phrase.arguments().size(); i++) {
            int slot = phrase.pattern().indexOf("{}", from);
            text.append(phrase.pattern(), from, slot)
                    .append(argument(phrase.arguments().get(i), i == withYear));
            from = slot + 2;
        }
        return text.append(phrase.pattern().substring(from)).toString();
    }

    private String argument(Object argument, boolean withYear) {
        if (argument instanceof Quantity quantity) {
            return quantity(quantity);
        }
        if (argument instanceof LocalDate date) {
            return withYear ? dateWithYear(date) : date(date);
        }
        return argument instanceof Phrase nested ? phrase(nested) : argument.toString();
    }

    /** A day as {@code Thu 23 April}, with its year only when that is not the plan's. */
    public String date(LocalDate date) {
        return date.getYear() == year ? dayAndMonth(date) : dateWithYear(date);
    }

    /** A day as {@code Thu 23 April 2015}. */
    public String dateWithYear(LocalDate date) {
        return dayAndMonth(date) + " " + date.getYear();
    }

    /** A run of days, both ends included: {@code Thu 23 to Sun 26 April}; one day alone stands alone. */
    public String range(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return date(from);
        }
        boolean sameMonth = from.getMonth() == to.getMonth() && from.getYear() == to.getYear();
        String start = sameMonth ? weekday(from) + " " + from.getDayOfMonth() : date(from);
        return start + " to " + date(to);
    }

    private static String dayAndMonth(LocalDate date) {
        return weekday(date) + " " + date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1);
    }

    private static String weekday(LocalDate date) {
        return DAYS.get(date.getDayOfWeek().getValue() - 1);
    }

    /** A number with its unit. */
    public String quantity(Quantity quantity) {
        double value = quantity.value();
        int decimals = quantity.decimals();
        boolean us = units == UnitSystem.US;
        return switch (quantity.unit()) {
            case CELSIUS -> us ? number(value * 9 / 5 + 32, decimals) + " °F" : number(value, decimals) + " °C";
            case CELSIUS_DIFFERENCE -> us ? number(value * 9 / 5, decimals) + " °F" : number(value, decimals) + " °C";
            case MILLIMETRE -> us ? inches(value) : number(value, decimals) + " mm";
            case METRE -> us ? number(value / FOOT_M, decimals) + " ft" : number(value, decimals) + " m";
            case LITRE -> us ? quarts(value, decimals) : number(value, decimals) + " l";
            case DAY -> counted(value, decimals, "day");
            case HOUR -> counted(value, decimals, "hour");
            case DEGREE_DAY -> degrees(value, decimals) + "-days";
            case DEGREE_HOUR -> degrees(value, decimals) + "-hours";
            case COUNT, NUMBER -> number(value, decimals);
            case SHARE -> share(value, decimals);
        };
    }

    private String degrees(double celsius, int decimals) {
        return units == UnitSystem.US ? number(celsius * 9 / 5, decimals) + " °F" : number(celsius, decimals) + " °C";
    }

    private static String inches(double millimetres) {
        if (millimetres < NARROWEST_BIT_MM) {
            return number(millimetres / INCH_MM, 2) + " in";
        }
        if (millimetres > WIDEST_BIT_MM) {
            return number(millimetres / INCH_MM, 1).replace(".0", "") + " in";
        }
        int parts = (int) Math.round(millimetres / INCH_MM * SIXTEENTHS);
        int whole = SIXTEENTHS;
        while (parts % 2 == 0 && whole > 1) {
            parts /= 2;
            whole /= 2;
        }
        return whole == 1 ? parts + " in" : parts + "/" + whole + " in";
    }

    private static String quarts(double litres, int decimals) {
        double quarts = litres / QUART_L;
        String text = number(quarts, Math.max(1, decimals));
        return text + (text.equals("1.0") ? " quart" : " quarts");
    }

    private static String counted(double value, int decimals, String unit) {
        String text = number(value, decimals);
        return text + " " + unit + (text.equals("1") ? "" : "s");
    }

    /** A share of one as per cent; never 0 or 100 % for what is only close to it. */
    public static String share(double share, int decimals) {
        boolean whole = decimals == 0;
        if (whole && share > 0 && share < LEAST_SHARE_SHOWN) {
            return "under 1 %";
        }
        if (whole && share < 1 && share > 1 - LEAST_SHARE_SHOWN) {
            return "over 99 %";
        }
        return number(share * 100, decimals) + " %";
    }

    /** A number with a point and, from a thousand on, commas; halves are rounded away from zero. */
    public static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        StringBuilder text = new StringBuilder(digits);
        for (int i = (point < 0 ? digits.length() : point) - 3; i > 0; i -= 3) {
            text.insert(i, ',');
        }
        return rounded.signum() < 0 ? "−" + text : text.toString();
    }
}
