/** Readers of weather files against files as they are found in the world. */
@NullMarked
package org.nestyear.checks.files;

import org.jspecify.annotations.NullMarked;
