package org.nestyear.data;

import java.util.Locale;
import org.tomlj.TomlParseError;

/** Puts what the TOML parser says into a keeper's words. */
final class SeasonSyntax {
    private SeasonSyntax() {}

    static DataFault fault(TomlParseError error, SourceText source) {
        Position at = new Position(
                source.name(), error.position().line(), error.position().column());
        String line = source.line(at.line());
        String message = String.valueOf(error.getMessage());
        int expects = message.indexOf(", expected ");
        if (expects < 0) {
            return new DataFault(
                    FaultCode.SEASON_SYNTAX,
                    at,
                    lowerFirst(message),
                    "each table and key once, and dates that exist",
                    "");
        }
        String found = lowerFirst(message.substring(0, expects));
        return new DataFault(
                FaultCode.SEASON_SYNTAX,
                at,
                found.startsWith("unexpected ") ? "there is an " + found : found,
                expected(message.substring(expects + ", expected ".length())),
                advice(line));
    }

    private static String expected(String parsers) {
        if (parsers.startsWith("', ")) {
            return "a text in quotation marks, a number, true or false, a date, or a list";
        }
        if (parsers.startsWith("a newline")) {
            return "the end of the line";
        }
        if (parsers.startsWith("a-z")) {
            return "a key, or a table such as [site]";
        }
        return parsers;
    }

    private static String advice(String line) {
        int equals = line.indexOf('=');
        String value = equals < 0 ? "" : line.substring(equals + 1).strip();
        if (value.matches("-?\\d+,\\d+.*")) {
            return "write the number with a point, not a comma";
        }
        if (value.matches("\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}.*")) {
            return "write the date year first, such as 2015-04-20";
        }
        if (value.matches("(?i)(true|false|yes|no)\\b.*")) {
            return "write true or false in small letters";
        }
        if (value.matches("\\p{L}.*")) {
            return String.format(Locale.ROOT, "words need quotation marks: \"%s\"", value.replaceAll("\\s*#.*", ""));
        }
        return "";
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
