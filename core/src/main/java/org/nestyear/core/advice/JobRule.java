package org.nestyear.core.advice;

import java.util.Optional;

/** Turns a situation into one job, if there is one. */
public interface JobRule {
    /** The job with its computed window, number, reason and basis, or nothing when there is nothing to do. */
    Optional<Job> find(Situation situation);
}
