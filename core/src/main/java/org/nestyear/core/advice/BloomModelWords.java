package org.nestyear.core.advice;

import java.time.LocalDate;
import java.util.function.DoubleFunction;
import org.nestyear.core.bloom.fit.BloomModel;
import org.nestyear.core.bloom.fit.ChillThenHeat;
import org.nestyear.core.bloom.fit.MeanDate;
import org.nestyear.core.bloom.fit.SpringIndexDate;
import org.nestyear.core.bloom.fit.StandardDays;
import org.nestyear.core.bloom.fit.ThermalTimeModel;

/** Names a bloom model so that a keeper knows what it looks at. */
public final class BloomModelWords {
    private BloomModelWords() {}

    /**
     * What the bloom follows, to be set into a sentence.
     *
     * @param dateOf the date of a day number of the model
     */
    public static Phrase of(BloomModel model, DoubleFunction<LocalDate> dateOf) {
        if (model instanceof ThermalTimeModel sum) {
            return Phrase.of(
                    "the warmth above {} from {} on", Quantity.celsius(sum.baseC()), dateOf.apply(sum.startDay()));
        }
        if (model instanceof StandardDays sum) {
            return Phrase.of(
                    "the warmth from {} on, warm hours counting many times the cool ones",
                    dateOf.apply(sum.startDay()));
        }
        if (model instanceof ChillThenHeat both) {
            return Phrase.of(
                    "{} chill portions since autumn and the warmth after them", Quantity.count(both.portions()));
        }
        if (model instanceof SpringIndexDate index) {
            return Phrase.of(
                    index.daysAfter() < 0 ? "the spring index, {} before it" : "the spring index, {} after it",
                    new Quantity(Math.abs(index.daysAfter()), Unit.DAY, 1));
        }
        return Phrase.of("the mean date, {}", dateOf.apply(((MeanDate) model).day()));
    }
}
