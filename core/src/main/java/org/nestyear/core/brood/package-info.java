/** From egg to adult in the nest: how warmth brings mason bees on through the summer. */
@NullMarked
package org.nestyear.core.brood;

import org.jspecify.annotations.NullMarked;
