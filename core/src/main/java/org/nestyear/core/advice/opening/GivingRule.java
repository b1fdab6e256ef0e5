package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.source.ReadLog;

/** Bees that carry disease are not given away. */
final class GivingRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        CellShare share = opened.losses().share(Cause.CHALKBROOD, Cause.MITES, Cause.FLIES);
        ReadLog read = opened.read();
        double least = read.value("nests_open_all_share");
        if (share.total().found() == 0) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "do-not-give",
                Level.ACT,
                Phrase.of(
                        "Do not give or sell bees or used gear of this lot: chalkbrood, mites and flies travel with them."),
                OpeningCase.seen(share),
                Phrase.of("none in what is given away"),
                Phrase.of(
                        "Keep the lot apart from your other lots. Give again after a season in which all nests were looked at and"
                                + " nothing was found, from clean gear; say on the label what was found, kind, county and year. Up"
                                + " to {} of nests ill is for keeping, not for giving.",
                        Quantity.share(least)),
                Phrase.of("Rules on moving bees differ by place: ask your state or provincial apiarist first."),
                read.read()));
    }
}
