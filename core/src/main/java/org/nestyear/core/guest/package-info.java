/** Who else lives in the tunnels: the plug card and the enemies of brood. */
@NullMarked
package org.nestyear.core.guest;

import org.jspecify.annotations.NullMarked;
