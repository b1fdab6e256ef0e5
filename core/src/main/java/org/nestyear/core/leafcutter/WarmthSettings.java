package org.nestyear.core.leafcutter;

import java.util.EnumMap;
import java.util.Map;
import org.nestyear.core.source.ParameterReader;

/**
 * Numbers of the warmth model of a leafcutter bee. Development runs straight above a base that lies between two published
 * bounds (O'Neill et al. 2011); for each base the sums are those that give the calendar of incubation at 29.4 °C
 * (University of Idaho Extension CIS 538), so that both agree there and part at other temperatures.
 *
 * @param lowBaseC lower bound of the base, °C
 * @param highBaseC higher bound of the base, °C
 * @param capC warmth counts no more above this, °C
 * @param steadyLowC coldest steady warming that is answered, °C
 * @param steadyHighC warmest steady warming that is answered, °C
 * @param calendarHalfDays a calendar of whole days tells a time no better than this either way, d
 * @param watchEndDays every parasitoid is out so long before the first male, d
 * @param sums the sums of every milestone, °C·d
 */
public record WarmthSettings(
        double lowBaseC,
        double highBaseC,
        double capC,
        double steadyLowC,
        double steadyHighC,
        double calendarHalfDays,
        double watchEndDays,
        Map<Milestone, TwoSums> sums) {
    public WarmthSettings {
        sums = Map.copyOf(sums);
    }

    /** Reads them. */
    public static WarmthSettings of(ParameterReader parameters) {
        Map<Milestone, TwoSums> sums = new EnumMap<>(Milestone.class);
        for (Milestone milestone : Milestone.values()) {
            sums.put(
                    milestone,
                    new TwoSums(
                            parameters.value(milestone.id() + "_sum_low_base"),
                            parameters.value(milestone.id() + "_sum_high_base")));
        }
        return new WarmthSettings(
                parameters.value("warmth_low_base_c"),
                parameters.value("warmth_high_base_c"),
                parameters.value("warmth_cap_c"),
                parameters.value("steady_low_c"),
                parameters.value("steady_high_c"),
                parameters.value("calendar_half_days"),
                parameters.value("watch_end_days"),
                sums);
    }

    /** The sums of a milestone. */
    public TwoSums sumsOf(Milestone milestone) {
        TwoSums found = sums.get(milestone);
        if (found == null) {
            throw new IllegalStateException("no sums for " + milestone);
        }
        return found;
    }

    /** True within the temperatures at which steady warming is answered. */
    public boolean answersSteady(double celsius) {
        return celsius >= steadyLowC && celsius <= steadyHighC;
    }

    /** Warmth gathered in days at one temperature. */
    public TwoSums gathered(double celsius, double days) {
        return new TwoSums(days * perDay(celsius, lowBaseC), days * perDay(celsius, highBaseC));
    }

    double perDay(double celsius, double baseC) {
        return Math.max(0, Math.min(celsius, capC) - baseC);
    }
}
