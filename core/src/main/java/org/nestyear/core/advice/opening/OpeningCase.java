package org.nestyear.core.advice.opening;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.losses.LossTable;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.BeeKind;

/**
 * Opened nests and what is known of the bees.
 *
 * @param table numbers the rules are held against
 * @param bees which bees these are
 * @param losses what was lost
 * @param bought true when they came from elsewhere this year
 */
public record OpeningCase(ParameterTable table, BeeKind bees, LossTable losses, boolean bought) {
    /** Caution for all work on opened nests. */
    static final Phrase DUST = Phrase.of(
            "Work outdoors or wear a fitted dust mask, and damp the debris: mites, mould and droppings make dust.");

    private static final List<OpeningRule> RULES = List.of(
            new ChalkbroodRule(),
            new MitesRule(),
            new FliesRule(),
            new WaspsRule(),
            new NestsIllRule(),
            new LotRule(),
            new RobbedRule(),
            new PollenBallsRule(),
            new BeetlesRule(),
            new MouldRule(),
            new DeadAdultsRule(),
            new DeadYoungRule(),
            new CuckoosRule(),
            new FewAliveRule(),
            new GivingRule(),
            new QuarantineRule(),
            new SmallStockRule());

    /** How many rules there are. */
    public static int rules() {
        return RULES.size();
    }

    /** What the rules find, most pressing first. */
    public List<Finding> findings() {
        return RULES.stream()
                .map(rule -> rule.find(this))
                .flatMap(Optional::stream)
                .sorted((a, b) -> b.level().compareTo(a.level()))
                .toList();
    }

    ReadLog read() {
        return new ReadLog(table);
    }

    boolean isMason() {
        return bees == BeeKind.MASON;
    }

    /** Cells lost to a cause. */
    int lost(Cause cause) {
        return losses.lostTo(cause);
    }

    /** So many of so many cells, as a share with its limits; null when there is none. */
    @Nullable
    Phrase seen(Cause... causes) {
        CellShare share = losses.share(causes);
        return share.total().found() == 0 ? null : seen(share);
    }

    /** So many of so many cells, as a share with its limits. */
    static Phrase seen(CellShare share) {
        return Phrase.of(
                "{} of {} cells, {} ({} to {})",
                Quantity.count(share.total().found()),
                Quantity.count(share.total().of()),
                Quantity.share(share.share()),
                Quantity.share(share.limits().low()),
                Quantity.share(share.limits().high()));
    }
}
