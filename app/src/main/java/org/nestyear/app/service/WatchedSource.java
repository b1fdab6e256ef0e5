package org.nestyear.app.service;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.Map;
import org.nestyear.data.TextSource;

/** Files on disk that remember how they were when they were read, so that a change can be noticed without reading again. */
final class WatchedSource implements TextSource {
    private final Path path;
    private final Map<Path, String> stamps;

    private WatchedSource(Path path, Map<Path, String> stamps) {
        this.path = path;
        this.stamps = stamps;
    }

    static WatchedSource of(Path path) {
        return new WatchedSource(path, new LinkedHashMap<>());
    }

    /** The files looked at so far, each with its stamp. */
    Map<Path, String> stamps() {
        return Map.copyOf(stamps);
    }

    /** Time of the last change and size; the same text as long as the file is the same. */
    static String stamp(Path path) {
        try {
            BasicFileAttributes file = Files.readAttributes(path, BasicFileAttributes.class);
            return file.lastModifiedTime() + " " + file.size() + " " + file.fileKey();
        } catch (IOException e) {
            return "unreadable";
        }
    }

    @Override
    public String name() {
        return path.toString();
    }

    @Override
    public boolean exists() {
        note();
        return Files.exists(path);
    }

    @Override
    public byte[] bytes() throws IOException {
        note();
        return Files.readAllBytes(path);
    }

    @Override
    public TextSource beside(String relative) {
        return new WatchedSource(path.resolveSibling(relative), stamps);
    }

    // Noted before reading: a change during the reading is then noticed the next time.
    private void note() {
        stamps.putIfAbsent(path, stamp(path));
    }
}
