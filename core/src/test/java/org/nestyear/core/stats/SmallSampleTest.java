package org.nestyear.core.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SmallSampleTest {
    /** Points of Student's distribution as printed in statistical tables: 2, 7 and 42 degrees of freedom; to 3 decimals. */
    @Test
    void givesTheTabledPoints() {
        assertThat(SmallSample.standardErrors(3)).isEqualTo(2.920, within(5e-4));
        assertThat(SmallSample.standardErrors(8)).isEqualTo(1.895, within(5e-4));
        assertThat(SmallSample.standardErrors(43)).isEqualTo(1.682, within(5e-4));
    }

    /** 2.920 / 1.645 · √(3/2) for three values; close to 1 for many; without end for one. */
    @Test
    void widensTheBootstrapOfAFew() {
        assertThat(SmallSample.wideningOfBootstrap(3)).isEqualTo(2.174, within(1e-3));
        assertThat(SmallSample.wideningOfBootstrap(2)).isGreaterThan(SmallSample.wideningOfBootstrap(3));
        assertThat(SmallSample.wideningOfBootstrap(1000)).isBetween(1.0, 1.01);
        assertThat(SmallSample.wideningOfBootstrap(1)).isInfinite();
        assertThat(SmallSample.standardErrors(1)).isInfinite();
    }
}
