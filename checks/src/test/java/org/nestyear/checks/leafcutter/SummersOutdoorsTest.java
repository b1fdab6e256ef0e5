package org.nestyear.checks.leafcutter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Span;
import org.nestyear.core.leafcutter.TwoSums;
import org.nestyear.core.leafcutter.Warming;
import org.nestyear.core.leafcutter.YearsOfDates;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

class SummersOutdoorsTest {
    private static final int DAYS = 140;

    private static List<Span> washington(Milestone milestone) {
        WeatherRecord weather = GapFilling.fill(ReferenceWeather.washington()).weather();
        List<Span> spans = new ArrayList<>();
        for (int year = 1970; year <= 2012; year++) {
            LocalDate out = LocalDate.of(year, 5, 1);
            double[] low = new double[DAYS];
            double[] high = new double[DAYS];
            for (int d = 0; d < DAYS; d++) {
                DailyWeather day = weather.find(out.plusDays(d)).orElseThrow();
                low[d] = day.minC();
                high[d] = day.maxC();
            }
            double[] hours = HourlyTemperatures.fromDailyRange(out, low, high, 38.85);
            spans.add(Leafcutters.CLOCK.span(milestone, Warming.hours(hours), TwoSums.NONE));
        }
        return spans;
    }

    /**
     * A published population model takes females to come out on day 166 of the year, give or take 3, and none after day 185
     * (Schmolke, Galic &amp; Hinarejos 2023, parameter set; the place is not told, so this is a guide). Put out at Washington
     * on 1 May in 43 summers, the middle summer's first females lie within ten days of day 166, and half the females are out by
     * day 185 in nine summers of ten.
     */
    @Test
    @Tag("reference")
    void washingtonIsNearThePublishedDefault() {
        double[] middles = washington(Milestone.FIRST_FEMALE).stream()
                .mapToDouble(span -> LocalDate.of(2011, 5, 1).getDayOfYear() + (span.earlyDays() + span.lateDays()) / 2)
                .toArray();
        Comparison first = new Comparison("first females at Washington, day of the year", 10);
        first.add("middle of 43 summers", Quantiles.of(middles, 0.5), 166);
        first.check(1);
        List<Span> half = washington(Milestone.HALF_FEMALES);
        assertThat(half).hasSize(43);
        assertThat(LocalDate.of(2011, 5, 1).getDayOfYear()
                        + YearsOfDates.band(half).lateDays())
                .isLessThanOrEqualTo(185);
    }
}
