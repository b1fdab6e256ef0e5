/** The pages: a small server for this computer only, its guards, and what each page shows. */
@NullMarked
package org.nestyear.app.web;

import org.jspecify.annotations.NullMarked;
