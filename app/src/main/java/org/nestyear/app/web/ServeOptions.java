package org.nestyear.app.web;

import java.util.Optional;

/**
 * How the pages are to be served.
 *
 * @param port the port asked for, 0 for any free one; empty for 8080 or the next free one
 * @param browser whether to open the keeper's browser
 * @param token whether the address must carry the launch token
 */
record ServeOptions(Optional<Integer> port, boolean browser, boolean token) {
    private static final int HIGHEST_PORT = 65_535;

    static final String USAGE = """
            Usage: nestyear serve [--port N] [--no-browser] [--no-token]
              --port N       port on this computer, 0 for any free one; without it 8080 or the next free one
              --no-browser   only print the address
              --no-token     let every program on this computer read the pages""";

    /**
     * Reads the words after {@code serve}.
     *
     * @throws IllegalArgumentException with one sentence if a word is not understood
     */
    static ServeOptions parse(String... words) {
        Optional<Integer> port = Optional.empty();
        boolean browser = true;
        boolean token = true;
        for (int i = 0; i < words.length; i++) {
            String word = words[i];
            if (word.equals("--no-browser")) {
                browser = false;
            } else if (word.equals("--no-token")) {
                token = false;
            } else if (word.startsWith("--port=")) {
                port = Optional.of(port(word.substring("--port=".length())));
            } else if (word.equals("--port")) {
                i++;
                port = Optional.of(port(i < words.length ? words[i] : ""));
            } else {
                throw new IllegalArgumentException(
                        "serve does not know \"" + word + "\"; expected --port N, --no-browser or --no-token.");
            }
        }
        return new ServeOptions(port, browser, token);
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
