package org.nestyear.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Files and links of the records, with the invented account, in a real browser. */
class ShareIT extends PagesInBrowser {
    private static final Clock AFTER_THE_DEMO = Clock.fixed(Instant.parse("2016-02-01T12:00:00Z"), ZoneOffset.UTC);

    @BeforeEach
    void openTheInventedAccount() throws Exception {
        server.close();
        server = OwnServer.start(Files.createDirectories(folder.resolve("later")), AFTER_THE_DEMO);
        page.navigate(server.address());
        goTo("Records");
        click("Open the invented account");
        assertThat(page.locator("body")).containsText("Number Nine");
    }

    @Test
    void theWholeAccountAndOpenFormsAreCarriedAway() throws Exception {
        page.getByText("Files and links").first().click();
        inspect("share");
        Download account = page.waitForDownload(
                () -> page.getByText("Take the account along").click());
        try (ZipFile zip = new ZipFile(account.path().toFile())) {
            assertThat(zip.getEntry("contents.csv")).isNotNull();
        }
        Download map = page.waitForDownload(
                () -> page.getByText("Places and plants (GeoJSON)").click());
        assertThat(Files.readString(map.path())).contains("FeatureCollection").doesNotContain("Number Nine");
        Path seen = page.waitForDownload(
                        () -> page.getByText("Bees in nests (Darwin Core)").click())
                .path();
        try (ZipFile zip = new ZipFile(seen.toFile())) {
            assertThat(new String(
                            zip.getInputStream(zip.getEntry("occurrence.txt")).readAllBytes(), StandardCharsets.UTF_8))
                    .contains("Osmia lignaria", "managed stock");
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void aCalendarAddressOpensTheJobsUntilItIsTakenBack() throws Exception {
        page.getByText("Files and links").first().click();
        page.getByLabel("Who is it for?").fill("The helper");
        click("Make an address");
        String address = page.locator("#made").inputValue();
        inspect("share-link");
        HttpResponse<String> calendar = get(address);
        assertThat(calendar.statusCode()).isEqualTo(200);
        assertThat(calendar.headers().firstValue("content-type").orElse("")).startsWith("text/calendar");
        assertThat(calendar.body()).startsWith("BEGIN:VCALENDAR").contains("BEGIN:VEVENT", "Number Nine");
        assertThat(get(address.replaceFirst("[^/]{4}\\.ics", "AAAA.ics")).statusCode())
                .isEqualTo(404);
        page.navigate(server.address().replaceFirst("/\\?.*", "/records/share"));
        click("Take back");
        assertThat(page.locator("body")).containsText("taken back");
        assertThat(get(address).statusCode()).isEqualTo(404);
        assertThat(complaints).isEmpty();
    }

    // Without a cookie, as a calendar asks.
    private static HttpResponse<String> get(String address) throws Exception {
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }
}
