package org.nestyear.app.service;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.data.FaultCode;
import org.nestyear.data.TextSource;

/** The invented season that comes with the program. */
public final class Demo {
    private static final String FOLDER = "/demo/";
    private static final String SEASON = "tansy-lane.toml";
    private static final String WEATHER = "tansy-lane-weather.csv";

    private Demo() {}

    static TextSource source() {
        return TextSource.ofResource(Demo.class, FOLDER + SEASON);
    }

    /** Its weather table, which is real. */
    public static String weather() {
        try (InputStream content = Demo.class.getResourceAsStream(FOLDER + WEATHER)) {
            if (content == null) {
                throw new IllegalStateException("the program lacks its demo file " + WEATHER);
            }
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Writes the season file and its weather into a folder, which is made if need be.
     *
     * @return the files written, the season first
     * @throws Refusal if one of them is there already, or the folder cannot be written; then nothing is written
     */
    public static List<Path> write(Path folder) {
        List<Path> targets = List.of(folder.resolve(SEASON), folder.resolve(WEATHER));
        for (Path target : targets) {
            if (Files.exists(target)) {
                throw exists(target);
            }
        }
        List<Path> written = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            for (Path target : targets) {
                try (InputStream content = Demo.class.getResourceAsStream(FOLDER + target.getFileName())) {
                    if (content == null) {
                        throw new IllegalStateException("the program lacks its demo file " + target.getFileName());
                    }
                    Files.copy(content, target);
                    written.add(target);
                }
            }
            return written;
        } catch (FileAlreadyExistsException e) {
            throw exists(folder);
        } catch (IOException e) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    FaultCode.FILE_UNREADABLE.code(),
                    folder.toString(),
                    "the demo cannot be written there; expected a folder you may write to.",
                    "");
        }
    }

    private static Refusal exists(Path target) {
        return new Refusal(
                Refusal.Kind.BAD_INPUT,
                FaultCode.FILE_EXISTS.code(),
                target.toString(),
                "something of that name is there already, and nothing is overwritten; expected an empty folder.",
                "Maybe choose another folder.");
    }
}
