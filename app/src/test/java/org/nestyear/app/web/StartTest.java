package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.cli.CommandSums;
import org.nestyear.app.service.DataFolder;

/** What happens before the server answers: its words, its port, its folder, its token. */
class StartTest {
    @Test
    void withoutWordsItTakesTheUsualPortOpensTheBrowserAndAsksForTheToken() {
        assertThat(ServeOptions.parse())
                .isEqualTo(new ServeOptions(Optional.empty(), true, true, Optional.empty(), Optional.empty()));
        assertThat(ServeOptions.parse("--port", "9000", "--no-browser"))
                .isEqualTo(new ServeOptions(Optional.of(9000), false, true, Optional.empty(), Optional.empty()));
        assertThat(ServeOptions.parse("--port=0", "--no-token"))
                .isEqualTo(new ServeOptions(Optional.of(0), true, false, Optional.empty(), Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--port", "--port=", "--port=http", "--port=-1", "--port=65536", "--prt=80", "now"})
    void aWordItDoesNotKnowIsToldInOneSentenceAndExitCodeTwo(String word) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        assertThat(start(out, err, word)).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith("nestyear: ")
                .contains("; expected ")
                .hasLineCount(1);
        assertThat(out.size()).isZero();
    }

    @Test
    void aPortInUseIsToldAndNeverTaken() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(taken.getLocalPort());
            assertThatThrownBy(() -> FreePort.choose(ServeOptions.parse("--port", port)))
                    .hasMessageContaining(port)
                    .hasMessageContaining("in use");
        }
        assertThat(FreePort.choose(ServeOptions.parse())).isBetween(8080, 8099);
    }

    @Test
    void helpAnswersOnStandardOutput() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(start(out, new ByteArrayOutputStream(), "--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("--no-browser");
    }

    @Test
    void theDataFolderFollowsTheEnvironment() {
        assertThat(DataFolder.of(Map.of("NESTYEAR_HOME", "/n", "XDG_DATA_HOME", "/x"), "/home/k"))
                .hasToString("/n");
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", "/x"), "/home/k")).hasToString("/x/nestyear");
        assertThat(DataFolder.of(Map.of("NESTYEAR_HOME", " "), "/home/k")).hasToString("/home/k/.local/share/nestyear");
    }

    @Test
    void aNewDataFolderIsItsOwnersAlone(@TempDir Path parent) throws Exception {
        Path folder = DataFolder.make(parent.resolve("a").resolve("b"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        Path file = Files.writeString(parent.resolve("file"), "x");
        assertThatThrownBy(() -> DataFolder.make(file.resolve("under")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Maybe set NESTYEAR_HOME");
    }

    @Test
    void tokensAreLongDifferentAndNeverShownByAccident() {
        LaunchToken one = LaunchToken.random();
        assertThat(one.value())
                .hasSizeGreaterThanOrEqualTo(32)
                .isNotEqualTo(LaunchToken.random().value());
        assertThat(one.matches(one.value())).isTrue();
        assertThat(one.matches(one.value() + "x")).isFalse();
        assertThat(one.matches(null)).isFalse();
        assertThat(one.toString()).doesNotContain(one.value());
        assertThat(LaunchToken.none().matches("")).isFalse();
    }

    @Test
    void theBrowserIsOpenedOnlyWhereThereIsADesktop() {
        assertThat(Browser.opener("Linux", Map.of())).isEmpty();
        assertThat(Browser.opener("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")))
                .contains("xdg-open");
        assertThat(Browser.opener("Mac OS X", Map.of())).contains("open");
    }

    private static int start(ByteArrayOutputStream out, ByteArrayOutputStream err, String... words) {
        return WebServer.start(
                words,
                new CommandSums(OwnServer.CLOCK),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }
}
