package org.nestyear.data;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** One table of a season file: typed access to its keys, each fault with its place. */
final class SeasonTable {
    private final SourceText source;
    private final TomlTable table;
    private final String name;
    private final Position start;

    SeasonTable(SourceText source, TomlTable table, String name, Position start) {
        this.source = source;
        this.table = table;
        this.name = name;
        this.start = start;
    }

    /** Where the table begins. */
    Position start() {
        return start;
    }

    boolean has(String key) {
        return table.get(List.of(key)) != null;
    }

    /** Keys this table should not have, each as a fault. */
    List<DataFault> unknownKeys() {
        List<DataFault> faults = new ArrayList<>();
        List<String> known = SeasonKeys.TABLES.getOrDefault(name, List.of());
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                faults.add(SeasonKeys.unknown(name, key, keyPosition(key)));
            }
        }
        return faults;
    }

    /** A text that is not blank. */
    String text(String key) {
        Object value = required(key, "a text in quotation marks");
        if (!(value instanceof String text)) {
            throw wrongType(key, value, "a text in quotation marks");
        }
        if (text.isBlank()) {
            throw new DataFault(
                    FaultCode.SEASON_TYPE, valuePosition(key), key + " is empty", "a text in quotation marks", "");
        }
        return text;
    }

    /** A number within its limits. */
    double number(String key, double low, double high, String unit) {
        String expected = "a number from " + plain(low) + " to " + plain(high) + " " + unit;
        Object value = required(key, expected);
        if (!(value instanceof Number number)) {
            throw wrongType(key, value, expected);
        }
        double given = number.doubleValue();
        if (!(given >= low && given <= high)) {
            throw outside(key, given, expected);
        }
        return given;
    }

    /** A number within its limits, or null when the key is not there. */
    @Nullable
    Double numberOrNull(String key, double low, double high, String unit) {
        return has(key) ? number(key, low, high, unit) : null;
    }

    /** A whole number within its limits. */
    int whole(String key, int low, int high) {
        String expected = "a whole number from " + low + " to " + high;
        Object value = required(key, expected);
        if (!(value instanceof Long whole)) {
            throw wrongType(key, value, expected);
        }
        if (whole < low || whole > high) {
            throw outside(key, whole, expected);
        }
        return whole.intValue();
    }

    boolean flag(String key) {
        Object value = required(key, "true or false");
        if (!(value instanceof Boolean flag)) {
            throw wrongType(key, value, "true or false");
        }
        return flag;
    }

    LocalDate date(String key) {
        Object value = required(key, "a date such as 2015-04-20");
        if (!(value instanceof LocalDate date)) {
            throw wrongType(key, value, "a date such as 2015-04-20, without quotation marks");
        }
        return date;
    }

    /** One of the words of an enum. */
    <E extends Enum<E>> E word(String key, E[] values, Function<E, String> word) {
        List<String> known = new ArrayList<>();
        for (E value : values) {
            known.add(word.apply(value));
        }
        String expected = "one of " + String.join(", ", known);
        if (!has(key)) {
            throw missing(key, expected);
        }
        String given = text(key);
        for (E value : values) {
            if (word.apply(value).equals(given)) {
                return value;
            }
        }
        throw wrongWord(key, given, expected, known);
    }

    /** The fault of a word that is not among the known ones. */
    DataFault wrongWord(String key, String given, String expected, List<String> known) {
        String nearest = NearestWord.find(given, known);
        return new DataFault(
                FaultCode.SEASON_WORD,
                valuePosition(key),
                key + " is \"" + given + "\"",
                expected,
                nearest == null ? "" : "\"" + nearest + "\" was meant");
    }

    TomlArray list(String key, String expected) {
        Object value = required(key, expected);
        if (!(value instanceof TomlArray list)) {
            throw wrongType(key, value, expected);
        }
        return list;
    }

    DataFault missing(String key, String expected) {
        return new DataFault(
                FaultCode.SEASON_MISSING,
                start,
                name.isEmpty() ? "\"" + key + "\" is missing" : SeasonKeys.written(name) + " has no \"" + key + "\"",
                expected,
                "");
    }

    DataFault wrongType(String key, Object value, String expected) {
        String advice = "";
        if (value instanceof String text && Cells.date(text) != null) {
            advice = "take the quotation marks away";
        }
        return new DataFault(
                FaultCode.SEASON_TYPE, valuePosition(key), key + " is " + described(value), expected, advice);
    }

    /** Where the key stands. */
    Position keyPosition(String key) {
        TomlPosition at = table.inputPositionOf(List.of(key));
        return at == null ? start : new Position(source.name(), at.line(), at.column());
    }

    /** Where the value of the key stands: behind the equals sign of its line. */
    Position valuePosition(String key) {
        Position at = keyPosition(key);
        String line = source.line(at.line());
        int equals = line.indexOf('=', Math.max(0, at.column() - 1));
        if (equals < 0) {
            return at;
        }
        int value = equals + 1;
        while (value < line.length() && Character.isWhitespace(line.charAt(value))) {
            value++;
        }
        return value < line.length() ? new Position(source.name(), at.line(), value + 1) : at;
    }

    /** Where an element of a list stands. */
    Position elementPosition(TomlArray list, int index) {
        TomlPosition at = list.inputPositionOf(index);
        return new Position(source.name(), at.line(), at.column());
    }

    static String described(Object value) {
        if (value instanceof String text) {
            return "the text \"" + text + "\"";
        }
        if (value instanceof Number number) {
            return "the number " + number;
        }
        if (value instanceof Boolean) {
            return String.valueOf(value);
        }
        if (value instanceof LocalDate) {
            return "the date " + value;
        }
        if (value instanceof TomlArray) {
            return "a list";
        }
        return value instanceof TomlTable ? "a table" : "a time of day";
    }

    private Object required(String key, String expected) {
        Object value = table.get(List.of(key));
        if (value == null) {
            throw missing(key, expected);
        }
        return value;
    }

    private DataFault outside(String key, double given, String expected) {
        return new DataFault(
                FaultCode.SEASON_RANGE,
                valuePosition(key),
                key + " is " + plain(given),
                expected,
                otherUnit(key, given));
    }

    private static String otherUnit(String key, double given) {
        if (key.endsWith("_c") && given > 0 && given <= 130) {
            return String.format(Locale.ROOT, "this is Fahrenheit: write %.1f", (given - 32) * 5 / 9);
        }
        if (key.equals("hole_width_mm") && given > 0 && given < 1) {
            return String.format(Locale.ROOT, "this is inches: write %.1f", given * 25.4);
        }
        if (key.equals("latitude") && Math.abs(given) <= 180) {
            return "latitude and longitude are swapped";
        }
        return "";
    }

    private static String plain(double value) {
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
