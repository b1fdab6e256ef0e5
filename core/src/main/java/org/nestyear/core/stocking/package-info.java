/** How many bees and tunnels: for a stock, for an orchard. */
@NullMarked
package org.nestyear.core.stocking;

import org.jspecify.annotations.NullMarked;
