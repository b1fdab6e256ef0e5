/** Years ahead: how a stock has grown and how likely it reaches a number. */
@NullMarked
package org.nestyear.core.outlook;

import org.jspecify.annotations.NullMarked;
