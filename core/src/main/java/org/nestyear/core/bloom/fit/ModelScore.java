package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How a model did on years it had not seen.
 *
 * @param kind the model
 * @param errors forecast less observed for each year that it could forecast, in order of year
 */
public record ModelScore(BloomKind kind, List<YearError> errors) {
    public ModelScore {
        errors = List.copyOf(errors);
    }

    /** How many years it could forecast. */
    public int years() {
        return errors.size();
    }

    /** Root mean square error, d; NaN without a year. */
    public double rmse() {
        return Math.sqrt(mean(error -> error.days() * error.days()));
    }

    /** Mean absolute error, d; NaN without a year. */
    public double meanAbsolute() {
        return mean(error -> Math.abs(error.days()));
    }

    /** Mean error, d, positive when forecasts come late; NaN without a year. */
    public double bias() {
        return mean(YearError::days);
    }

    private double mean(ToDoubleFunction<YearError> value) {
        return errors.stream().mapToDouble(value).average().orElse(Double.NaN);
    }

    /** This score over the years of another one only. */
    ModelScore onYearsOf(ModelScore other) {
        List<Integer> years = other.errors.stream().map(YearError::year).toList();
        return new ModelScore(
                kind,
                errors.stream().filter(error -> years.contains(error.year())).toList());
    }

    /**
     * The error of one year.
     *
     * @param year the year left out
     * @param days forecast less observed, d
     */
    public record YearError(int year, double days) {}
}
