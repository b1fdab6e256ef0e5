/** Flowers in reach: what plants give, what cells need, the weeks that fall short and the plants that would close them. */
@NullMarked
package org.nestyear.core.forage;

import org.jspecify.annotations.NullMarked;
