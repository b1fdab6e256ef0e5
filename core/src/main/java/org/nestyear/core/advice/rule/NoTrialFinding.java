package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Situation;

/** Says that the curve comes from a model and no trial has tested it. */
public final class NoTrialFinding implements FindingRule {
    @Override
    public Optional<Finding> find(Situation s) {
        return Optional.of(new Finding(
                "no-trial",
                Level.NOTE,
                Phrase.of(
                        "The curve is derived from a model and has not been tested in a release trial; food counts in it as"
                                + " bloom only, not as flowers for each bee."),
                null,
                null,
                Phrase.of("Trust your eyes first: bees, bloom and a mild week."),
                null,
                List.of()));
    }
}
