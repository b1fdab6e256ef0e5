package org.nestyear.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Copies of the records beside the records: those of every day, and those that are asked for. */
public final class Backups {
    /** Name of the folder of copies inside the data folder. */
    public static final String FOLDER_NAME = "backups";

    private static final Pattern DAILY = Pattern.compile("nestyear-(\\d{4}-\\d{2}-\\d{2})\\.sqlite");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

    private Backups() {}

    /**
     * A copy that was made.
     *
     * @param file where it is
     * @param bytes its size
     * @param tables version of its tables
     * @param rows rows of every table by its name
     */
    public record Copy(Path file, long bytes, int tables, Map<String, Long> rows) {}

    /**
     * Copies the records as they are at one moment, while others go on writing.
     *
     * @param overwrite whether a file of that name may be replaced
     * @throws UnreadableRecordsException if there are no records, they are damaged, or the copy cannot be written
     */
    public static Copy make(DatabaseAddress.InFolder records, Path to, boolean overwrite) {
        if (!Files.exists(records.file())) {
            throw new UnreadableRecordsException(
                    UnreadableRecordsException.Reason.MISSING,
                    "there are no records in " + records.folder() + " yet; expected the file " + Database.FILE_NAME
                            + ".",
                    "Maybe they are in another folder: see --data.",
                    null);
        }
        SqliteFile.Contents contents = SqliteCopy.make(records.file(), to, overwrite);
        try {
            return new Copy(to.toAbsolutePath(), Files.size(to), contents.tables(), contents.rows());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file of a copy made at a moment, when no other name is given; the rotation leaves it alone. */
    public static Path named(Path dataFolder, LocalDateTime at) {
        return folder(dataFolder).resolve("nestyear-" + MOMENT.format(at) + ".sqlite");
    }

    /**
     * Makes the copy of a day, unless it is there, and then clears away the daily copies that {@link Rotation} does not
     * keep. The records must be open.
     *
     * @return empty when the copy was there
     * @throws UnreadableRecordsException as {@link #make}; nothing is cleared away then
     */
    public static Optional<Copy> daily(DatabaseAddress.InFolder records, LocalDate day) {
        Path file = folder(records.folder()).resolve("nestyear-" + day + ".sqlite");
        if (Files.exists(file)) {
            return Optional.empty();
        }
        return FolderLock.inTurn(records.folder(), () -> {
            if (Files.exists(file)) {
                return Optional.empty();
            }
            Copy copy = make(records, file, false);
            clear(records.folder());
            return Optional.of(copy);
        });
    }

    /** The copy made before the tables are brought forward to a version. */
    static Path beforeTables(Path dataFolder, int version) {
        return folder(dataFolder).resolve("nestyear-before-tables-" + version + ".sqlite");
    }

    private static Path folder(Path dataFolder) {
        return dataFolder.resolve(FOLDER_NAME);
    }

    private static void clear(Path dataFolder) {
        Map<LocalDate, Path> copies = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder(dataFolder))) {
            files.forEach(file -> dayOf(file).ifPresent(day -> copies.put(day, file)));
            for (LocalDate kept : Rotation.keep(copies.keySet())) {
                copies.remove(kept);
            }
            for (Path old : copies.values()) {
                Files.deleteIfExists(old);
            }
        } catch (IOException e) {
            // Too many copies do no harm; the next day tries again.
        }
    }

    private static Optional<LocalDate> dayOf(Path file) {
        Matcher name = DAILY.matcher(file.getFileName().toString());
        try {
            return name.matches() ? Optional.of(LocalDate.parse(name.group(1))) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
