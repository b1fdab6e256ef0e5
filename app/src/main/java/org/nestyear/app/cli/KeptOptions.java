package org.nestyear.app.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.KeptAnswers;
import org.nestyear.app.service.Refusal;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of commands that take the keeper's records in place of a file. */
final class KeptOptions {
    @Option(names = "--site", paramLabel = "NAME", description = "Ask the records of this site in place of a file.")
    @Nullable
    String site;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    /** The site asked for, or null for the file; one of both must be told. */
    @Nullable
    String site(Path file) {
        boolean named = !file.toString().isEmpty();
        if (named == (site != null)) {
            throw Refusal.usage(
                    (named ? "a file and --site are both given" : "neither a file nor --site is given")
                            + "; expected one of them.",
                    "");
        }
        return site;
    }

    /** What answers from the records. */
    KeptAnswers answers(Surroundings surroundings) {
        return new KeptAnswers(records.deskThatIsThere(surroundings), records.folder());
    }
}
