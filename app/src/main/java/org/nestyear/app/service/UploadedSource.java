package org.nestyear.app.service;

import java.io.FileNotFoundException;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.data.TextSource;

/**
 * Files that came through the browser. Browsers send no folders, so a file is found by its own name, whatever folder the
 * season file puts it in. Nothing on the disk is ever read for it.
 */
final class UploadedSource implements TextSource {
    private final String name;
    private final Map<String, byte[]> files;
    private final Set<String> read;

    private UploadedSource(String name, Map<String, byte[]> files, Set<String> read) {
        this.name = name;
        this.files = files;
        this.read = read;
    }

    /** The season file among its files. */
    static UploadedSource of(String seasonName, Map<String, byte[]> files) {
        return new UploadedSource(seasonName, Map.copyOf(files), new ConcurrentSkipListSet<>());
    }

    /** Names of the files read so far, the season file among them. */
    Set<String> read() {
        return Set.copyOf(read);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public boolean exists() {
        return files.containsKey(name);
    }

    @Override
    public byte[] bytes() throws FileNotFoundException {
        byte @Nullable [] bytes = files.get(name);
        if (bytes == null) {
            throw new FileNotFoundException(name);
        }
        read.add(name);
        return bytes.clone();
    }

    @Override
    public TextSource beside(String relative) {
        return new UploadedSource(lastName(relative), files, read);
    }

    /** The part of a path behind its last slash of either kind. */
    static String lastName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
