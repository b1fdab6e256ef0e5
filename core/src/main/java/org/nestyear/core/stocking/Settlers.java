package org.nestyear.core.stocking;

import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/**
 * From cocoons to females that nest, and back: nesting = female cocoons × share that comes out × share that stays.
 *
 * @param out share of female cocoons that opens
 * @param staying share of those females that stays to nest
 */
public record Settlers(double out, Spread staying) {
    /** The shares of a species' catalogue rows {@code never_out_f} and {@code settling}. */
    public static Settlers of(ReadLog read) {
        Parameter settling = read.row("settling");
        return new Settlers(
                1 - read.value("never_out_f"), new Spread(settling.low(), settling.value(), settling.high()));
    }

    /**
     * Females that nest.
     *
     * @param cocoons female cocoons put out, 0 or more
     */
    public Spread nesting(double cocoons) {
        return new Spread(
                cocoons * out * staying.low(), cocoons * out * staying.value(), cocoons * out * staying.high());
    }

    /**
     * Female cocoons to put out, so that so many females nest; more of them stay, fewer are needed.
     *
     * @param nesting females wanted to nest
     */
    public Spread cocoons(Spread nesting) {
        return new Spread(
                nesting.low() / out / staying.high(),
                nesting.value() / out / staying.value(),
                nesting.high() / out / staying.low());
    }
}
