package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.source.ReadLog;

/** Living cells against a published share. */
final class FewAliveRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        ReadLog read = opened.read();
        double usual = read.value("live_share_" + opened.bees().word());
        CellShare lost = opened.losses().lost();
        CellShare.Standing standing = lost.against(1 - usual);
        return Optional.of(new Finding(
                "alive",
                standing == CellShare.Standing.ABOVE ? Level.WATCH : Level.NOTE,
                switch (standing) {
                    case ABOVE -> Phrase.of("Fewer cells live than in the nests of a city elsewhere.");
                    case BELOW -> Phrase.of("More cells live than in the nests of a city elsewhere.");
                    case OPEN ->
                        Phrase.of(
                                "Whether more or fewer cells live than in the nests of a city elsewhere these cells cannot tell.");
                },
                Phrase.of(
                        "{} of {} cells living, {} ({} to {})",
                        Quantity.count(opened.losses().alive()),
                        Quantity.count(opened.losses().cells()),
                        Quantity.share(1 - lost.share()),
                        Quantity.share(1 - lost.limits().high()),
                        Quantity.share(1 - lost.limits().low())),
                Phrase.of("{}", Quantity.share(usual)),
                Phrase.of(
                        "One place is no standard: your own past years tell more. Keep this table and compare by year."),
                null,
                read.read()));
    }
}
