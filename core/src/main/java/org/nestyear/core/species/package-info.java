/** Bee species: names, range, and their table of parameters. */
@NullMarked
package org.nestyear.core.species;

import org.jspecify.annotations.NullMarked;
