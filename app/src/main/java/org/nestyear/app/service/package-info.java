/** The use cases: what the command line and the pages both ask for, and the words both answer in. */
@NullMarked
package org.nestyear.app.service;

import org.jspecify.annotations.NullMarked;
