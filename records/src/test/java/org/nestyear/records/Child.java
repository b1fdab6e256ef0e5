package org.nestyear.records;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/** Another Java program with the same classes, to be waited for or killed. */
final class Child implements AutoCloseable {
    private static final int PATIENCE_SECONDS = 120;

    private final Process process;
    private final BufferedReader out;

    private Child(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Starts the main method of a class; its messages go where ours go. */
    static Child start(Class<?> main, String... arguments) throws IOException {
        return start(List.of(), main, arguments);
    }

    /**
     * The same as a user to whom the rights of files apply: the superuser of the tests is past them otherwise. Where that
     * cannot be had, the test is skipped.
     */
    static Child startWithoutPowers(Class<?> main, String... arguments) throws IOException {
        if (!System.getProperty("user.name").equals("root")) {
            return start(main, arguments);
        }
        String powers = "-dac_override,-dac_read_search";
        Assumptions.assumeTrue(Path.of("/usr/bin/setpriv").toFile().canExecute(), "setpriv is not installed");
        return start(List.of("/usr/bin/setpriv", "--bounding-set=" + powers, "--inh-caps=" + powers), main, arguments);
    }

    private static Child start(List<String> before, Class<?> main, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        return new Child(builder.start());
    }

    /** Kills it at once; on Linux and macOS by SIGKILL, which no program can catch. */
    void kill() throws InterruptedException {
        // By its handle, which leaves open what it had still written.
        process.toHandle().destroyForcibly();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the child does not die");
        }
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Its next line; null at the end. */
    @Nullable
    String line() throws IOException {
        return out.readLine();
    }

    /** All lines to its end, which is waited for. */
    List<String> rest() throws IOException, InterruptedException {
        List<String> lines = out.lines().toList();
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the child does not end");
        }
        return lines;
    }

    /** The lines it had still written when it was killed; of the last one there may be only a part, which is left out. */
    List<String> wholeLines() throws IOException {
        StringBuilder text = new StringBuilder();
        for (int next = out.read(); next >= 0; next = out.read()) {
            text.append((char) next);
        }
        return text.substring(0, text.lastIndexOf("\n") + 1).lines().toList();
    }

    /** How it ended. */
    int exit() {
        return process.exitValue();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
