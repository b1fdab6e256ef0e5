package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.source.ReadLog;

/** A lot of leafcutter cells against what buyers and regulators ask for. */
final class LotRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.isMason()) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        CellShare lost = opened.losses().lost();
        double least = read.value("lot_live_least");
        boolean below = lost.against(1 - least) == CellShare.Standing.ABOVE;
        boolean above = lost.against(1 - least) == CellShare.Standing.BELOW;
        return Optional.of(new Finding(
                "lot-standard",
                below ? Level.WATCH : Level.NOTE,
                below
                        ? Phrase.of("Fewer cells live than a buyer should find in a good lot.")
                        : above
                                ? Phrase.of("As many cells live as a buyer should find in a good lot.")
                                : Phrase.of(
                                        "Whether as many live as a buyer should find in a good lot these cells cannot tell."),
                Phrase.of(
                        "{} living of {} cells, {}",
                        Quantity.count(opened.losses().alive()),
                        Quantity.count(opened.losses().cells()),
                        Quantity.share(1 - lost.share())),
                Phrase.of("{} or more living, and no disease", Quantity.share(least)),
                Phrase.of(
                        "For seed growers this decides on buying and selling; a garden can live with less. A laboratory can"
                                + " take an X-ray of a sample (see sample --of containers)."),
                null,
                read.read()));
    }
}
