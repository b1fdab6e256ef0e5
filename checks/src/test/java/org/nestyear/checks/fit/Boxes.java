package org.nestyear.checks.fit;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.nestyear.checks.SharedData;

/**
 * How much more the bees of different boxes, racks or home places differ than chance makes them: Pearson's χ² for the
 * same days in every one of them, over its expectation, which is exact however few the bees are. One where bees are
 * independent. Nothing of the clock is in it.
 */
final class Boxes {
    /**
     * A way to part the bees.
     *
     * @param parts over all kinds of bees that were compared, each kind within itself
     * @param dispersion χ² over its expectation
     */
    record Between(int parts, double dispersion) {}

    private Boxes() {}

    /** Boxes of a site, from the counts at each check, each site and sex within itself. */
    static Between boxesOfTheField() {
        Map<String, Map<String, Map<String, Double>>> kinds = new TreeMap<>();
        for (String site : FitData.SITES) {
            for (NamedCsvRecord row : SharedData.rows("osmia/field-2015-bicornis/Hatching_" + site + ".csv")) {
                for (String column : List.of("female.num", "male.num")) {
                    count(
                            kinds,
                            site + column,
                            row.getField("treatment"),
                            row.getField("Date"),
                            SharedData.number(row, column));
                }
            }
        }
        return between(kinds);
    }

    /** The winters' bees by a column of their table, each winter, species and sex within itself. */
    static Between winters(String column) {
        Map<String, Map<String, Map<String, Double>>> kinds = new TreeMap<>();
        for (NamedCsvRecord row : FitData.wintersBees()) {
            Function<String, String> field = row::getField;
            String kind = field.apply("temperature") + field.apply("species") + field.apply("sex");
            count(kinds, kind, field.apply(column), field.apply("julian_emergence_date"), 1);
        }
        return between(kinds);
    }

    private static void count(
            Map<String, Map<String, Map<String, Double>>> kinds, String kind, String part, String day, double bees) {
        kinds.computeIfAbsent(kind, k -> new TreeMap<>())
                .computeIfAbsent(part, p -> new TreeMap<>())
                .merge(day, bees, Double::sum);
    }

    private static Between between(Map<String, Map<String, Map<String, Double>>> kinds) {
        int parts = 0;
        double chi = 0;
        double expectation = 0;
        for (Map<String, Map<String, Double>> kind : kinds.values()) {
            Map<String, Double> byDay = new TreeMap<>();
            kind.values().forEach(part -> part.forEach((day, bees) -> byDay.merge(day, bees, Double::sum)));
            byDay.values().removeIf(bees -> bees == 0);
            double all = sum(byDay);
            for (Map<String, Double> part : kind.values()) {
                double share = sum(part) / all;
                for (Map.Entry<String, Double> day : byDay.entrySet()) {
                    double expected = share * day.getValue();
                    double more = part.getOrDefault(day.getKey(), 0.0) - expected;
                    chi += more * more / expected;
                }
            }
            parts += kind.size();
            expectation += (kind.size() - 1) * (byDay.size() - 1) * all / (all - 1);
        }
        return new Between(parts, chi / expectation);
    }

    private static double sum(Map<String, Double> counts) {
        return counts.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
