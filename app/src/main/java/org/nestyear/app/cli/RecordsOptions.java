package org.nestyear.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.service.Refusal;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of every command that works on the keeper's records. */
final class RecordsOptions {
    @Mixin
    RecordsPlace place = new RecordsPlace();

    @Option(names = "--who", paramLabel = "NAME", description = "Who did or saw it (default: the user's name here).")
    @Nullable
    String who;

    /** The data folder, made if it is not there. */
    Path folder() {
        return place.home().folder();
    }

    /** Where records are written; the folder is made if it is not there. */
    RecordsDesk desk(Surroundings surroundings) {
        return RecordsDesk.at(place.home(), surroundings.clock());
    }

    /** The folder asked for, which must be there: a question makes none. */
    RecordsDesk deskThatIsThere(Surroundings surroundings) {
        Path data = place.data;
        if (data != null && !Files.isDirectory(data)) {
            throw Refusal.usage("--data is \"" + data + "\", which is not there; expected the folder of records.", "");
        }
        return desk(surroundings);
    }

    /** The person who writes. */
    String who() {
        String name = who == null ? System.getProperty("user.name", "") : who;
        return name.isBlank() ? "keeper" : name.strip();
    }
}
