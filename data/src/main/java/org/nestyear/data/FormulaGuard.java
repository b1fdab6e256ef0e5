package org.nestyear.data;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a cell for a formula: text that begins like one gets an apostrophe before it, which
 * reading takes off again. Plain numbers stay as they are. Source: OWASP, "CSV Injection" (the characters that start a
 * formula; from memory).
 */
final class FormulaGuard {
    private static final String STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d*)?([eE][+-]?\\d+)?");

    private FormulaGuard() {}

    /** The cell as it may stand in a file. */
    static String put(String text) {
        if (text.isEmpty()) {
            return text;
        }
        boolean formula =
                STARTS.indexOf(text.charAt(0)) >= 0 && !NUMBER.matcher(text).matches();
        return formula || isGuarded(text) ? "'" + text : text;
    }

    /** The text that {@link #put} was given. */
    static String take(String cell) {
        return isGuarded(cell) ? cell.substring(1) : cell;
    }

    private static boolean isGuarded(String cell) {
        return cell.length() > 1
                && cell.charAt(0) == '\''
                && (STARTS.indexOf(cell.charAt(1)) >= 0 || cell.charAt(1) == '\'');
    }
}
