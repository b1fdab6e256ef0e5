/** Use cases of the keeper's records: writing, correcting, taking back, files in and out, and what the records tell. */
@NullMarked
package org.nestyear.app.book;

import org.jspecify.annotations.NullMarked;
