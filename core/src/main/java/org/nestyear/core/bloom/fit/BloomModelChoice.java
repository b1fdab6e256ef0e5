package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.stats.NormalQuantiles;
import org.nestyear.core.stats.Quantiles;

/**
 * Chooses between the models of a plant's bloom by leaving each year out in turn: every model is fitted to the other
 * years, its start, base or requirement included, and forecasts the one left out. Whatever does not beat the mean date
 * there is not used. The winner of five is a little lucky: its error is the smallest of five estimates.
 */
public final class BloomModelChoice {
    private static final double LOW_SHARE = 1 / 10.0;
    private static final double HIGH_SHARE = 1 - LOW_SHARE;
    /** Numerical: the first of five midpoints is the 10 % quantile. */
    private static final int TENTHS = 5;

    private final FitLimits limits;
    private final ThermalTimeModel prior;
    private final double priorErrorDays;

    /** Reads the limits of the search and the general sum. */
    public BloomModelChoice(ParameterReader bloomModels) {
        limits = FitLimits.of(bloomModels);
        prior = new ThermalTimeModel(
                (int) bloomModels.value("prior_start_day"),
                bloomModels.value("prior_base_c"),
                bloomModels.value("prior_sum"));
        priorErrorDays = bloomModels.value("prior_error_days");
    }

    /** From how many dates on something is fitted. */
    public int leastYears() {
        return limits.leastYears();
    }

    /**
     * The model for a plant, of any kind.
     *
     * @param years its dates, each year once, any number
     */
    public BloomChoice choose(List<BloomYear> years) {
        return choose(years, EnumSet.allOf(BloomKind.class));
    }

    /**
     * The model for a plant, of the kinds that can be run where it is needed.
     *
     * @param years its dates, each year once, any number
     * @param kinds what may be chosen; the mean date always may
     */
    public BloomChoice choose(List<BloomYear> years, Set<BloomKind> kinds) {
        if (years.size() < limits.leastYears()) {
            double tenth = NormalQuantiles.midpoints(TENTHS)[0];
            return new BloomChoice(
                    prior,
                    BloomChoice.Reason.TOO_FEW_DATES,
                    years.size(),
                    List.of(),
                    priorErrorDays,
                    tenth * priorErrorDays,
                    -tenth * priorErrorDays);
        }
        List<ModelScore> scores = scores(years, kinds);
        ModelScore rival = scores.get(0);
        ModelScore best = rival;
        double bestRatio = 1;
        for (ModelScore score : scores) {
            double ratio = score.rmse() / rival.onYearsOf(score).rmse();
            boolean enough = score.years() >= limits.leastYears() && 2 * score.years() >= years.size();
            if (enough && ratio < bestRatio) {
                best = score;
                bestRatio = ratio;
            }
        }
        BloomModel model = fitter(best.kind(), years).without(null).orElseThrow();
        double[] late = best.errors().stream().mapToDouble(e -> -e.days()).toArray();
        return new BloomChoice(
                model,
                best.equals(rival) ? BloomChoice.Reason.NONE_BEATS_THE_MEAN_DATE : BloomChoice.Reason.SMALLEST_ERROR,
                years.size(),
                scores,
                best.rmse(),
                Quantiles.of(late, LOW_SHARE),
                Quantiles.of(late, HIGH_SHARE));
    }

    /** Every kind of model on years left out one by one; the mean date first. */
    private List<ModelScore> scores(List<BloomYear> years, Set<BloomKind> kinds) {
        List<ModelScore> scores = new ArrayList<>();
        for (BloomKind kind : BloomKind.values()) {
            if (kind == BloomKind.MEAN_DATE || kinds.contains(kind)) {
                scores.add(leaveOneOut(kind, years));
            }
        }
        return scores;
    }

    private ModelScore leaveOneOut(BloomKind kind, List<BloomYear> years) {
        Fitter fitter = fitter(kind, years);
        List<ModelScore.YearError> errors = new ArrayList<>();
        for (BloomYear left : years) {
            Optional<BloomModel> model = fitter.without(left);
            OptionalDouble day = model.isPresent() ? model.get().day(left.course()) : OptionalDouble.empty();
            if (day.isPresent()) {
                errors.add(new ModelScore.YearError(left.year(), day.getAsDouble() - left.day()));
            }
        }
        return new ModelScore(kind, errors);
    }

    private Fitter fitter(BloomKind kind, List<BloomYear> years) {
        return switch (kind) {
            case MEAN_DATE -> left -> MeanDate.fit(others(years, left));
            case THERMAL_TIME -> ThermalTimeModel.fit(years, limits)::best;
            case STANDARD_DAYS -> StandardDays.fit(years, limits)::best;
            case CHILL_THEN_HEAT -> ChillThenHeat.fit(years, limits)::best;
            case SPRING_INDEX -> left -> SpringIndexDate.fit(others(years, left));
        };
    }

    private static List<BloomYear> others(List<BloomYear> years, @Nullable BloomYear left) {
        return years.stream().filter(year -> !year.equals(left)).toList();
    }

    /** Fits one kind of model to all years but one. */
    private interface Fitter {
        Optional<BloomModel> without(@Nullable BloomYear left);
    }
}
