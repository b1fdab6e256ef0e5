/** Where the program starts. */
@NullMarked
package org.nestyear.app;

import org.jspecify.annotations.NullMarked;
