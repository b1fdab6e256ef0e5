package org.nestyear.records;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.nestyear.records.book.By;
import org.nestyear.records.book.Change;
import org.nestyear.records.book.EntryCheck;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** A program that writes one entry after the other and tells the id of each once it is kept. */
final class Diary {
    static final String OWNER = "keeper";
    private static final Sheet SITE = Sheets.get("site");

    private final RecordBook book;
    private final By by;

    private Diary(OpenDatabase open, String who) {
        this.book = new RecordBook(open.source(), InstantSource.system(), new EntryCheck(Set.of("Osmia lignaria")));
        this.by = new By(OWNER, who);
    }

    static Diary in(OpenDatabase open, String who) {
        return new Diary(open, who);
    }

    /**
     * Writes until it is killed, or as many as told.
     *
     * @param arguments folder, who writes, how many entries (0 for no end)
     */
    public static void main(String[] arguments) {
        Diary diary = in(Database.open(new DatabaseAddress.InFolder(Path.of(arguments[0]))), arguments[1]);
        int most = Integer.parseInt(arguments[2]);
        // Told in one write each, so that what the reader gets is a line or none.
        for (int number = 1; most == 0 || number <= most; number++) {
            System.out.println(diary.write());
        }
    }

    /** Writes one entry and gives its id when it is kept. */
    String write() {
        String id = RecordBook.newId();
        Map<String, String> values = Map.of(
                "name", by.who() + " " + id, "latitude_deg", "40.78", "longitude_deg", "-73.97", "zone", "Etc/UTC");
        book.write(by, "wrote down", List.of(new Change.Add(SITE, id, values)));
        return id;
    }

    /** The ids of all entries kept. */
    List<String> ids() {
        return book.list(OWNER, Search.of(SITE)).stream()
                .map(entry -> entry.id())
                .toList();
    }
}
