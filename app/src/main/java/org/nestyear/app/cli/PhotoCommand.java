package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.nestyear.app.book.Photos;
import org.nestyear.app.book.ShownEntry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "photo", description = "Keep a picture of a site, house or nest in the records.")
final class PhotoCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "A JPEG, PNG or WebP of at most 20 MB.")
    Path file = Path.of("");

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "COLUMN=VALUE",
            description = "At least site and on_date; also house, nest, caption.")
    List<String> values = new ArrayList<>();

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    PhotoCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        ShownEntry entry = new Photos(records.desk(surroundings)).add(records.who(), file, KeptValues.of(values));
        options.printPage(surroundings, () -> EntryJson.written(entry), () -> EntryPrint.written("Kept", entry));
        return ExitCode.ANSWERED;
    }
}
