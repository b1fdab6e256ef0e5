package org.nestyear.core.emergence;

import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.species.Sex;

/**
 * The two-stage clock of one sex: cold readies, warmth releases.
 *
 * <p>Stage 1: readiness grows by exp(slope·(min(T, cap) − reference)) a day; a bee is ready when it reaches
 * need·x1. Stage 2, only once ready: warmth grows by (min(T, gateCap) − gateBase)₊² a day; the bee is out when it
 * reaches gateNeed·x2. x1 and x2 are log-normal with median 1. Source: our fit to Möllmann et al. 2025 and the field
 * counts published with Ruddle et al. 2018; values and ranges are catalogue rows.
 *
 * @param slope 1/°C
 * @param referenceC °C at which a day counts one readiness day
 * @param capC °C above which readiness runs no faster
 * @param need readiness days of the median bee
 * @param spread standard deviation of ln x1
 * @param gateBaseC °C
 * @param gateNeed °C²·d of the median bee
 * @param gateSpread standard deviation of ln x2
 * @param gateCapC °C above which warmth counts no more
 */
public record EmergenceSettings(
        double slope,
        double referenceC,
        double capC,
        double need,
        double spread,
        double gateBaseC,
        double gateNeed,
        double gateSpread,
        double gateCapC) {

    /** The settings of a species' sex as read from its parameters. */
    public static EmergenceSettings of(ParameterReader parameters, Sex sex) {
        String s = sex.suffix();
        return new EmergenceSettings(
                parameters.value("readiness_slope"),
                parameters.value("readiness_reference_c"),
                parameters.value("readiness_cap_c"),
                parameters.value("readiness_need" + s),
                parameters.value("readiness_spread" + s),
                parameters.value("gate_base" + s + "_c"),
                parameters.value("gate_need" + s),
                parameters.value("gate_spread" + s),
                parameters.value("gate_cap_c"));
    }

    /** Readiness days gained in a day at {@code celsius}. */
    public double readinessPerDay(double celsius) {
        return Math.exp(slope * (Math.min(celsius, capC) - referenceC));
    }

    /** Warmth gained in a day at {@code celsius} by a bee that is ready, °C²·d. */
    public double warmthPerDay(double celsius) {
        double above = Math.min(celsius, gateCapC) - gateBaseC;
        return above > 0 ? above * above : 0;
    }
}
