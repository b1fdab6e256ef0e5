package org.nestyear.core.advice.rule;

import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;

/** Words for what another way to choose a date loses against the plan. */
final class Loss {
    /** Half a per cent, the least that is shown as one; numerical. */
    private static final double SHOWN = 0.005;

    private Loss() {}

    /**
     * A loss in words.
     *
     * @param share share of the plan's score lost; negative when the other way does better, which a rule can that waits
     *     for the weather of the year
     */
    static Phrase of(double share) {
        if (share >= SHOWN) {
            return Phrase.of("loses {} on average", Quantity.share(share));
        }
        return share <= -SHOWN
                ? Phrase.of("does {} better on average, because it waits for the weather", Quantity.share(-share))
                : Phrase.of("does as well");
    }
}
