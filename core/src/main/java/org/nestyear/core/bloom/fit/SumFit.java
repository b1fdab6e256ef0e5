package org.nestyear.core.bloom.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Fits models that count something up to a sum: every shape of the model that is tried, with its running sums in every
 * year. They are worked out once and then used for each year left out.
 *
 * @param years the dates
 * @param shapes what is tried
 */
record SumFit(List<BloomYear> years, List<Shape> shapes) {
    SumFit {
        years = List.copyOf(years);
        shapes = List.copyOf(shapes);
    }

    /**
     * A model whose sum is still open.
     *
     * @param withSum the model with a sum
     * @param byYear its running sum in each year; empty where it does not begin before the observed day
     */
    record Shape(DoubleFunction<BloomModel> withSum, List<Optional<RunningSum>> byYear) {
        Shape {
            byYear = List.copyOf(byYear);
        }
    }

    /**
     * The shape with the smallest squared error, each with the sum that leaves no mean error. A shape must begin before
     * the observed day in every year it is fitted to.
     *
     * @param leftOut the year to leave out, or null
     * @return empty when no shape does, or fewer than two years are left
     */
    Optional<BloomModel> best(@Nullable BloomYear leftOut) {
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < years.size(); i++) {
            if (!years.get(i).equals(leftOut)) {
                used.add(i);
            }
        }
        if (used.size() < 2) {
            return Optional.empty();
        }
        double[] observed = used.stream().mapToDouble(i -> years.get(i).day()).toArray();
        @Nullable BloomModel best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Shape shape : shapes) {
            List<RunningSum> sums = new ArrayList<>();
            used.forEach(i -> shape.byYear().get(i).ifPresent(sums::add));
            if (sums.size() < used.size()) {
                continue;
            }
            double sum = RunningSum.withoutBias(sums, observed);
            double squares = RunningSum.squaredError(sums, observed, sum);
            if (squares < least) {
                least = squares;
                best = shape.withSum().apply(sum);
            }
        }
        return Optional.ofNullable(best);
    }
}
