package org.nestyear.app.cli;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.count.Tally;

/** Reads shares, tallies and quantities with their units; each refusal names the option, what stands there and what may. */
final class Amounts {
    private static final Pattern QUANTITY =
            Pattern.compile("(\\d+\\.?\\d*|\\.\\d+|\\d+/0*[1-9]\\d*)\\s*([\\p{L}µ²0-9]*)");
    private static final Pattern TALLY = Pattern.compile("(\\d{1,9})/(\\d{1,9})");
    private static final Pattern SIDES = Pattern.compile("(\\d+\\.?\\d*)\\s*[x×]\\s*(\\d+\\.?\\d*)\\s*(mm|cm|m|in|ft)");
    private static final double SQUARE_MM_PER_M2 = 1e6;
    /** Millilitres by unit; US customary measures by definition of the inch, 231 cubic inches a gallon. */
    private static final Map<String, Double> MILLILITRES = units(
            "ml",
            1.0,
            "cl",
            10.0,
            "dl",
            100.0,
            "l",
            1000.0,
            "tsp",
            4.92892159375,
            "tbsp",
            14.78676478125,
            "floz",
            29.5735295625,
            "cup",
            236.5882365,
            "pint",
            473.176473,
            "pt",
            473.176473,
            "quart",
            946.352946,
            "qt",
            946.352946,
            "gal",
            3785.411784,
            "gallon",
            3785.411784);
    /** Millimetres by unit. */
    private static final Map<String, Double> MILLIMETRES =
            units("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4, "ft", 304.8);
    /** Square metres by unit; the acre is the international one. */
    private static final Map<String, Double> SQUARE_METRES = units(
            "ha",
            10_000.0,
            "acre",
            4046.8564224,
            "acres",
            4046.8564224,
            "ac",
            4046.8564224,
            "m2",
            1.0,
            "m²",
            1.0,
            "ft2",
            0.09290304,
            "ft²",
            0.09290304,
            "cm2",
            0.0001,
            "cm²",
            0.0001);

    private Amounts() {}

    /** A share as 0.05, 5 or 5%; above 0 and below 1. A bare number below 1 is a share, any other per cent. */
    static double share(String option, String text) {
        String expected = "a share above 0 and below 100 %, such as 5%, 5 or 0.05";
        String plain = text.strip().replace("%", "").strip();
        if (!plain.matches("\\d+\\.?\\d*|\\.\\d+")) {
            throw refused(option, text, expected);
        }
        double value = Double.parseDouble(plain);
        double share = text.indexOf('%') >= 0 || value >= 1 ? value / 100 : value;
        if (!(share > 0 && share < 1)) {
            throw refused(option, text, expected);
        }
        return share;
    }

    /** A whole number within its limits. */
    static int whole(String option, String text, int low, int high) {
        String expected = "a whole number from " + grouped(low) + " to " + grouped(high);
        if (!text.strip().matches("\\d{1,9}")) {
            throw refused(option, text, expected);
        }
        int value = Integer.parseInt(text.strip());
        if (value < low || value > high) {
            throw refused(option, text, expected);
        }
        return value;
    }

    /** So many found of so many, as 3/40. */
    static Tally tally(String option, String text) {
        Matcher matcher = TALLY.matcher(text.strip());
        if (!matcher.matches()) {
            throw refused(option, text, "found and looked at with a slash between, such as 3/40");
        }
        return tally(option, text, Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    /** So many found of so many. */
    static Tally tally(String option, String text, int found, int of) {
        if (of == 0) {
            throw refused(option, text, "one or more looked at");
        }
        if (found > of) {
            throw Refusal.usage(
                    option + " is \"" + text + "\"; expected no more found than looked at.",
                    "Maybe the two numbers are swapped.");
        }
        return new Tally(found, of);
    }

    /** A volume such as 0.25cup, 60ml or 1gal, in ml. */
    static double millilitres(String option, String text) {
        return quantity(
                option, text, MILLILITRES, "a volume with its unit, such as 60ml, 2l, 0.25cup, 1tbsp, 2tsp or 1gal");
    }

    /** A length such as 10cm or 4in, in mm; a bare number is in mm. */
    static double millimetres(String option, String text) {
        boolean bare = text.strip().matches("\\d+\\.?\\d*|\\.\\d+");
        return quantity(
                option,
                text,
                bare ? text.strip() + "mm" : text,
                MILLIMETRES,
                "a length with its unit, such as 100mm, 10cm or 4in");
    }

    /** An area such as 0.5ha, 2acre or 300m2, in m². */
    static double squareMetres(String option, String text) {
        return quantity(option, text, SQUARE_METRES, "an area with its unit, such as 0.5ha, 2acre, 300m2 or 1200cm2");
    }

    /** An area as {@link #squareMetres}, or two sides such as 30x40cm, in m². */
    static double rectangleOrArea(String option, String text) {
        Matcher sides = SIDES.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!sides.matches()) {
            return squareMetres(option, text);
        }
        double first = millimetres(option, sides.group(1) + sides.group(3));
        double second = millimetres(option, sides.group(2) + sides.group(3));
        return first * second / SQUARE_MM_PER_M2;
    }

    private static double quantity(String option, String text, Map<String, Double> units, String expected) {
        return quantity(option, text, text, units, expected);
    }

    private static double quantity(
            String option, String text, String withUnit, Map<String, Double> units, String expected) {
        Matcher matcher = QUANTITY.matcher(withUnit.strip().toLowerCase(Locale.ROOT));
        Double unit = matcher.matches() ? units.get(singular(matcher.group(2), units)) : null;
        if (unit == null) {
            throw Refusal.usage(
                    option + " is \"" + text + "\"; expected " + expected + ".",
                    text.indexOf(',') >= 0 ? "Maybe write the number with a point, not a comma." : "");
        }
        double value = number(matcher.group(1)) * unit;
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw Refusal.usage(option + " is \"" + text + "\"; expected more than nothing.", "");
        }
        return value;
    }

    private static String singular(String unit, Map<String, Double> units) {
        boolean plural = unit.endsWith("s") && !units.containsKey(unit);
        return plural ? unit.substring(0, unit.length() - 1) : unit;
    }

    private static double number(String text) {
        int slash = text.indexOf('/');
        return slash < 0
                ? Double.parseDouble(text)
                : Double.parseDouble(text.substring(0, slash)) / Double.parseDouble(text.substring(slash + 1));
    }

    private static String grouped(int number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    private static Refusal refused(String option, String text, String expected) {
        return Refusal.usage(option + " is \"" + text + "\"; expected " + expected + ".", "");
    }

    private static Map<String, Double> units(Object... pairs) {
        Map<String, Double> units = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            units.put((String) pairs[i], (Double) pairs[i + 1]);
        }
        return Map.copyOf(units);
    }
}
