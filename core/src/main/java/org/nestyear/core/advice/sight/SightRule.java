package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;

/** Looks at a sighting for one cause. */
interface SightRule {
    /** The cause, if it is worth looking for. */
    Optional<Finding> find(SightCase sight);
}
