/** Sun position, day length and light on a house front. */
@NullMarked
package org.nestyear.core.sun;

import org.jspecify.annotations.NullMarked;
