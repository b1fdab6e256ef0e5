package org.nestyear.app.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;

/** Reads the values of options; each refusal names the option, what stands there and what was expected. */
final class Arguments {
    /** Up to this a bare number that is too high for °C is probably °F. */
    private static final double HOTTEST_F = 130;

    private Arguments() {}

    /** A number within its limits. */
    static double number(String option, String text, double low, double high, String unit) {
        String expected =
                "a number from " + Math.round(low) + " to " + Math.round(high) + (unit.isEmpty() ? "" : " " + unit);
        double value = parsed(text);
        if (!Double.isFinite(value)) {
            throw Refusal.usage(
                    option + " is \"" + text + "\"; expected " + expected + ".",
                    text.indexOf(',') >= 0 ? "Maybe write the number with a point, not a comma." : "");
        }
        return within(option, text, value, low, high, expected);
    }

    /** Degrees north of the equator, south with a minus. */
    static double latitude(String option, String text) {
        return number(option, text, -90, 90, "degrees north");
    }

    /** A year of the calendar. */
    static int year(String option, String text) {
        if (!text.matches("\\d{4}")) {
            throw Refusal.usage(option + " is \"" + text + "\"; expected a year such as 2015.", "");
        }
        return Integer.parseInt(text);
    }

    /** A temperature in °C; with an F behind it, it is converted. */
    static double celsius(String option, String text, double low, double high) {
        String expected =
                "a temperature from " + Math.round(low) + " to " + Math.round(high) + " °C, such as 3, 3C or 37F";
        String last = text.isEmpty() ? "" : text.substring(text.length() - 1).toUpperCase(Locale.ROOT);
        boolean unit = last.equals("C") || last.equals("F");
        double value = parsed(unit ? text.substring(0, text.length() - 1).replace("°", "") : text);
        if (!Double.isFinite(value)) {
            throw Refusal.usage(option + " is \"" + text + "\"; expected " + expected + ".", "");
        }
        if (!unit && value > high && value <= HOTTEST_F) {
            throw Refusal.usage(
                    option + " is " + text + "; expected " + expected + ".",
                    "Maybe this is Fahrenheit: write " + text.strip() + "F.");
        }
        return within(option, text, last.equals("F") ? (value - 32) * 5 / 9 : value, low, high, expected);
    }

    private static double within(String option, String text, double value, double low, double high, String expected) {
        if (value < low || value > high) {
            throw Refusal.usage(option + " is " + text + "; expected " + expected + ".", "");
        }
        return value;
    }

    private static double parsed(String text) {
        try {
            boolean plain = text.strip().matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)");
            return plain ? Double.parseDouble(text.strip()) : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** A date as ISO 8601. */
    static LocalDate date(String option, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw Refusal.usage(option + " is \"" + text + "\"; expected a date such as 2015-04-20.", "");
        }
    }

    /** A moment as ISO 8601 with its offset from UTC. */
    static OffsetDateTime moment(String option, String text) {
        try {
            return OffsetDateTime.parse(text);
        } catch (DateTimeException e) {
            boolean noOffset = text.matches("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2})?");
            throw Refusal.usage(
                    option + " is \"" + text
                            + "\"; expected a date and time with its offset, such as 2015-04-20T12:00:00-04:00.",
                    noOffset ? "Maybe the offset from UTC is missing: add Z for UTC itself." : "");
        }
    }

    /** One of the words of an enum, or null when the option is not given. */
    static <E extends Enum<E>> @Nullable E word(
            String option, @Nullable String text, E[] values, Function<E, String> word) {
        if (text == null) {
            return null;
        }
        List<String> known = new ArrayList<>();
        for (E value : values) {
            if (word.apply(value).equals(text)) {
                return value;
            }
            known.add(word.apply(value));
        }
        throw Refusal.usage(
                option + " is \"" + text + "\"; expected one of " + String.join(", ", known) + ".",
                Spelling.advice(text, known));
    }
}
