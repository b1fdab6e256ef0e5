package org.nestyear.app.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.Backups;
import org.nestyear.records.DatabaseAddress;
import org.nestyear.records.Restore;
import org.nestyear.records.UnreadableRecordsException;
import org.nestyear.records.book.Sheets;

/**
 * A copy of the records that was made, or put in their place.
 *
 * @param records where the records are, in words
 * @param file the copy
 * @param bytes size of the copy
 * @param replaced where the records went that were there before, when a copy took their place and there were any
 * @param tables version of the tables in the copy
 * @param rows rows of every table in the copy by its name
 */
public record RecordsCopy(
        String records, Path file, long bytes, Optional<Path> replaced, int tables, Map<String, Long> rows) {

    /**
     * Copies the records while others go on writing.
     *
     * @param to the file to write, or a folder for it; null for one named by the moment among the daily copies
     * @param overwrite whether a file of that name may be replaced
     * @throws Refusal if there are none, a server has them, or the copy cannot be made
     */
    public static RecordsCopy make(RecordsHome home, @Nullable Path to, boolean overwrite, LocalDateTime now) {
        DatabaseAddress.InFolder records = file(home, "copies them");
        Path named = Backups.named(records.folder(), now);
        Path file = to == null ? named : Files.isDirectory(to) ? to.resolve(String.valueOf(named.getFileName())) : to;
        try {
            Backups.Copy copy = Backups.make(records, file, overwrite);
            return new RecordsCopy(
                    home.words(), copy.file(), copy.bytes(), Optional.empty(), copy.tables(), copy.rows());
        } catch (UnreadableRecordsException e) {
            throw RecordsHome.refusal(e);
        }
    }

    /**
     * Reads a copy through and puts it in the place of the records; those are kept beside it.
     *
     * @throws Refusal if the copy is not whole or not ours, or somebody uses the records; nothing has been replaced then
     */
    public static RecordsCopy putBack(RecordsHome home, Path from, LocalDateTime now) {
        DatabaseAddress.InFolder records = file(home, "brings them back");
        try {
            Restore.Restored done = Restore.restore(records, from, now);
            return new RecordsCopy(
                    home.words(), done.from(), done.bytes(), done.replaced(), done.tables(), done.rows());
        } catch (UnreadableRecordsException e) {
            throw RecordsHome.refusal(e);
        }
    }

    /** How many entries the keeper wrote that are in the copy. */
    public long entries() {
        return rows.entrySet().stream()
                .filter(table -> Sheets.find(table.getKey()).isPresent())
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    private static DatabaseAddress.InFolder file(RecordsHome home, String does) {
        return home.file()
                .orElseThrow(() -> new Refusal(
                        Refusal.Kind.BAD_INPUT,
                        "NY-RECORDS-ON-SERVER",
                        "",
                        "the records are in " + home.words() + ", where the server's own tool " + does
                                + "; expected records in a file.",
                        "Maybe use pg_dump and pg_restore there, or nestyear export for an archive that any Nestyear"
                                + " reads."));
    }
}
