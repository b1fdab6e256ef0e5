package org.nestyear.core.advice.rule;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.release.HoldBack;

/** Words for what comes of holding a share of the cocoons back. */
final class HoldBackWords {
    private HoldBackWords() {}

    /** A sentence on the chance of losing all, and one for each share but none. */
    static List<Phrase> of(List<HoldBack> shares) {
        List<Phrase> words = new ArrayList<>();
        for (HoldBack each : shares) {
            if (words.isEmpty() && each.share() > 0) {
                words.add(Phrase.of(
                        "A part held back until {} makes the chance of losing all {} in place of {}.",
                        each.second(),
                        Quantity.share(each.allLost()).withDecimals(1),
                        Quantity.share(shares.get(0).allLost()).withDecimals(1)));
            }
            if (each.share() > 0) {
                words.add(Phrase.of(
                        "{} held back: {}, and {} is left if the first lot is lost.",
                        Quantity.share(each.share()),
                        Loss.of(each.cost()),
                        Quantity.share(each.left())));
            }
        }
        return words;
    }
}
