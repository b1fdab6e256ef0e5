package org.nestyear.app.service;

import java.util.List;
import org.nestyear.core.release.TorchCount;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.species.Species;

/**
 * How many females nest, by a count in the dark.
 *
 * @param females female cocoons put out
 */
public record TorchAnswer(Species species, int females, TorchCount count, List<Parameter> basis, String fingerprint) {
    /** Chance under which a count is unusually low, and above its complement unusually high; numerical. */
    private static final double UNUSUAL = 0.1;

    public TorchAnswer {
        basis = List.copyOf(basis);
    }

    /** How the count stands to what was to be expected, in a word: fewer, expected or more. */
    public String verdict() {
        if (count.lessChance() < UNUSUAL) {
            return "fewer";
        }
        return count.lessChance() > 1 - UNUSUAL
                        && count.nesting().middle() > count.expected().high()
                ? "more"
                : "expected";
    }
}
