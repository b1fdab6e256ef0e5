package org.nestyear.app.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.RecordsHome;
import picocli.CommandLine.Option;

/** Options that say where the records are. */
final class RecordsPlace {
    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "The folder of the records (default: NESTYEAR_HOME, else the user's data folder).")
    @Nullable
    Path data;

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = "A PostgreSQL database, jdbc:postgresql://HOST:PORT/NAME (default: NESTYEAR_DATABASE).")
    @Nullable
    String database;

    /** Where they are; the folder is made if it is not there. */
    RecordsHome home() {
        return RecordsHome.of(System.getenv(), data, database);
    }
}
