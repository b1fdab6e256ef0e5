package org.nestyear.data;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A text to be read, and the texts that lie beside it: on disk, or among the program's own resources. */
public interface TextSource {
    /** The name shown in messages. */
    String name();

    /** True when there is something to read. */
    boolean exists();

    /** The content. */
    byte[] bytes() throws IOException;

    /** The text with a name relative to this one. */
    TextSource beside(String relative);

    /** A file on disk, named in messages as the keeper named it. */
    static TextSource ofFile(Path path) {
        return new OnDisk(path);
    }

    /** A resource of the program, for instance the demo; {@code path} is absolute within the class path. */
    static TextSource ofResource(Class<?> anchor, String path) {
        return new InProgram(anchor, path);
    }

    /**
     * Texts held in memory, such as files that came through a browser.
     *
     * @param texts text of each file by the path under which others name it
     */
    static TextSource ofTexts(String name, Map<String, String> texts) {
        return new InMemory(name, texts);
    }

    /** A file on disk. */
    record OnDisk(Path path) implements TextSource {
        @Override
        public String name() {
            return path.toString();
        }

        @Override
        public boolean exists() {
            return Files.exists(path);
        }

        @Override
        public byte[] bytes() throws IOException {
            return Files.readAllBytes(path);
        }

        @Override
        public TextSource beside(String relative) {
            return new OnDisk(path.resolveSibling(relative));
        }
    }

    /** A resource on the class path. */
    record InProgram(Class<?> anchor, String path) implements TextSource {
        @Override
        public String name() {
            return path.substring(path.lastIndexOf('/') + 1);
        }

        @Override
        public boolean exists() {
            return anchor.getResource(path) != null;
        }

        @Override
        public byte[] bytes() throws IOException {
            try (InputStream stream = anchor.getResourceAsStream(path)) {
                if (stream == null) {
                    throw new FileNotFoundException(path);
                }
                return stream.readAllBytes();
            }
        }

        @Override
        public TextSource beside(String relative) {
            return new InProgram(anchor, path.substring(0, path.lastIndexOf('/') + 1) + relative);
        }
    }

    /** A text in memory; those beside it are named as others name them, without folders of their own. */
    record InMemory(String name, Map<String, String> texts) implements TextSource {
        public InMemory {
            texts = Map.copyOf(texts);
        }

        @Override
        public boolean exists() {
            return texts.containsKey(name);
        }

        @Override
        public byte[] bytes() throws IOException {
            String text = texts.get(name);
            if (text == null) {
                throw new FileNotFoundException(name);
            }
            return text.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public TextSource beside(String relative) {
            return new InMemory(relative, texts);
        }
    }
}
