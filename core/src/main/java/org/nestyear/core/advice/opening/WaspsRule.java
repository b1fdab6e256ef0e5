package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.source.ReadLog;

/** Parasitoid wasps: take nests in earlier, keep them behind fine mesh, trap in the store. */
final class WaspsRule implements OpeningRule {
    @Override
    public Optional<Finding> find(OpeningCase opened) {
        if (opened.lost(Cause.WASPS) == 0) {
            return Optional.empty();
        }
        ReadLog read = opened.read();
        CellShare share = opened.losses().share(Cause.WASPS);
        boolean mason = opened.isMason();
        double usual = read.value(mason ? "wasps_share_mason" : "lot_parasitised_most");
        CellShare.Standing standing = share.against(usual);
        Phrase what = Phrase.of(
                "{}",
                standing == CellShare.Standing.ABOVE
                        ? Phrase.of("Parasitoid wasps took more than elsewhere.")
                        : standing == CellShare.Standing.BELOW
                                ? Phrase.of("Parasitoid wasps took less than elsewhere.")
                                : Phrase.of(
                                        "Parasitoid wasps were here; whether more than elsewhere these cells cannot tell."));
        return Optional.of(new Finding(
                "parasitoid-wasps",
                standing == CellShare.Standing.ABOVE ? Level.ACT : Level.WATCH,
                what,
                OpeningCase.seen(share),
                mason
                        ? Phrase.of("{} in two years of Colorado nests", new Quantity(usual, Unit.SHARE, 1))
                        : Phrase.of("{} at most in a good lot", Quantity.share(usual)),
                mason
                        ? Phrase.of(
                                "Bin cocoons with pinholes, sealed. Next year bring nests in once the young have spun, before"
                                        + " wasps build up, into mesh finer than {}; in the store a light over soapy water"
                                        + " catches wasps.",
                                Quantity.millimetres(read.value("wasp_mesh_mm")))
                        : Phrase.of(
                                "Cells with pinholes go in the bin, sealed. When warming, wasps come out days before the first"
                                        + " bee: watch and trap them over soapy water in those days (see warm), and do not"
                                        + " let them out near filled nests."),
                Phrase.of(
                        "No insect strips in rooms where people or food are. Keep electric lights and cords away from water."
                                + " Dust: a fitted mask."),
                read.read()));
    }
}
