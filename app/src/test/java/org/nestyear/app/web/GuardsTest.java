package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guards of the running server, asked over a plain socket, so that no client library smooths anything over. */
class GuardsTest {
    @TempDir
    static Path home;

    private static WebServer.Running server;

    @BeforeAll
    static void startServer() {
        server = OwnServer.start(home);
    }

    @AfterAll
    static void stopServer() {
        server.close();
    }

    @Test
    void itListensOnThisComputerOnly() throws Exception {
        assertThat(server.address()).startsWith("http://127.0.0.1:" + server.port() + "/?t=");
        for (InetAddress address :
                InetAddress.getAllByName(InetAddress.getLocalHost().getHostName())) {
            if (!address.isLoopbackAddress()) {
                try (Socket socket = new Socket()) {
                    socket.connect(new InetSocketAddress(address, server.port()), 500);
                    throw new AssertionError("it answers on " + address);
                } catch (IOException refused) {
                    assertThat(refused).isNotNull();
                }
            }
        }
    }

    @Test
    void aForeignNameIsRefusedEvenWithTheToken() throws Exception {
        assertThat(ask("GET", "/?t=" + server.token().value(), "Host: evil.example"))
                .startsWith("HTTP/1.1 400");
        assertThat(ask("GET", "/healthz", "Host: evil.example:" + server.port()))
                .startsWith("HTTP/1.1 400");
        assertThat(ask("GET", "/healthz", "Host: localhost:" + server.port())).startsWith("HTTP/1.1 200");
    }

    @Test
    void withoutTheTokenThereIsOnlyAPageThatTellsHowToGetIn() throws Exception {
        for (String path :
                new String[] {"/", "/release", "/seasons", "/error", "/?t=", "/?t=guess", "/application.properties"}) {
            String answer = ask("GET", path, own());
            assertThat(answer).as(path).startsWith("HTTP/1.1 403").contains("start address only");
            assertThat(answer)
                    .as(path)
                    .doesNotContain("Set-Cookie")
                    .doesNotContain(server.token().value());
        }
        assertThat(ask("GET", "/healthz", own())).startsWith("HTTP/1.1 200").endsWith("ok\n");
    }

    @Test
    void theTokenOpensASessionByAStrictCookieAndLeavesTheAddress() throws Exception {
        String answer = ask("GET", "/?t=" + server.token().value(), own());
        assertThat(answer).startsWith("HTTP/1.1 302");
        assertThat(header(answer, "Location")).isEqualTo("http://127.0.0.1:" + server.port() + "/");
        assertThat(header(answer, "Set-Cookie")).contains("HttpOnly").contains("SameSite=Strict");
        assertThat(ask("GET", "/seasons", own(), cookie())).startsWith("HTTP/1.1 200");
        assertThat(ask("GET", "/nowhere", own(), cookie()))
                .startsWith("HTTP/1.1 404")
                .contains("There is no such page");
    }

    @Test
    void aFormWithoutItsProofIsRefusedAndChangesNothing() throws Exception {
        String cookie = cookie();
        for (String path : new String[] {"/seasons/demo", "/seasons/path", "/seasons/again", "/release/aim"}) {
            assertThat(post(path, "path=x&id=x&aim=brood", cookie)).as(path).startsWith("HTTP/1.1 403");
        }
        assertThat(post("/seasons/demo", "_csrf=guess", cookie)).startsWith("HTTP/1.1 403");
        assertThat(ask("GET", "/seasons", own(), cookie)).doesNotContain("Seasons opened before");
    }

    @Test
    void aFormWithItsProofGetsOneSentenceForABadPath() throws Exception {
        String cookie = cookie();
        String path = home.resolve("none.toml").toString();
        String answer = post("/seasons/path", "_csrf=" + proof(cookie) + "&path=" + encode(path), cookie);
        assertThat(answer).startsWith("HTTP/1.1 422").contains(path).contains("(NY-FILE-MISSING)");
        Path markup = Files.writeString(home.resolve("markup.toml"), "\"<script>alert(1)</script>\" = 1\nformat = 1\n");
        answer = post("/seasons/path", "_csrf=" + proof(cookie) + "&path=" + encode(markup.toString()), cookie);
        assertThat(answer).startsWith("HTTP/1.1 422").doesNotContain("<script>alert");
    }

    @Test
    void anAimThatIsNoneIsToldWithoutTheInsideOfTheProgram() throws Exception {
        String cookie = cookie();
        String answer = post("/release/aim", "_csrf=" + proof(cookie) + "&aim=honey", cookie);
        assertThat(answer)
                .startsWith("HTTP/1.1 400")
                .doesNotContain("Exception")
                .doesNotContain("org.nestyear");
    }

    @Test
    void everyAnswerForbidsForeignContent() throws Exception {
        for (String path : new String[] {"/", "/healthz", "/nestyear.css"}) {
            assertThat(header(ask("GET", path, own()), "Content-Security-Policy"))
                    .as(path)
                    .startsWith("default-src 'self';")
                    .contains("script-src 'self'")
                    .contains("frame-ancestors 'none'")
                    .doesNotContain("unsafe");
        }
    }

    private static String cookie() throws IOException {
        String cookie = header(ask("GET", "/?t=" + server.token().value(), own()), "Set-Cookie");
        return "Cookie: " + cookie.substring(0, cookie.indexOf(';'));
    }

    private static String proof(String cookie) throws IOException {
        Matcher field =
                Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"").matcher(ask("GET", "/seasons", own(), cookie));
        assertThat(field.find()).isTrue();
        return encode(field.group(1));
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String own() {
        return "Host: 127.0.0.1:" + server.port();
    }

    private static String post(String path, String form, String cookie) throws IOException {
        return exchange("POST " + path + " HTTP/1.1\r\n" + own() + "\r\n" + cookie
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + form.length()
                + "\r\nConnection: close\r\n\r\n" + form);
    }

    private static String ask(String method, String path, String... headers) throws IOException {
        return exchange(
                method + " " + path + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n");
    }

    private static String exchange(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.UTF_8));
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String header(String answer, String name) {
        return answer.lines()
                .takeWhile(line -> !line.isEmpty())
                .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ": "))
                .map(line -> line.substring(name.length() + 2))
                .findFirst()
                .orElse("");
    }
}
