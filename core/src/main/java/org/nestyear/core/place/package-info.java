/** Places: latitude, longitude, elevation, zone, facing and horizon. */
@NullMarked
package org.nestyear.core.place;

import org.jspecify.annotations.NullMarked;
