package org.nestyear.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The repository these tests run in. */
public final class Repository {
    private Repository() {}

    /** The folder with the parent build file. */
    public static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (folder != null && !Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
        }
        if (folder == null) {
            throw new IllegalStateException(
                    "no folder with .mvn above " + Path.of("").toAbsolutePath());
        }
        return folder;
    }

    /** Every module folder that has main code. */
    public static List<Path> modulesWithMainCode() {
        try (Stream<Path> folders = Files.list(root())) {
            return folders.filter(folder -> Files.isDirectory(folder.resolve("src/main/java")))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every Java file below a folder, in order of path. */
    public static List<Path> javaFiles(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a file, which must be UTF-8. */
    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
