package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.ReadLog;

/** Says how a bloom date that still lies ahead is read. */
public final class ToldBloomFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        List<String> told = s.inputs().plants().stream()
                .filter(plant -> plant.target() && isAhead(plant, s))
                .map(Plant::name)
                .toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        return Optional.of(new Finding(
                "bloom-told-ahead",
                Level.NOTE,
                Phrase.of(
                        "Your dates for {} lie ahead and are read as a forecast that already knows this season's weather"
                                + " to {}: only the weather from then on moves them.",
                        String.join(" and ", told),
                        s.today()),
                Phrase.of(
                        "middle of bloom {} to {}",
                        s.outlook().targetBloom().early(),
                        s.outlook().targetBloom().late()),
                Phrase.of("an error of {}", Quantity.days(read.value("bloom_error_days"))),
                Phrase.of("If they are what is usual in past years, give those years' dates under past_bloom instead."),
                null,
                read.read()));
    }

    private static boolean isAhead(Plant plant, Situation s) {
        return plant.bloom() instanceof BloomDates.Dated dated
                && !plant.stand().fromWord()
                && dated.first().isAfter(s.today());
    }
}
