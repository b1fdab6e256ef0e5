package org.nestyear.core.brood;

import java.util.List;
import org.nestyear.core.source.ParameterReader;

/**
 * Development of one cell from egg to adult by thermal times of its stages: egg, larva (to the spun cocoon), prepupa,
 * pupa. Two published sets of numbers for <em>O. bicornis</em> disagree: one from the laboratory, which stalls in cool
 * springs, one refitted to the field, which is quicker. Both are run, and the truth is taken to lie between.
 */
public final class BroodClock {
    private static final double HOURS = 24;

    private final double eggBaseC;
    private final double eggSum;
    private final double larvaBaseC;
    private final double larvaSum;
    private final Prepupa prepupa;
    private final double pupaBaseC;
    private final double pupaSum;
    private final double pace;

    private BroodClock(ParameterReader parameters, String set, Prepupa prepupa) {
        eggBaseC = parameters.value(set + "_egg_base_c");
        eggSum = parameters.value(set + "_egg_sum");
        larvaBaseC = parameters.value(set + "_larva_base_c");
        larvaSum = parameters.value(set + "_larva_sum");
        pupaBaseC = parameters.value(set + "_pupa_base_c");
        pupaSum = parameters.value(set + "_pupa_sum");
        pace = parameters.value("brood_pace");
        this.prepupa = prepupa;
    }

    /** The clock by numbers from the laboratory: the slower one. */
    public static BroodClock laboratory(ParameterReader parameters) {
        return new BroodClock(
                parameters,
                "brood_lab",
                new Prepupa(
                        parameters.value("brood_lab_prepupa_days"),
                        parameters.value("brood_lab_prepupa_square"),
                        parameters.value("brood_lab_prepupa_line"),
                        parameters.value("brood_lab_prepupa_rest")));
    }

    /** The clock by numbers refitted to the field: the quicker one. */
    public static BroodClock field(ParameterReader parameters) {
        return new BroodClock(
                parameters, "brood_field", new Prepupa(parameters.value("brood_field_prepupa_days"), 0, 0, 1));
    }

    /** Both. */
    public static List<BroodClock> both(ParameterReader parameters) {
        return List.of(field(parameters), laboratory(parameters));
    }

    /**
     * The resting stage: its days at a temperature are a number of days times a parabola.
     *
     * @param days days where the parabola is 1
     */
    private record Prepupa(double days, double square, double line, double rest) {
        double partPerHour(double celsius) {
            return 1 / (HOURS * days * (square * celsius * celsius + line * celsius + rest));
        }
    }

    /**
     * When a cell is spun and adult.
     *
     * @param spunDays days from the egg to the spun cocoon, or infinity
     * @param adultDays days from the egg to the adult, or infinity
     */
    public record Ages(double spunDays, double adultDays) {}

    /**
     * Runs one cell.
     *
     * @param hourlyC temperature of the nest by the hour from the egg on, °C
     */
    public Ages run(double[] hourlyC) {
        double egg = 0;
        double larva = 0;
        double rest = 0;
        double pupa = 0;
        double spun = Double.POSITIVE_INFINITY;
        for (int h = 0; h < hourlyC.length; h++) {
            double celsius = hourlyC[h];
            if (egg < 1) {
                egg += part(celsius, eggBaseC, eggSum);
            } else if (larva < 1) {
                larva += part(celsius, larvaBaseC, larvaSum);
                spun = larva < 1 ? spun : (h + 1) / HOURS;
            } else if (rest < 1) {
                rest += prepupa.partPerHour(celsius) / pace;
            } else {
                pupa += part(celsius, pupaBaseC, pupaSum);
                if (pupa >= 1) {
                    return new Ages(spun, (h + 1) / HOURS);
                }
            }
        }
        return new Ages(spun, Double.POSITIVE_INFINITY);
    }

    private double part(double celsius, double baseC, double sum) {
        return Math.max(0, celsius - baseC) / HOURS / sum / pace;
    }
}
