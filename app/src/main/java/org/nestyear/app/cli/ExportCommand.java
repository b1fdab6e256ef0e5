package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.AccountArchive;
import org.nestyear.app.book.EntriesQuestion;
import org.nestyear.app.book.JobCalendar;
import org.nestyear.app.book.OpenFiles;
import org.nestyear.app.book.RecordsDesk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "export",
        description = "Write the whole account as one archive, one table as CSV, or what others can read.")
final class ExportCommand implements Callable<Integer> {
    private static final String ARCHIVE = "archive";

    private final Surroundings surroundings;

    @Parameters(paramLabel = "FILE", description = "The file to write; nothing is overwritten.")
    Path file = Path.of("");

    @Option(
            names = "--as",
            paramLabel = "WHAT",
            description = "archive (default), darwin-core, geojson, calendar, or the name of a table for CSV.")
    String what = ARCHIVE;

    @Option(
            names = "--places",
            paramLabel = "HOW",
            description = "For darwin-core and geojson: 10km (default), 1km, 100km, or exact, with names.")
    String places = "10km";

    @Option(names = "--today", paramLabel = "DATE", description = "For the calendar: the day it is made for.")
    @Nullable
    String today;

    @Mixin
    RecordsOptions records = new RecordsOptions();

    @Mixin
    AnswerOptions options = new AnswerOptions();

    ExportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RecordsDesk desk = records.deskThatIsThere(surroundings);
        LocalDate day = today == null ? surroundings.today() : Arguments.date("--today", today);
        switch (what) {
            case ARCHIVE -> {
                AccountArchive.Contents contents = desk.writeArchive(file, new Progress(surroundings)::reached);
                print(contents.all(), ExchangePrint.archiveWritten(file, contents.all()));
            }
            case "darwin-core" -> {
                int seen = new OpenFiles(desk).writeDarwinCore(file, places, day);
                print(seen, ExchangePrint.darwinCoreWritten(file, seen, places));
            }
            case "geojson" -> {
                new OpenFiles(desk).writeGeoJson(file, places);
                int sites = desk.count(new EntriesQuestion("site", "", 0, 1, 0));
                print(sites, ExchangePrint.geoJsonWritten(file, sites, places));
            }
            case "calendar" -> {
                JobCalendar.Made made = new JobCalendar(desk, records.folder()).write(file, day);
                made.unplanned().forEach(line -> surroundings.err().println("not planned: " + line));
                print(made.jobs(), ExchangePrint.calendarWritten(file, made.jobs()));
            }
            default -> {
                int rows = desk.writeCsv(what, file);
                print(rows, ExchangePrint.tableWritten(file, what, rows));
            }
        }
        return ExitCode.ANSWERED;
    }

    private void print(int rows, String text) {
        options.printPage(surroundings, () -> ExchangePrint.exportJson(file, what, rows), () -> text);
    }
}
