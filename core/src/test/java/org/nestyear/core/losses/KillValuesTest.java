package org.nestyear.core.losses;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.losses.KillValues.Base;
import org.nestyear.core.stats.Draws;

class KillValuesTest {
    /** Yellow-bellied marmot, life table of the textbook of Begon and others: 773, 420, 208 alive; k 0.26 and 0.31 in print. */
    @Test
    void theMarmotOfTheTextbook() {
        assertThat(KillValues.between(773, 420, Base.TEN)).isEqualTo(0.265, within(5e-4));
        assertThat(KillValues.between(420, 208, Base.TEN)).isEqualTo(0.305, within(5e-4));
        assertThat(KillValues.between(773, 208, Base.TEN))
                .isEqualTo(
                        KillValues.between(773, 420, Base.TEN) + KillValues.between(420, 208, Base.TEN), within(1e-12));
    }

    /**
     * Gypsy moth in New England (Campbell 1981, as a university lecture gives it): 450 eggs, deaths by cause, k with natural
     * logarithms. Numbers of dead are rounded to a tenth in print, so that late k, of few survivors, are less sharp.
     */
    @ParameterizedTest
    @CsvSource({
        "67.5, 0.1625, 0.0706, 0.0005",
        "67.5, 0.1942, 0.0843, 0.0005",
        "157.5, 0.6932, 0.3010, 0.0005",
        "118.1, 1.3857, 0.6018, 0.002",
        "7.9, 0.2238, 0.0972, 0.002",
        "7.9, 0.2887, 0.1254, 0.003",
        "0.7, 0.0301, 0.0131, 0.003",
        "4.6, 0.2242, 0.0974, 0.003",
        "2.3, 0.1343, 0.0583, 0.004",
        "5.6, 0.4308, 0.1871, 0.004"
    })
    void theGypsyMoth(double died, double natural, double ten, double within) {
        double before = 450;
        for (double earlier : new double[] {67.5, 67.5, 157.5, 118.1, 7.9, 7.9, 0.7, 4.6, 2.3, 5.6}) {
            if (earlier == died && Math.abs(KillValues.between(before, before - died, Base.E) - natural) < within) {
                assertThat(KillValues.between(before, before - died, Base.TEN)).isEqualTo(ten, within(within));
                return;
            }
            before -= earlier;
        }
        assertThat(false).as("k %s of %s dead was not met with", natural, died).isTrue();
    }

    /** The whole moth table: 450 eggs, 10.4 adults; 3.7674 in print, 1.6362 with logarithms to base 10. */
    @Test
    void theWholeMothTable() {
        assertThat(KillValues.between(450, 10.4, Base.E)).isEqualTo(3.7674, within(5e-3));
        assertThat(KillValues.between(450, 10.4, Base.TEN)).isEqualTo(1.6362, within(2e-3));
    }

    /** By hand from 1 − (1 − d)^(dᵢ/d): 30 and 20 % lost give 34.02 and 24.21 % alone, k 0.1806 and 0.1204. */
    @Test
    void twoCausesSideBySide() {
        double a = KillValues.alone(0.3, 0.5);
        double b = KillValues.alone(0.2, 0.5);
        assertThat(a).isEqualTo(0.3402, within(5e-5));
        assertThat(b).isEqualTo(0.2421, within(5e-5));
        assertThat((1 - a) * (1 - b)).isEqualTo(0.5, within(1e-12));
        assertThat(KillValues.between(1, 1 - a, Base.TEN)).isEqualTo(0.1806, within(5e-5));
        assertThat(KillValues.between(1, 1 - b, Base.TEN)).isEqualTo(0.1204, within(5e-5));
        assertThat(KillValues.alone(0, 0)).isZero();
        assertThat(KillValues.alone(1, 1)).isEqualTo(1);
    }

    /** Whatever the causes, survivals alone multiply to the survival of all; alone a cause never takes less than in company. */
    @Test
    void survivalsMultiply() {
        Draws draws = new Draws(11);
        for (int run = 0; run < 200; run++) {
            double all = 0;
            double[] causes = new double[4];
            for (int i = 0; i < causes.length; i++) {
                causes[i] = draws.uniform() * 0.24;
                all += causes[i];
            }
            double survival = 1;
            for (double cause : causes) {
                assertThat(KillValues.alone(cause, all)).isGreaterThanOrEqualTo(cause - 1e-12);
                survival *= 1 - KillValues.alone(cause, all);
            }
            assertThat(survival).isEqualTo(1 - all, within(1e-12));
        }
    }

    @Test
    void badNumbersAreRefused() {
        assertThatThrownBy(() -> KillValues.between(10, 0, Base.TEN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> KillValues.between(10, 11, Base.E)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> KillValues.between(Double.NaN, 1, Base.E))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> KillValues.alone(0.4, 0.3)).isInstanceOf(IllegalArgumentException.class);
    }
}
