package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.BloomModelWords;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.bloom.fit.MeanDate;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.ReadLog;

/** Says what was made of the keeper's own bloom dates of past years: which model, how far off it was, and its rival. */
public final class PastBloomFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        List<PastBloom> targets =
                s.pastBlooms().stream().filter(past -> past.plant().target()).toList();
        if (targets.isEmpty()) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        Quantity least = Quantity.count(read.value("fit_least_years"));
        boolean few = targets.stream().anyMatch(past -> !past.isFitted());
        if (few) {
            read.value("prior_sum");
            read.value("prior_error_days");
        }
        return Optional.of(new Finding(
                "bloom-from-past-dates",
                few || targets.stream().anyMatch(past -> !past.unused().isEmpty()) ? Level.WATCH : Level.NOTE,
                joined(targets.stream().map(past -> sentences(past, least)).toList(), "{} {}"),
                joined(targets.stream().map(PastBloomFinding::error).toList(), "{}; {}"),
                joined(targets.stream().map(past -> rival(past, least)).toList(), "{}; {}"),
                few
                        ? Phrase.of(
                                "Add the days of full bloom of more years under past_bloom: from {} on they are fitted.",
                                least)
                        : Phrase.of(
                                "Write the day of full bloom down again this year: more dates make the choice surer."),
                null,
                read.read()));
    }

    private static Phrase joined(List<Phrase> phrases, String pattern) {
        return phrases.stream().reduce((a, b) -> Phrase.of(pattern, a, b)).orElseThrow();
    }

    private static Phrase sentences(PastBloom past, Quantity least) {
        Phrase text = main(past, least);
        Plant plant = past.plant();
        if (plant.bloom() instanceof BloomDates.Dated) {
            text = Phrase.of(
                    "{} Your own date of this season stands; only the way it moves with the weather follows from these.",
                    text);
        }
        if (!past.unused().isEmpty()) {
            Quantity unused = Quantity.count(past.unused().size());
            text = Phrase.of(
                    "{} The weather files do not reach {} of your dates, so these could not be used.", text, unused);
        }
        for (BloomKind kind : past.notRun()) {
            text = Phrase.of(
                    "{} The model \"{}\" was left out: this season's weather does not reach back far enough for it.",
                    text,
                    kind.word());
        }
        return text;
    }

    private static Phrase main(PastBloom past, Quantity least) {
        String name = past.plant().name();
        Quantity dates = Quantity.count(past.choice().dates());
        Quantity error = days(past.choice().errorDays());
        return switch (past.choice().reason()) {
            case SMALLEST_ERROR ->
                Phrase.of(
                        "The bloom of {} follows {}, fitted to {} dates of your own; on years left out, their weather known,"
                                + " it was {} off, their mean date {}.",
                        name,
                        BloomModelWords.of(past.choice().model(), past::date),
                        dates,
                        error,
                        days(past.choice().meanDateErrorDays().orElseThrow()));
            case NONE_BEATS_THE_MEAN_DATE ->
                Phrase.of(
                        "None of the {} weather models came closer to your {} dates of {} than their mean date, so {} ± {}"
                                + " is used whatever the weather.",
                        Quantity.count(past.choice().scores().size() - 1.0),
                        dates,
                        name,
                        past.date(((MeanDate) past.choice().model()).day()),
                        error);
            case TOO_FEW_DATES ->
                Phrase.of(
                        "Of {} there are {} past dates with weather behind them, too few to fit a model (it takes {}), so a"
                                + " general sum of warmth is used, ± {}.",
                        name,
                        dates,
                        least,
                        error);
        };
    }

    private static Phrase error(PastBloom past) {
        return Phrase.of(
                "{}: error {}, on {} dates",
                past.plant().name(),
                days(past.choice().errorDays()),
                Quantity.count(past.choice().dates()));
    }

    private static Phrase rival(PastBloom past, Quantity least) {
        return past.choice().meanDateErrorDays().isPresent()
                ? Phrase.of(
                        "mean date {}", days(past.choice().meanDateErrorDays().getAsDouble()))
                : Phrase.of("{} dates", least);
    }

    private static Quantity days(double days) {
        return new Quantity(days, Unit.DAY, 1);
    }
}
