/** Cleaning of gear and cocoons: how strong a rinse is, and what may be rinsed at all. */
@NullMarked
package org.nestyear.core.hygiene;

import org.jspecify.annotations.NullMarked;
