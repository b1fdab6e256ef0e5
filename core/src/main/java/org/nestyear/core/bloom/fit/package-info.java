/** Models of a bloom date, fitted to a keeper's own dates and judged by leaving each year out. */
@NullMarked
package org.nestyear.core.bloom.fit;

import org.jspecify.annotations.NullMarked;
