package org.nestyear.data.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files write them: a point for decimals, no exponent, no digits that say nothing. */
final class Numbers {
    private Numbers() {}

    /**
     * @param value finite
     * @param places decimals at most
     */
    static BigDecimal rounded(double value, int places) {
        BigDecimal number = BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    static String plain(double value, int places) {
        return rounded(value, places).toPlainString();
    }
}
