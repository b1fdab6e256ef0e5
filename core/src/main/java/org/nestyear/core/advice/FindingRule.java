package org.nestyear.core.advice;

import java.util.Optional;

/** Turns a situation into one finding, if there is one. */
public interface FindingRule {
    /** The finding with its number, limit, basis and action, or nothing when all is well. */
    Optional<Finding> find(Situation situation);
}
