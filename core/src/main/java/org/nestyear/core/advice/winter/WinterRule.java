package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;

/** Looks at a winter for one thing. */
interface WinterRule {
    /** The finding, if there is one. */
    Optional<Finding> find(WinterCheck check);
}
