package org.nestyear.app.service;

import org.nestyear.core.plan.Plan;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.species.Species;

/** Makes a plan; the model's own planner except in tests. */
public interface SeasonPlanner {
    /**
     * The plan for the batches of this species.
     *
     * @throws org.nestyear.core.release.NoAnswerException if no honest answer is possible
     */
    Plan plan(SeasonInputs inputs, Species species);
}
