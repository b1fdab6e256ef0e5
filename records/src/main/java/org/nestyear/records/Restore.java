package org.nestyear.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.nestyear.records.UnreadableRecordsException.Reason;

/** Puts a copy in the place of the records. */
public final class Restore {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);
    /** Files that SQLite keeps beside a database while it is in use, by the ends of their names. */
    private static final List<String> COMPANIONS = List.of("-wal", "-journal", "-shm");

    private Restore() {}

    /**
     * What was done.
     *
     * @param file the records
     * @param from the copy they were taken from, which stays as it is
     * @param replaced where the records are now that were there before, empty when there were none
     * @param bytes size of the records now
     * @param tables version of the tables in the copy
     * @param rows rows of every table by its name
     */
    public record Restored(
            Path file, Path from, Optional<Path> replaced, long bytes, int tables, Map<String, Long> rows) {}

    /**
     * Puts a copy in the place of the records of a folder. The copy is read through first, and the records that were there
     * are kept beside it under a dated name.
     *
     * @param now the moment for the name of what was replaced
     * @throws UnreadableRecordsException if the copy is not there, damaged, foreign or newer than this program, or somebody
     *     uses the records; nothing has been replaced then
     */
    public static Restored restore(DatabaseAddress.InFolder records, Path from, LocalDateTime now) {
        Path copy = from.toAbsolutePath().normalize();
        if (copy.equals(records.file())) {
            throw new UnreadableRecordsException(
                    Reason.FOREIGN,
                    "the file " + copy + " is the records themselves; expected a copy of them.",
                    "",
                    null);
        }
        // Before anything is locked or written: most refusals end here.
        SqliteFile.verify(copy, copy);
        Runnable hold = hold(records);
        Path incoming = records.folder().resolve(Database.FILE_NAME + ".restoring");
        try {
            remove(incoming);
            SqliteFile.Contents contents = bringIn(copy, incoming);
            Optional<Path> replaced = putAside(records, now);
            SqliteCopy.replace(incoming, records.file());
            return new Restored(
                    records.file(), copy, replaced, Files.size(records.file()), contents.tables(), contents.rows());
        } catch (IOException e) {
            throw new UnreadableRecordsException(
                    Reason.UNWRITABLE,
                    "the records in " + records.words()
                            + " cannot be replaced; expected a folder that you may write and room on its disk.",
                    "",
                    e);
        } finally {
            removeQuietly(incoming);
            hold.run();
        }
    }

    private static Runnable hold(DatabaseAddress.InFolder records) {
        try {
            return FolderLock.alone(records.folder())
                    .orElseThrow(() -> new UnreadableRecordsException(
                            Reason.IN_USE,
                            "the records in " + records.words()
                                    + " are in use; expected that no program has them open while they are replaced.",
                            "Maybe stop nestyear serve first.",
                            null));
        } catch (UncheckedIOException e) {
            throw Sqlite.readOnly(records, e);
        }
    }

    // What is checked is what is put in place: the file is copied first, with the log that SQLite may have left beside
    // it.
    private static SqliteFile.Contents bringIn(Path copy, Path incoming) throws IOException {
        Files.copy(copy, incoming);
        for (String companion : List.of("-wal", "-journal")) {
            if (Files.exists(beside(copy, companion))) {
                Files.copy(beside(copy, companion), beside(incoming, companion));
            }
        }
        try {
            SqliteFile.settle(incoming);
        } catch (SQLException e) {
            throw SqliteFile.refusal(copy, e);
        }
        SqliteFile.Contents contents = SqliteFile.verify(incoming, copy);
        SqliteCopy.sync(incoming);
        for (String companion : COMPANIONS) {
            Files.deleteIfExists(beside(incoming, companion));
        }
        return contents;
    }

    // The old records get a second name before they lose their first, so that at no moment there are none. A log of
    // theirs
    // that could not be folded in, because they are damaged, goes with them: beside the new file it would spoil it.
    private static Optional<Path> putAside(DatabaseAddress.InFolder records, LocalDateTime now) throws IOException {
        Path file = records.file();
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            SqliteFile.settle(file);
        } catch (SQLException e) {
            // Damaged records are set aside as they are.
        }
        Path aside = free(records.folder(), "nestyear-replaced-" + MOMENT.format(now));
        try {
            Files.createLink(aside, file);
        } catch (IOException | UnsupportedOperationException e) {
            Files.copy(file, aside, StandardCopyOption.COPY_ATTRIBUTES);
            SqliteCopy.sync(aside);
        }
        for (String companion : List.of("-wal", "-journal")) {
            if (Files.exists(beside(file, companion))) {
                SqliteCopy.replace(beside(file, companion), beside(aside, companion));
            }
        }
        Files.deleteIfExists(beside(file, "-shm"));
        return Optional.of(aside);
    }

    private static Path free(Path folder, String name) {
        Path path = folder.resolve(name + ".sqlite");
        for (int number = 2; Files.exists(path); number++) {
            path = folder.resolve(name + "-" + number + ".sqlite");
        }
        return path;
    }

    private static Path beside(Path file, String companion) {
        return file.resolveSibling(file.getFileName() + companion);
    }

    private static void remove(Path file) throws IOException {
        Files.deleteIfExists(file);
        for (String companion : COMPANIONS) {
            Files.deleteIfExists(beside(file, companion));
        }
    }

    private static void removeQuietly(Path file) {
        try {
            remove(file);
        } catch (IOException e) {
            // What is left over is removed by the next restore.
        }
    }
}
