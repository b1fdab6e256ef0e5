package org.nestyear.app.web;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.nestyear.app.service.RecordsHome;

/**
 * How the pages are to be served.
 *
 * @param port the port asked for, 0 for any free one; empty for 8080 or the next free one
 * @param browser whether to open the keeper's browser
 * @param token whether the address must carry the launch token
 * @param data the data folder asked for
 * @param database the address of a PostgreSQL database asked for, which may hold a password
 */
record ServeOptions(
        Optional<Integer> port, boolean browser, boolean token, Optional<Path> data, Optional<String> database) {
    private static final int HIGHEST_PORT = 65_535;
    private static final String PORT = "--port";
    private static final String DATA = "--data";
    private static final String DATABASE = "--database";
    private static final Set<String> VALUED = Set.of(PORT, DATA, DATABASE);

    static final String USAGE = """
            Usage: nestyear serve [--port N] [--no-browser] [--no-token] [--data FOLDER] [--database URL]
              --port N       port on this computer, 0 for any free one; without it 8080 or the next free one
              --no-browser   only print the address
              --no-token     let every program on this computer read the pages
              --data FOLDER  folder of the records (default: NESTYEAR_HOME, else the user's data folder)
              --database URL records in PostgreSQL, jdbc:postgresql://HOST:PORT/NAME (default: NESTYEAR_DATABASE)""";

    /**
     * Reads the words after {@code serve}.
     *
     * @throws IllegalArgumentException with one sentence if a word is not understood
     */
    static ServeOptions parse(String... words) {
        Map<String, String> told = new HashMap<>();
        boolean browser = true;
        boolean token = true;
        for (int i = 0; i < words.length; i++) {
            String word = words[i];
            String name = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            if (word.equals("--no-browser")) {
                browser = false;
            } else if (word.equals("--no-token")) {
                token = false;
            } else if (!VALUED.contains(name)) {
                throw new IllegalArgumentException("serve does not know \"" + name
                        + "\"; expected --port N, --no-browser, --no-token, --data FOLDER or --database URL.");
            } else if (word.equals(name)) {
                i++;
                told.put(name, i < words.length ? words[i] : "");
            } else {
                told.put(name, word.substring(name.length() + 1));
            }
        }
        return new ServeOptions(
                Optional.ofNullable(told.get(PORT)).map(ServeOptions::port),
                browser,
                token,
                Optional.ofNullable(told.get(DATA)).map(ServeOptions::folder),
                Optional.ofNullable(told.get(DATABASE)));
    }

    /**
     * Where the records are.
     *
     * @throws org.nestyear.app.service.Refusal if the folder cannot be made or the address is none
     */
    RecordsHome home(Map<String, String> environment) {
        return RecordsHome.of(environment, data.orElse(null), database.orElse(null));
    }

    private static Path folder(String word) {
        try {
            if (!word.isBlank()) {
                return Path.of(word);
            }
        } catch (InvalidPathException e) {
            // Told below, together with no word at all.
        }
        throw new IllegalArgumentException("--data is \"" + word + "\"; expected a folder.");
    }

    private static int port(String word) {
        try {
            int port = Integer.parseInt(word);
            if (port >= 0 && port <= HIGHEST_PORT) {
                return port;
            }
        } catch (NumberFormatException e) {
            // Told below, together with numbers that are no port.
        }
        throw new IllegalArgumentException(
                "--port is \"" + word + "\"; expected a whole number from 0 to " + HIGHEST_PORT + ".");
    }
}
