package org.nestyear.data;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.nestyear.data.CocoonSizes.Measure;

/**
 * Reads sizes of cocoons: a column {@code weight_mg} or {@code size_mm} with one row a cocoon, or the columns
 * {@code sieve_mm} and {@code count} with one row a sieve. Other columns are not looked at; a row without a size is passed
 * over.
 */
public final class CocoonSizesCsv {
    private static final String COUNT = "count";
    private static final String EXPECTED =
            "a column \"weight_mg\" or \"size_mm\", or the columns \"sieve_mm\" and \"count\"";
    private static final double LIGHTEST_MG = 5;
    private static final double HEAVIEST_MG = 1000;
    private static final double NARROWEST_MM = 1;
    private static final double WIDEST_MM = 30;
    private static final double MOST = 1e6;

    private CocoonSizesCsv() {}

    /**
     * The sizes, one at least.
     *
     * @throws DataFault the first thing that is wrong with the table
     */
    public static CocoonSizes read(TextSource file) {
        KeptTable table = KeptTable.read(file, FaultCode.SIZES_SYNTAX);
        if (table.names().isEmpty()) {
            throw table.emptyFault("the table holds nothing", EXPECTED);
        }
        Measure measure = measure(table);
        return measure == Measure.SIEVE ? sieves(table) : measured(table, measure);
    }

    private static Measure measure(KeptTable table) {
        List<Measure> found = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (table.names().contains(measure.column())) {
                found.add(measure);
            }
        }
        boolean countless = found.contains(Measure.SIEVE) && !table.names().contains(COUNT);
        if (found.isEmpty() || countless) {
            throw table.headerFault(FaultCode.SIZES_COLUMN, EXPECTED, "");
        }
        if (found.size() > 1) {
            throw table.headerFault(FaultCode.SIZES_COLUMN, "one of them", "rename the one that is not to be used");
        }
        return found.get(0);
    }

    private static CocoonSizes measured(KeptTable table, Measure measure) {
        List<Double> sizes = new ArrayList<>();
        for (KeptTable.Row row : table.rows()) {
            if (!Cells.isMissing(row.text(measure.column()))) {
                sizes.add(size(row, measure));
            }
        }
        if (sizes.isEmpty()) {
            throw table.emptyFault("the table holds no cocoon", EXPECTED + " and then a line a cocoon");
        }
        return new CocoonSizes(measure, sizes, sizes.stream().map(size -> 1.0).toList());
    }

    private static double size(KeptTable.Row row, Measure measure) {
        String text = row.text(measure.column());
        boolean weight = measure == Measure.WEIGHT;
        double low = weight ? LIGHTEST_MG : NARROWEST_MM;
        double high = weight ? HEAVIEST_MG : WIDEST_MM;
        String expected = weight ? "milligrams from 5 to 1000" : "millimetres from 1 to 30";
        double size = row.number(measure.column());
        if (Double.isNaN(size)) {
            throw row.fault(FaultCode.SIZES_NUMBER, measure.column(), quoted(text), expected, "");
        }
        if (size < low || size > high) {
            String maybe = weight ? "these are grams: write 0.095 g as 95" : "these are inches: 1 inch is 25.4 mm";
            throw row.fault(
                    FaultCode.SIZES_RANGE,
                    measure.column(),
                    quoted(text),
                    expected,
                    size > 0 && size < low ? maybe : "");
        }
        return size;
    }

    private static CocoonSizes sieves(KeptTable table) {
        SortedMap<Double, Double> counts = new TreeMap<>();
        double all = 0;
        for (KeptTable.Row row : table.rows()) {
            String text = row.text(Measure.SIEVE.column());
            if (Cells.isMissing(text)) {
                continue;
            }
            double sieve = row.number(Measure.SIEVE.column()) == 0 ? 0 : size(row, Measure.SIEVE);
            double count = row.number(COUNT);
            if (!(count >= 0 && count <= MOST) || count != Math.rint(count)) {
                throw row.fault(
                        FaultCode.SIZES_NUMBER,
                        COUNT,
                        quoted(row.text(COUNT)),
                        "a whole number from 0 to 1,000,000",
                        "");
            }
            if (counts.putIfAbsent(sieve, count) != null) {
                throw row.fault(
                        FaultCode.SIZES_TWICE,
                        Measure.SIEVE.column(),
                        "the sieve " + text + " stands there twice",
                        "each sieve once",
                        "");
            }
            all += count;
        }
        if (!(all > 0)) {
            throw table.emptyFault("the table holds no cocoon", EXPECTED + " and then a line a sieve");
        }
        return new CocoonSizes(Measure.SIEVE, List.copyOf(counts.keySet()), List.copyOf(counts.values()));
    }

    private static String quoted(String text) {
        return "\"" + text + "\" stands in the table of cocoons";
    }
}
