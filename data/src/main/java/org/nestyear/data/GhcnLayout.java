package org.nestyear.data;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The three ways in which NOAA hands out GHCN-Daily. */
enum GhcnLayout {
    /** One line an element and month, 269 characters. */
    FIXED_WIDTH(Pattern.compile("[A-Z]{2}[A-Z0-9_-]{9}\\d{6}[A-Z][A-Z0-9]{3}[ \\-\\d]{5}.*")),
    /** One line a value: station, day, element, tenths, three marks, time. */
    BY_YEAR(Pattern.compile("\"?[A-Z]{2}[A-Z0-9_-]{9}\"?,\"?\\d{8}\"?,\"?[A-Z][A-Z0-9]{3}\"?,.*")),
    /** One line a day, a pair of columns an element. */
    BY_STATION(Pattern.compile("\"?STATION\"?,\"?DATE\"?,.*_ATTRIBUTES.*"));

    private static final String BY_YEAR_HEADING = "ID,DATE,ELEMENT,";

    private final Pattern firstLine;

    GhcnLayout(Pattern firstLine) {
        this.firstLine = firstLine;
    }

    /** The layout of a text, or null for any other table. A name that ends in {@code .dly} promises the first. */
    static @Nullable GhcnLayout of(SourceText source) {
        if (source.name().toLowerCase(Locale.ROOT).endsWith(".dly")) {
            return FIXED_WIDTH;
        }
        String first = firstLine(source.lines());
        if (hasHeading(first)) {
            return BY_YEAR;
        }
        for (GhcnLayout layout : values()) {
            if (layout.firstLine.matcher(first).matches()) {
                return layout;
            }
        }
        return null;
    }

    /** True for the heading that newer files of one value a line begin with. */
    static boolean hasHeading(String line) {
        return line.replace("\"", "").startsWith(BY_YEAR_HEADING);
    }

    private static String firstLine(List<String> lines) {
        return lines.stream().filter(line -> !line.isBlank()).findFirst().orElse("");
    }
}
