/** Readers of files: weather, season and catalogue tables, with exact positions of every fault. */
@NullMarked
package org.nestyear.data;

import org.jspecify.annotations.NullMarked;
