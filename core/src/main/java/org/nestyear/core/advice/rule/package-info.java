/** One small class for each rule of the season from release to plugged tunnels. */
@NullMarked
package org.nestyear.core.advice.rule;

import org.jspecify.annotations.NullMarked;
