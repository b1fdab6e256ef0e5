package org.nestyear.records;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Objects;
import org.nestyear.records.UnreadableRecordsException.Reason;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Copies of an SQLite file that is in use. */
final class SqliteCopy {
    private static final int BUSY_MILLISECONDS = 5000;

    private SqliteCopy() {}

    /**
     * Copies the records as they are at one moment, while others go on writing. The copy is read through and on the disk
     * before it gets its name, so that what has the name is whole.
     *
     * @param overwrite whether a file of that name may be replaced
     * @throws UnreadableRecordsException if the records are damaged or the copy cannot be written
     */
    static SqliteFile.Contents make(Path from, Path to, boolean overwrite) {
        Path target = to.toAbsolutePath();
        Path unfinished = target.resolveSibling(target.getFileName() + ".unfinished");
        try {
            Files.createDirectories(folderOf(target));
            refuseExisting(target, overwrite);
            Files.deleteIfExists(unfinished);
            try {
                vacuum(from, unfinished, target);
                SqliteFile.Contents contents = SqliteFile.verify(unfinished, from);
                sync(unfinished);
                refuseExisting(target, overwrite);
                replace(unfinished, target);
                return contents;
            } finally {
                Files.deleteIfExists(unfinished);
            }
        } catch (IOException e) {
            throw unwritable(target, e);
        }
    }

    private static void vacuum(Path from, Path to, Path shown) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MILLISECONDS);
        try (Connection connection = config.createConnection(Sqlite.url(from));
                PreparedStatement statement = connection.prepareStatement("VACUUM INTO ?")) {
            statement.setString(1, to.toString());
            statement.execute();
        } catch (SQLException e) {
            throw isOfTarget(e) ? unwritable(shown, e) : SqliteFile.refusal(from, e);
        }
    }

    private static boolean isOfTarget(SQLException e) {
        SQLiteErrorCode code =
                e instanceof SQLiteException sqlite ? sqlite.getResultCode() : SQLiteErrorCode.SQLITE_ERROR;
        return switch (code) {
            case SQLITE_FULL, SQLITE_CANTOPEN, SQLITE_READONLY, SQLITE_IOERR, SQLITE_IOERR_WRITE -> true;
            default -> false;
        };
    }

    /** Puts a file in the place of another in one step, and waits until the disk has it. */
    static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
        syncFolder(folderOf(to));
    }

    /** Waits until the disk has the whole file. */
    static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    // A new name is on the disk only when its folder is. Some systems cannot open a folder; they need no telling.
    private static void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Said above.
        }
    }

    private static Path folderOf(Path target) {
        return Objects.requireNonNull(target.getParent(), "a file has a folder");
    }

    private static void refuseExisting(Path target, boolean overwrite) {
        if (Files.isDirectory(target) || (!overwrite && Files.exists(target))) {
            throw new UnreadableRecordsException(
                    Reason.EXISTS,
                    "there is a file " + target + " already; expected a name that is free.",
                    "Maybe choose another name, or allow it with --overwrite.",
                    null);
        }
    }

    private static UnreadableRecordsException unwritable(Path target, Throwable cause) {
        return new UnreadableRecordsException(
                Reason.UNWRITABLE,
                "the copy " + target + " cannot be written; expected a folder that you may write and room on its disk.",
                "",
                cause);
    }
}
