/** Where a house stands and looks: how warm its tunnels get, and which way suits which bees. */
@NullMarked
package org.nestyear.core.siting;

import org.jspecify.annotations.NullMarked;
