package org.nestyear.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments of the draws against the moments by definition; 200 000 draws, five standard errors. */
class DrawsTest {
    private static final int COUNT = 200_000;

    @Test
    void uniformHasMeanOneHalf() {
        check(new Draws(1)::uniform, 0.5, 1 / 12.0);
    }

    @Test
    void normalHasMeanNothingAndVarianceOne() {
        check(new Draws(2)::normal, 0, 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.8, 1, 2.5, 20})
    void gammaHasItsShapeForMeanAndVariance(double shape) {
        Draws draws = new Draws(3);
        check(() -> draws.gamma(shape), shape, shape);
    }

    @Test
    void theSameSeedGivesTheSameNumbers() {
        assertThat(new Draws(9).normal()).isEqualTo(new Draws(9).normal()).isNotEqualTo(new Draws(10).normal());
    }

    @Test
    void aShapeOfNothingIsRefused() {
        assertThatThrownBy(() -> new Draws(1).gamma(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Draws(1).gamma(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void leastSquaresFindsALine() {
        double[] line = LeastSquares.fit(new double[][] {{1, 0}, {1, 1}, {1, 2}, {1, 3}}, new double[] {1, 3, 5, 7});
        assertThat(line[0]).isCloseTo(1, within(1e-12));
        assertThat(line[1]).isCloseTo(2, within(1e-12));
    }

    private static void check(DoubleSupplier draws, double mean, double variance) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < COUNT; i++) {
            double value = draws.getAsDouble();
            sum += value;
            squares += (value - mean) * (value - mean);
        }
        assertThat(sum / COUNT).isCloseTo(mean, within(5 * Math.sqrt(variance / COUNT)));
        assertThat(squares / COUNT / variance).isCloseTo(1, within(0.06));
    }
}
