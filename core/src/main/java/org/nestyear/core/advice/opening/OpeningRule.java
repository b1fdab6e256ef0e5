package org.nestyear.core.advice.opening;

import java.util.Optional;
import org.nestyear.core.advice.Finding;

/** Looks at opened nests for one thing. */
interface OpeningRule {
    /** What was found, if there is something to say. */
    Optional<Finding> find(OpeningCase opened);
}
