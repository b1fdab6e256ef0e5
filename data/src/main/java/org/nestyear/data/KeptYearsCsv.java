package org.nestyear.data;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Reads a keeper's years: the columns {@code year} and {@code females_out}, and where known {@code daughters},
 * {@code cocoons}, {@code cells}, {@code bought}, {@code given}, {@code joined}; in any order of columns and years. Other
 * columns are not looked at.
 */
public final class KeptYearsCsv {
    private static final String YEAR = "year";
    private static final String OUT = "females_out";
    private static final String EXPECTED = "the columns \"year\" and \"females_out\"";
    private static final double MOST = 1e7;

    private KeptYearsCsv() {}

    /**
     * The years, one at least.
     *
     * @throws DataFault the first thing that is wrong with the table
     */
    public static SortedMap<Integer, KeptYear> read(TextSource file) {
        KeptTable table = KeptTable.read(file, FaultCode.YEARS_SYNTAX);
        if (!table.names().isEmpty()
                && !(table.names().contains(YEAR) && table.names().contains(OUT))) {
            throw table.headerFault(FaultCode.YEARS_COLUMN, EXPECTED, "");
        }
        SortedMap<Integer, KeptYear> years = new TreeMap<>();
        for (KeptTable.Row row : table.rows()) {
            String text = row.text(YEAR);
            if (!text.matches("\\d{4}")) {
                throw row.fault(FaultCode.YEARS_NUMBER, YEAR, quoted(text), "a year such as 2015", "");
            }
            KeptYear kept = year(row, Integer.parseInt(text));
            if (years.putIfAbsent(kept.year(), kept) != null) {
                throw row.fault(
                        FaultCode.YEARS_TWICE, YEAR, "the year " + text + " stands there twice", "a line a year", "");
            }
        }
        if (years.isEmpty()) {
            throw table.emptyFault("the table holds no year", EXPECTED + " and then a line a year");
        }
        return Collections.unmodifiableSortedMap(years);
    }

    private static KeptYear year(KeptTable.Row row, int year) {
        Double out = count(row, OUT);
        if (out == null) {
            throw row.fault(
                    FaultCode.YEARS_NUMBER,
                    OUT,
                    "the females put out in " + year + " are missing",
                    "a whole number",
                    "");
        }
        Double daughters = count(row, "daughters");
        Double cocoons = count(row, "cocoons");
        if (daughters != null && cocoons != null && daughters > cocoons) {
            throw row.fault(
                    FaultCode.YEARS_NUMBER,
                    "daughters",
                    "there are more daughters than cocoons in " + year,
                    "cocoons of both sexes",
                    "");
        }
        double bought = orNone(row, "bought");
        if (bought > out) {
            throw row.fault(
                    FaultCode.YEARS_NUMBER,
                    "bought",
                    "more females were bought than put out in " + year,
                    "females bought before that spring, which are among those put out",
                    "");
        }
        return new KeptYear(
                year,
                out,
                daughters,
                cocoons,
                count(row, "cells"),
                bought,
                orNone(row, "given"),
                orNone(row, "joined"));
    }

    private static double orNone(KeptTable.Row row, String column) {
        Double count = count(row, column);
        return count == null ? 0 : count;
    }

    private static @Nullable Double count(KeptTable.Row row, String column) {
        String text = row.text(column);
        if (Cells.isMissing(text)) {
            return null;
        }
        double number = row.number(column);
        if (!(number >= 0 && number <= MOST) || number != Math.rint(number)) {
            throw row.fault(FaultCode.YEARS_NUMBER, column, quoted(text), "a whole number from 0 to 10,000,000", "");
        }
        return number;
    }

    private static String quoted(String text) {
        return "\"" + text + "\" stands in the table of years";
    }
}
