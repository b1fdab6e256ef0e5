package org.nestyear.core.advice.sight;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.release.Seen;
import org.nestyear.core.release.Sighting;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;

/**
 * A sighting and what is known of the place.
 *
 * @param inputs what the keeper told
 * @param species the bees
 * @param sighting how usual it is
 */
public record SightCase(SeasonInputs inputs, Species species, Sighting sighting) {
    private static final List<SightRule> RULES = List.of(
            new NoTunnelFitsRule(),
            new ColdDaysRule(),
            new TooFewRule(),
            new CocoonsStuckRule(),
            new FlewOffRule(),
            new NoMudRule(),
            new RobbedRule(),
            new ShadedFrontRule());

    /** What may be behind it, most pressing first; nothing while waiting is all there is to do. */
    public List<Finding> causes() {
        return RULES.stream()
                .map(rule -> rule.find(this))
                .flatMap(Optional::stream)
                .sorted((a, b) -> b.level().compareTo(a.level()))
                .toList();
    }

    ReadLog read() {
        return new ReadLog(species.parameters());
    }

    /** Tunnels not narrower than a width, in mm. */
    int tunnelsFrom(double widthMm) {
        return inputs.nests().stream()
                .filter(row -> row.holeWidthMm() >= widthMm)
                .mapToInt(Nests::count)
                .sum();
    }

    /** True when bees fly and none nests. */
    boolean nothingNests() {
        return sighting.seen() == Seen.FEMALES;
    }
}
