package org.nestyear.app.web;

import java.nio.file.Path;

/**
 * The folder of the keeper's records.
 *
 * @param path weather tables lie in it
 */
record KeptFolder(Path path) {}
