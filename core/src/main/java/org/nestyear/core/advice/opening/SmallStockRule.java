package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Small stocks are never spent on a sample. */
final class SmallStockRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        ReadLog read = opened.read();
        double small = read.value("small_stock_check");
        double share = read.value("open_share_most");
        int alive = opened.losses().alive();
        if (alive == 0) {
            return Optional.empty();
        }
        boolean few = alive < small;
        return Optional.of(new Finding(
                few ? "open-no-cocoon" : "open-few-cocoons",
                Level.NOTE,
                few
                        ? Phrase.of(
                                "With so few living ones no cocoon or cell is cut open to look inside: that kills the bee.")
                        : Phrase.of("Cutting a cocoon or cell open kills the bee; a few may be, if it must be."),
                Phrase.of("{} living", Quantity.count(alive)),
                few
                        ? Phrase.of("{} before one may be spent", Quantity.count(small))
                        : Phrase.of(
                                "at most {} of them, {}",
                                Quantity.share(share),
                                Quantity.count(Math.floor(alive * share))),
                opened.isMason()
                        ? Phrase.of(
                                "Hold them before a strong lamp, look at the rinse residue under a lens, and count the dead"
                                        + " cells and the debris: that destroys nothing.")
                        : Phrase.of(
                                "Hold them before a strong lamp and count the dead cells and the debris: that destroys"
                                        + " nothing. Leaf cells stay dry."),
                null,
                read.read()));
    }
}
