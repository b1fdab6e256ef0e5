package org.nestyear.core.bloom;

import org.nestyear.core.source.ParameterReader;

/**
 * Defaults for bloom where the keeper tells nothing better.
 *
 * @param sum degree-days from the start to the middle of bloom, °C·d
 * @param baseC base temperature, °C
 * @param startDay day of the year from which warmth counts
 * @param errorDays standard error of a forecast bloom date, d
 * @param sdDays standard deviation of the bloom curve where its length is not told, d
 * @param spanSds how many standard deviations lie between first and last bloom
 * @param communityLeadDays how long before the target the other bloom begins by default, d
 * @param communityLevel its height at the peak by default, 0 to 1
 * @param communityEndDay day of the year on which it ends by default
 */
public record BloomSettings(
        double sum,
        double baseC,
        double startDay,
        double errorDays,
        double sdDays,
        double spanSds,
        double communityLeadDays,
        double communityLevel,
        double communityEndDay) {
    public static BloomSettings of(ParameterReader parameters) {
        return new BloomSettings(
                parameters.value("bloom_sum"),
                parameters.value("bloom_base_c"),
                parameters.value("bloom_start_day"),
                parameters.value("bloom_error_days"),
                parameters.value("bloom_sd_days"),
                parameters.value("bloom_span_sds"),
                parameters.value("community_lead_days"),
                parameters.value("community_level"),
                parameters.value("community_end_day"));
    }
}
