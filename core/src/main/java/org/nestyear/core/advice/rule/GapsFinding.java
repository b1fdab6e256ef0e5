package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.Gap;

/** Says which weather days were missing, and how old the newest is. */
public final class GapsFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        LocalDate last = s.inputs().weather().upTo(s.today()).map(r -> r.last()).orElse(s.today());
        long behind = s.today().toEpochDay() - last.toEpochDay();
        double filled = s.gaps().stream().mapToLong(Gap::days).sum();
        ReadLog read = s.read();
        double stale = read.value("stale_weather_days");
        if (filled == 0 && behind <= stale) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                behind > stale ? "weather-stale" : "weather-gaps",
                Level.WATCH,
                behind > stale
                        ? Phrase.of("The weather file ends on {}; the days since then are taken from past years.", last)
                        : Phrase.of(
                                "{} days were missing in the weather file and were filled in.", Quantity.count(filled)),
                Phrase.of("{} behind, {} filled", Quantity.days((double) behind), Quantity.days(filled)),
                Phrase.of("{} behind, none missing", Quantity.days(stale)),
                Phrase.of("Bring the file up to date; check-file lists what is missing."),
                null,
                read.read()));
    }
}
