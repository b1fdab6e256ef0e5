package org.nestyear.data;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the text of one table cell: a date, a number, or the mark of a value that was not measured. */
final class Cells {
    private static final Set<String> NOT_MEASURED = Set.of("", "na", "nan", "null", "m", "-", "-9999", "-9999.0");

    private Cells() {}

    /** True for an empty cell and for the usual marks of a value that was not measured. */
    static boolean isMissing(String cell) {
        return NOT_MEASURED.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    /** A day written year first, {@code 2015-04-20}, {@code 2015/04/20} or {@code 20150420}; null for all else. */
    static @Nullable LocalDate date(String cell) {
        String text = cell.strip();
        if (text.length() > 10 && (text.charAt(10) == 'T' || text.charAt(10) == ' ') && text.startsWith("00:00", 11)) {
            text = text.substring(0, 10);
        }
        String digits;
        if (text.length() == 8) {
            digits = text;
        } else if (text.length() == 10 && text.charAt(4) == text.charAt(7) && "-/".indexOf(text.charAt(4)) >= 0) {
            digits = text.substring(0, 4) + text.substring(5, 7) + text.substring(8);
        } else {
            return null;
        }
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) < '0' || digits.charAt(i) > '9') {
                return null;
            }
        }
        try {
            return LocalDate.of(
                    Integer.parseInt(digits, 0, 4, 10),
                    Integer.parseInt(digits, 4, 6, 10),
                    Integer.parseInt(digits, 6, 8, 10));
        } catch (DateTimeException e) {
            return null;
        }
    }

    /** A plain decimal number, NaN when the text is not one. */
    static double number(String cell, char decimalMark) {
        String text = cell.strip().replace('\u2212', '-').replace(decimalMark, '.');
        if (text.isEmpty()) {
            return Double.NaN;
        }
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789.+-eE".indexOf(text.charAt(i)) < 0) {
                return Double.NaN;
            }
        }
        try {
            double value = Double.parseDouble(text);
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
