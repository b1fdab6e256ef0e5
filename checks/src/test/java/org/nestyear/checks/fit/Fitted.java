package org.nestyear.checks.fit;

import java.util.List;
import java.util.Locale;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Sex;
import org.nestyear.data.CatalogueFiles;

/**
 * The numbers that are fitted together. A vector of them, in this order and in the catalogue's units, is what the other
 * classes of this package call {@code values}.
 */
enum Fitted {
    SLOPE("readiness slope", "Osmia bicornis", "readiness_slope", 0.005),
    NEED_BICORNIS_F("readiness need, O. bicornis females", "Osmia bicornis", "readiness_need_f", 4),
    NEED_BICORNIS_M("readiness need, O. bicornis males", "Osmia bicornis", "readiness_need_m", 4),
    NEED_CORNUTA_F("readiness need, O. cornuta females", "Osmia cornuta", "readiness_need_f", 4),
    NEED_CORNUTA_M("readiness need, O. cornuta males", "Osmia cornuta", "readiness_need_m", 4),
    SPREAD_F("readiness spread, females", "Osmia bicornis", "readiness_spread_f", 0.015),
    SPREAD_M("readiness spread, males", "Osmia bicornis", "readiness_spread_m", 0.015),
    BASE_F("gate base, O. bicornis females", "Osmia bicornis", "gate_base_f_c", 0.7),
    BASE_M("gate base, O. bicornis males", "Osmia bicornis", "gate_base_m_c", 0.7),
    /** How far the base of O. cornuta lies below that of O. bicornis; no row of its own. */
    OFFSET("gate base, O. cornuta below O. bicornis", "", "", 0.5),
    WARMTH_F("warmth need, females", "Osmia bicornis", "gate_need_f", 30),
    WARMTH_M("warmth need, males", "Osmia bicornis", "gate_need_m", 12),
    WARMTH_SPREAD_F("warmth spread, females", "Osmia bicornis", "gate_spread_f", 0.1),
    WARMTH_SPREAD_M("warmth spread, males", "Osmia bicornis", "gate_spread_m", 0.1),
    /** Readiness of the field's cocoons when placed, days at 4 °C; their wintering is not published. No row of its own. */
    FIELD_READINESS("readiness of the field's cocoons when placed", "", "", 5);

    private static final String BICORNIS = "Osmia bicornis";

    private final String label;
    private final String species;
    private final String row;
    private final double step;

    Fitted(String label, String species, String row, double step) {
        this.label = label;
        this.species = species;
        this.row = row;
        this.step = step;
    }

    String label() {
        return label;
    }

    String row() {
        return row;
    }

    /** A change that is neither tiny nor huge, in the unit of the value; the search counts in it. */
    double step() {
        return step;
    }

    static ParameterTable table(String species) {
        return CatalogueFiles.load().find(species).orElseThrow().parameters();
    }

    /** All of them, in the order of a vector. */
    static final List<Fitted> ALL = List.of(values());

    /** Where this number stands in a vector. */
    int at() {
        return ALL.indexOf(this);
    }

    /** This number out of a vector. */
    double in(double[] values) {
        return values[at()];
    }

    /**
     * What the catalogue holds today.
     *
     * @param fieldReadiness which it does not hold
     */
    static double[] catalogue(double fieldReadiness) {
        double[] values = new double[values().length];
        for (Fitted f : values()) {
            values[f.at()] = switch (f) {
                case OFFSET ->
                    table(BICORNIS).value("gate_base_f_c")
                            - table("Osmia cornuta").value("gate_base_f_c");
                case FIELD_READINESS -> fieldReadiness;
                default -> table(f.species).value(f.row);
            };
        }
        return values;
    }

    boolean isInCatalogue() {
        return !row.isEmpty();
    }

    /** The catalogue's row of this number, if it {@link #isInCatalogue}. */
    Parameter inCatalogue() {
        return table(species).get(row);
    }

    /** The clock of a species' sex with these values; what is not fitted is the catalogue's. */
    static EmergenceSettings settings(double[] values, String species, Sex sex, EmergenceSettings catalogue) {
        boolean bicornis = species.equals(BICORNIS);
        boolean female = sex == Sex.FEMALE;
        Fitted need =
                bicornis ? (female ? NEED_BICORNIS_F : NEED_BICORNIS_M) : (female ? NEED_CORNUTA_F : NEED_CORNUTA_M);
        double base = (female ? BASE_F : BASE_M).in(values);
        return new EmergenceSettings(
                SLOPE.in(values),
                catalogue.referenceC(),
                catalogue.capC(),
                need.in(values),
                (female ? SPREAD_F : SPREAD_M).in(values),
                bicornis ? base : base - OFFSET.in(values),
                (female ? WARMTH_F : WARMTH_M).in(values),
                (female ? WARMTH_SPREAD_F : WARMTH_SPREAD_M).in(values),
                catalogue.gateCapC());
    }

    /** A value as the page prints it. */
    String print(double value) {
        return String.format(
                Locale.ROOT, step < 0.01 ? "%.5f" : step < 0.5 ? "%.4f" : step < 1 ? "%.3f" : "%.2f", value);
    }
}
