package org.nestyear.app.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.Demo;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** The invented account that comes with the program: three years of three gardens. One act, so that one undo takes it out. */
public final class DemoAccount {
    /** Words of the act that wrote it. */
    static final String WORDS = "opened the invented account of Tansy Lane";

    private static final String FOLDER = "/demo/records/";
    private static final String WEATHER = "weather/tansy-lane-weather.csv";

    private DemoAccount() {}

    /**
     * Writes the account into records that hold nothing yet, and its weather table, which is real, beside them.
     *
     * @param folder the folder of the records
     * @throws Refusal if the records hold something already, or the weather cannot be written
     */
    public static DoneAct open(RecordsDesk records, String who, Path folder) {
        BookDesk desk = records.desk();
        if (desk.count(Search.of(Sheets.get("site"))) > 0) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-DEMO-RECORDS",
                    "",
                    "there are records here already, and invented ones are not mixed with real ones; expected an empty"
                            + " account.",
                    "Maybe choose another folder with --data.");
        }
        writeWeather(folder.resolve(WEATHER));
        Names names = desk.names();
        List<Change> changes = new ArrayList<>();
        SheetFiles files = new SheetFiles(desk);
        for (Sheet sheet : Sheets.list()) {
            TextSource table = TextSource.ofResource(DemoAccount.class, FOLDER + sheet.name() + ".csv");
            if (table.exists()) {
                files.plan(sheet, table, names)
                        .lines()
                        .forEach(line -> line.change().ifPresent(changes::add));
            }
        }
        Act act = BookDesk.guarded(
                () -> desk.book().write(desk.by(who), WORDS, changes).orElseThrow());
        return DoneAct.of(act);
    }

    private static void writeWeather(Path file) {
        try {
            Path folder = file.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            if (!Files.exists(file)) {
                Files.write(file, Demo.weather().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-FILE-UNREADABLE",
                    file.toString(),
                    "the weather table of the demo cannot be written; expected a folder you may write to.",
                    "");
        }
    }
}
