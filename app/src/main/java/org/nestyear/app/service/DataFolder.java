package org.nestyear.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The folder of the keeper's own records. */
public final class DataFolder {
    private DataFolder() {}

    /** {@code NESTYEAR_HOME}, else {@code nestyear} in {@code XDG_DATA_HOME}, else in {@code ~/.local/share}. */
    public static Path of(Map<String, String> environment, String userHome) {
        @Nullable String own = environment.get("NESTYEAR_HOME");
        if (own != null && !own.isBlank()) {
            return Path.of(own).toAbsolutePath();
        }
        @Nullable String shared = environment.get("XDG_DATA_HOME");
        Path data = shared == null || shared.isBlank() ? Path.of(userHome, ".local", "share") : Path.of(shared);
        return data.resolve("nestyear").toAbsolutePath();
    }

    /**
     * Makes the folder if it is not there, readable by its owner only where the system knows owners.
     *
     * @throws IllegalArgumentException with one sentence if it cannot be made
     */
    public static Path make(Path folder) {
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
                if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
                    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
                }
            }
            return folder;
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    "the data folder " + folder + " cannot be made; expected a place you may write to. Maybe set"
                            + " NESTYEAR_HOME to another folder.",
                    e);
        }
    }
}
