/** The extended spring index: first leaf and first bloom of three indicator plants from daily temperatures. */
@NullMarked
package org.nestyear.core.bloom.spring;

import org.jspecify.annotations.NullMarked;
