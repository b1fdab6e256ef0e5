package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Summer;
import org.nestyear.core.source.ReadLog;

/** What follows emergence: nesting, the second generation, and how long the last cells need to spin. */
final class WarmAfter {
    /** A warm and a cool summer's mean, °C, for the example of the last cells. */
    private static final List<Double> EXAMPLES_C = List.of(25.0, 20.0);

    private WarmAfter() {}

    static WarmAnswer.After of(WarmQuestion question, Map<Milestone, DateBand> dates, Summer summer, ReadLog read) {
        DateBand first = dates.getOrDefault(Milestone.FIRST_FEMALE, new DateBand(null, null));
        DateBand half = dates.getOrDefault(Milestone.HALF_FEMALES, new DateBand(null, null));
        Double latitude = WarmWords.latitude(question);
        boolean north = latitude != null && Math.abs(latitude) >= summer.northLatitudeDeg();
        String most = latitude == null || !north ? "second_share_south" : "second_share_north";
        String least = latitude == null || north ? "second_share_north" : "second_share_south";
        return new WarmAnswer.After(
                new DateBand(
                        plus(first.early(), summer.maturingDays()),
                        plus(half.late(), summer.maturingDays() + summer.expectedNestingDays())),
                summer.expectedNestingDays(),
                plus(first.early(), summer.maturingDays() + summer.broodDays()),
                read.row(least).low(),
                read.row(most).high(),
                EXAMPLES_C.stream().map(summer::daysToPrepupa).toList());
    }

    private static @Nullable LocalDate plus(@Nullable LocalDate date, double days) {
        return date == null ? null : date.plusDays(Math.round(days));
    }
}
