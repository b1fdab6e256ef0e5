/** The command line: arguments in, text or JSON out. Nothing here starts the web server's libraries but "serve". */
@NullMarked
package org.nestyear.app.cli;

import org.jspecify.annotations.NullMarked;
