package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.source.Parameter;

/**
 * The model chosen for a plant and the dates it gives.
 *
 * @param choice the model, and how each kind did on years left out
 * @param unused dates that have no weather behind them
 * @param predicted the years asked for, in order
 * @param dayOne day 1 of the model's numbers in the last year of the weather
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the files, the catalogue or the version
 */
public record BloomAnswer(
        BloomChoice choice,
        List<LocalDate> unused,
        List<Predicted> predicted,
        LocalDate dayOne,
        List<Parameter> basis,
        String fingerprint) {
    public BloomAnswer {
        unused = List.copyOf(unused);
        predicted = List.copyOf(predicted);
        basis = List.copyOf(basis);
    }

    /** True when every year asked for has a date. */
    public boolean isComplete() {
        return predicted.stream().allMatch(year -> year.dates() != null);
    }

    /** The date of a day number of the model. */
    public LocalDate date(double day) {
        return dayOne.plusDays((long) Math.floor(day) - 1);
    }

    /**
     * The bloom of one year.
     *
     * @param dates null when the weather does not cover that spring up to the bloom
     */
    public record Predicted(int year, @Nullable Dates dates) {}

    /**
     * The forecast with its band.
     *
     * @param early one year in ten blooms before this
     * @param late one year in ten blooms after this
     */
    public record Dates(LocalDate early, LocalDate date, LocalDate late) {}
}
