package org.nestyear.app.service;

import java.util.List;
import org.nestyear.core.count.Limits;
import org.nestyear.core.reach.FlightReach;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/**
 * How far a bee flies.
 *
 * @param spanMm distance between its wing bases, mm
 * @param typicalKm what measured relatives did against the equation, as a range about the typical homing distance, km
 * @param maxKm the same for the homing maximum, km
 * @param workingM the range of measured working flights, m
 * @param outside true when no bee of that size was watched at work
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record RangeAnswer(
        double spanMm,
        FlightReach reach,
        Limits typicalKm,
        Limits maxKm,
        Limits workingM,
        boolean outside,
        List<Parameter> basis,
        String fingerprint) {
    private static final double METRES_PER_KM = 1000;

    public RangeAnswer {
        basis = List.copyOf(basis);
    }

    /** True when the working distance is the homing maximum, which for a small bee is shorter. */
    public boolean isCapped() {
        return reach.workingM() >= reach.maxKm() * METRES_PER_KM;
    }

    /**
     * Answers the question.
     *
     * @param spanMm distance between the wing bases, mm, above 0
     */
    public static RangeAnswer of(double spanMm) {
        ReadLog read = new ReadLog(CatalogueFiles.sums("reach"));
        FlightReach reach = FlightReach.of(spanMm, read);
        boolean outside = spanMm < read.value("working_span_least_mm") || spanMm > read.value("working_span_most_mm");
        Parameter working = read.row("working_m");
        Limits typical = times(read.row("homing_typical_ratio"), reach.typicalKm());
        Limits max = times(read.row("homing_max_ratio"), reach.maxKm());
        Fingerprint print = new Fingerprint("");
        print.add(spanMm);
        print.add(read.read());
        return new RangeAnswer(
                spanMm,
                reach,
                typical,
                max,
                new Limits(
                        Math.min(working.low(), reach.workingM()),
                        Math.max(reach.workingM(), Math.min(working.high(), reach.maxKm() * METRES_PER_KM))),
                outside,
                read.read(),
                print.digits());
    }

    private static Limits times(Parameter ratio, double kilometres) {
        return new Limits(ratio.low() * kilometres, ratio.high() * kilometres);
    }
}
