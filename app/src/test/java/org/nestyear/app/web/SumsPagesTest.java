package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** Quick sums and Sources as the running server sends them, with no season opened. */
class SumsPagesTest {
    @TempDir
    static Path home;

    private static WebServer.Running server;
    private static HttpClient client;

    @BeforeAll
    static void startServer() throws Exception {
        server = OwnServer.start(home);
        client = HttpClient.newBuilder()
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        client.send(HttpRequest.newBuilder(URI.create(server.address())).build(), BodyHandlers.discarding());
    }

    @AfterAll
    static void stopServer() {
        server.close();
    }

    @Test
    void theListLinksToEveryCalculatorInTheUnitsChosen() throws Exception {
        String metric = get("/sums").body();
        String us = get("/sums?units=us").body();
        for (Sum sum : SumBook.all()) {
            assertThat(metric).contains("href=\"/sums/" + sum.slug() + "\"");
            assertThat(us).contains("href=\"/sums/" + sum.slug() + "?units=us\"");
        }
        assertThat(metric).contains("aria-current=\"page\">Quick sums");
        assertThat(get("/sums/none").statusCode()).isEqualTo(404);
    }

    @Test
    void anEmptyFormShowsOneWorkedExampleAndAnAddressThatFillsItIn() throws Exception {
        HttpResponse<String> empty = get("/sums/range");
        assertThat(empty.statusCode()).isEqualTo(200);
        assertThat(empty.body()).contains("A worked example", "such as 2.9", "Count on flowers within 150 m");
        assertThat(empty.body()).contains("href=\"/sums/range?span-mm=2.9\"").doesNotContain("value=\"2.9\"");
        assertThat(get("/sums/range?span-mm=2.9").body())
                .contains("The answer", "value=\"2.9\"", "<data value=\"150\">150 m</data>", "How well this is known");
    }

    /** The labels change and the values keep their meaning. */
    @Test
    void theOtherUnitsKeepWhatWasTyped() throws Exception {
        String metric = get("/sums/degree-days?min=4&max=17&base=5").body();
        String other = "/sums/degree-days?units=us&min=4C&max=17C&base=5C";
        assertThat(metric).contains("href=\"" + other.replace("&", "&amp;") + "\"");
        assertThat(get(other).body())
                .contains("Base, °F", "value=\"4C\"", "<data value=\"5.61863973\">10.1 °F-days</data>");
    }

    // The sentences are those of the command line, the option named as the form labels it.
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rinse?item=gear&label-percent=abc&bleach=60&water=4 | label-percent | “Sodium hypochlorite by the label, %” is "abc"; expected a number from 1 to 15 per cent. (NY-USAGE) | abc
            rinse?item=gear&label-percent=50&bleach=60&water=4 | label-percent | “Sodium hypochlorite by the label, %” is 50; expected a number from 1 to 15 per cent. (NY-USAGE) | 50
            rinse?item=gear&label-percent=5&bleach=60g&water=4 | bleach | “Bleach, ml” is "60g"; expected a volume with its unit | 60g
            interval?found=9&of=3 | found | “Found” is "9"; expected no more found than looked at. (NY-USAGE) Maybe the two numbers are swapped. | 9
            range?span-mm=15 | span-mm | “Distance between the wing bases, mm” is "15"; expected from 0.3 to 10 mm between the wing bases. (NY-USAGE) Maybe the length of the whole bee was measured. | 15
            degree-days?min=9&max=4&base=5 | max | “Highest of the day, °C” is 4, below “Lowest of the day, °C” 9; expected the highest temperature of the day. | 4
            orchard?crop=apple&area=&species=Osmia+lignaria | area | “Area, hectares” is empty; expected one such as 0.5. (NY-USAGE) |
            sun?lat=40&lon=8&at=2015-04-20T12:00 | at | “Date and time with offset from UTC” is "2015-04-20T12:00"; expected a date and time with its offset | 2015-04-20T12:00
            """)
    void badInputIsToldAtItsFieldAndKept(String path, String field, String sentence, String kept) throws Exception {
        HttpResponse<String> answer = get("/sums/" + path.replace("°", "%C2%B0"));
        assertThat(answer.statusCode()).isEqualTo(422);
        String text = plain(answer.body());
        assertThat(text).contains(sentence);
        assertThat(answer.body()).contains("id=\"" + field + "-problem\"", "aria-invalid=\"true\"");
        assertThat(answer.body()).contains("name=\"" + field + "\" value=\"" + (kept == null ? "" : kept) + "\"");
        assertThat(answer.body()).doesNotContain("id=\"answer\"");
    }

    @Test
    void whatConcernsTheWholeFormStandsAboveIt() throws Exception {
        HttpResponse<String> none = get("/sums/orchard?crop=cherry&area=1&species=Osmia+lignaria");
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("class=\"notice\"").contains("no standard rate for cherry");
        assertThat(get("/sums/mud-laboratory?sand=40&silt=40&clay=40").body())
                .contains("add up to 120 %; expected 100 %. (NY-USAGE)");
    }

    @Test
    void typedMarkupStaysText() throws Exception {
        String body = get("/sums/rinse?item=gear&label-percent=" + encode("\"><script>alert(1)</script>"))
                .body();
        assertThat(body).doesNotContain("<script>alert").contains("&lt;script>alert(1)");
    }

    @Test
    void aPastedTableIsAnsweredAndItsFaultsAreToldByLine() throws Exception {
        String table = "year,count\n2011,40\n2012,55\n2013,48\n2015,90\n";
        HttpResponse<String> good = post("/sums/trend", Map.of("table", table, "target", "", "_csrf", proof()));
        assertThat(good.statusCode()).isEqualTo(200);
        assertThat(good.body()).contains("the stock grew by 22.5 % a year", "2012,55", "./nestyear trend FILE");

        HttpResponse<String> bad = post("/sums/trend", Map.of("table", table.replace("48", "many"), "_csrf", proof()));
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(plain(bad.body())).containsPattern("The table, line 4, column \\d+: .*many.* \\(NY-[A-Z-]+\\)");
        assertThat(bad.body()).contains("2013,many").doesNotContain("nestyear-sum");

        assertThat(post("/sums/trend", Map.of("table", table)).statusCode()).isEqualTo(403);
        assertThat(get("/sums/trend?table=" + encode("/etc/passwd")).body()).doesNotContain("root:");
    }

    @Test
    void everyNumberOfTheCatalogueIsOnThePageOfSources() throws Exception {
        String page = get("/sources").body();
        String text = plain(page);
        int rows = 0;
        for (ParameterTable table : CatalogueFiles.all()) {
            for (Parameter row : table.rows()) {
                BasisLine line = PageWords.basis(row);
                String id = "id=\"" + table.name() + "." + row.id() + "\"";
                assertThat(page).contains(id);
                String at = plain(page.substring(page.indexOf(id)).replaceFirst("(?s)</tr>.*", ""));
                assertThat(at)
                        .contains(
                                line.name(),
                                line.value(),
                                line.range(),
                                row.basis().word());
                assertThat(at).contains(row.source().citation());
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(400);
        // One more than the tables hold: the light that the ground throws back.
        assertThat(text).contains((rows + 1) + " numbers:").contains("ground albedo");
    }

    @Test
    void theLinksOfAnAnswerLeadToItsNumbers() throws Exception {
        String sources = get("/sources").body();
        Matcher links = Pattern.compile("href=\"/sources#([^\"]+)\"")
                .matcher(get("/sums/tunnels?species=Osmia+lignaria&females=120").body());
        int found = 0;
        while (links.find()) {
            assertThat(sources).contains("id=\"" + links.group(1) + "\"");
            found++;
        }
        assertThat(found).isEqualTo(12);
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", "")
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&amp;", "&");
    }

    private static String proof() throws Exception {
        Matcher field = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"")
                .matcher(get("/sums/trend").body());
        assertThat(field.find()).isTrue();
        return field.group(1);
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(at(path)).build(), BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String path, Map<String, String> form)
            throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        form.forEach((name, value) -> body.append(body.length() == 0 ? "" : "&")
                .append(name)
                .append('=')
                .append(encode(value)));
        return client.send(
                HttpRequest.newBuilder(at(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                BodyHandlers.ofString());
    }

    private static URI at(String path) {
        return URI.create("http://127.0.0.1:" + server.port() + path);
    }
}
