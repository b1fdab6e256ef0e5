package org.nestyear.checks;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** The comparison itself must be able to fail. */
class ComparisonTest {
    @Test
    void passesWithinTheTolerance() {
        Comparison comparison = new Comparison("length, m", 0.1);
        comparison.add("a", 1.05, 1);
        comparison.check(1);
    }

    @Test
    void failsBeyondTheTolerance() {
        Comparison comparison = new Comparison("length, m", 0.1);
        comparison.add("a", 1, 1);
        comparison.add("b", 1.2, 1);
        assertThatThrownBy(() -> comparison.check(1))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("1 rows beyond the tolerance")
                .hasMessageContaining("b: computed 1.2, expected 1.0");
    }

    @Test
    void failsOnWhatIsNotANumber() {
        Comparison comparison = new Comparison("length, m", 0.1);
        assertThatThrownBy(() -> comparison.add("a", Double.NaN, 1)).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> comparison.add("a", 1, Double.NaN)).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> comparison.add("a", Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void failsWithoutRowsAndWithTooFew() {
        Comparison empty = new Comparison("length, m", 0.1);
        assertThatThrownBy(() -> empty.check(0)).isInstanceOf(AssertionError.class);
        Comparison tooShort = new Comparison("length, m", 0.1);
        tooShort.add("a", 1, 1);
        assertThatThrownBy(() -> tooShort.check(2))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("only 1 of at least 2");
    }

    @Test
    void refusesAToleranceThatCannotFail() {
        assertThatThrownBy(() -> new Comparison("length, m", Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Comparison("length, m", Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
