package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** Tunnels too narrow for these bees. */
final class NoTunnelFitsRule implements SightRule {
    @Override
    public Optional<Finding> find(SightCase sight) {
        ReadLog read = sight.read();
        double right = read.value("hole_width_mm");
        double narrowest = read.value("hole_width_narrowest_mm");
        if (!sight.nothingNests() || sight.tunnelsFrom(right) > 0) {
            return Optional.empty();
        }
        int usable = sight.tunnelsFrom(narrowest);
        return Optional.of(new Finding(
                "no-tunnel-fits",
                Level.ACT,
                usable == 0
                        ? Phrase.of("No tunnel is wide enough for these bees.")
                        : Phrase.of("No tunnel has the width they like best."),
                Phrase.of("{} tunnels from {} on", Quantity.count(usable), Quantity.millimetres(narrowest)),
                Phrase.of("{}", Quantity.millimetres(right).withDecimals(1)),
                Phrase.of(
                        "Hang a bundle of {} tunnels at the same place today.",
                        Quantity.millimetres(right).withDecimals(1)),
                null,
                read.read()));
    }
}
