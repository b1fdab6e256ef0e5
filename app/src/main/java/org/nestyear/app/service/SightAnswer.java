package org.nestyear.app.service;

import java.util.List;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.release.Sighting;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.species.Species;

/**
 * Whether what is seen is normal.
 *
 * @param causes what else to look for, most pressing first; empty while waiting is all there is to do
 */
public record SightAnswer(
        Species species, Sighting sighting, List<Finding> causes, List<Parameter> basis, String fingerprint) {
    /** Chance from which it is no surprise; numerical. */
    private static final double USUAL = 0.25;
    /** Chance under which it is unusual; numerical. */
    private static final double UNUSUAL = 0.05;

    public SightAnswer {
        causes = List.copyOf(causes);
        basis = List.copyOf(basis);
    }

    /** How usual it is, in a word: normal, late or unusual. */
    public String verdict() {
        double chance = sighting.chance();
        return chance >= USUAL ? "normal" : chance >= UNUSUAL ? "late" : "unusual";
    }
}
