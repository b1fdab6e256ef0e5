/** Pictures drawn as SVG text from values: scales, axes and the release curve. Pure functions, no colours of their own. */
@NullMarked
package org.nestyear.app.picture;

import org.jspecify.annotations.NullMarked;
