/** When bees leave their cocoons: cold readies, warmth releases. */
@NullMarked
package org.nestyear.core.emergence;

import org.jspecify.annotations.NullMarked;
