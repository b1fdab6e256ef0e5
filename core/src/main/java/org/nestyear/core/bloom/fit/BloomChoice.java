package org.nestyear.core.bloom.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The model to use for a plant, why, and how far off it may be.
 *
 * @param model the model, fitted to all dates
 * @param reason why this one
 * @param dates how many dates it rests on
 * @param scores every model tried, each year left out in turn; empty when there were too few dates
 * @param errorDays root mean square error on years not seen, d
 * @param earlyDays 10 % quantile of observed less forecast, d, mostly negative
 * @param lateDays 90 % quantile of the same, d
 */
public record BloomChoice(
        BloomModel model,
        Reason reason,
        int dates,
        List<ModelScore> scores,
        double errorDays,
        double earlyDays,
        double lateDays) {
    public BloomChoice {
        scores = List.copyOf(scores);
    }

    /** Why a model was chosen. */
    public enum Reason {
        /** It had the smallest error on years it had not seen. */
        SMALLEST_ERROR,
        /** No model came closer than the mean of the dates, so the mean is used. */
        NONE_BEATS_THE_MEAN_DATE,
        /** There are too few dates of one's own to fit anything: a general sum is used, with a wide band. */
        TOO_FEW_DATES
    }

    /** Root mean square error of the mean date on years not seen, d; empty when there were too few dates. */
    public OptionalDouble meanDateErrorDays() {
        return scores.stream()
                .filter(score -> score.kind() == BloomKind.MEAN_DATE)
                .mapToDouble(ModelScore::rmse)
                .findFirst();
    }

    /** The forecast with its band; empty when the weather does not bring the bloom. */
    public Optional<BloomBand> forecast(YearCourse course) {
        OptionalDouble day = model.day(course);
        if (day.isEmpty()) {
            return Optional.empty();
        }
        double middle = day.getAsDouble();
        return Optional.of(new BloomBand(middle + earlyDays, middle, middle + lateDays));
    }
}
