package org.nestyear.app.web;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Opens the keeper's browser where there is a desktop. */
final class Browser {
    private Browser() {}

    /** The program that opens an address on this system, or nothing where there is no desktop. */
    static Optional<String> opener(String systemName, Map<String, String> environment) {
        if (systemName.toLowerCase(Locale.ROOT).startsWith("mac")) {
            return Optional.of("open");
        }
        boolean desktop = environment.containsKey("DISPLAY") || environment.containsKey("WAYLAND_DISPLAY");
        return desktop ? Optional.of("xdg-open") : Optional.empty();
    }

    /** Opens an address; false if there is no desktop or nothing to open it with. */
    static boolean open(String address) {
        Optional<String> opener = opener(System.getProperty("os.name", ""), System.getenv());
        if (opener.isEmpty()) {
            return false;
        }
        try {
            new ProcessBuilder(List.of(opener.get(), address))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            // The address is on the terminal anyway.
            return false;
        }
    }
}
