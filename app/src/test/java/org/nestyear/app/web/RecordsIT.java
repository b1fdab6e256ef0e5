package org.nestyear.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A keeper who writes down: with a thumb at the houses, with the keyboard at home. */
class RecordsIT extends PagesInBrowser {
    private String root = "";

    @Test
    void aKeeperBeginsAndVisitsWithOneThumb() {
        usePhone();
        open("/records");
        inspectPhone("records-empty");
        tap("a.go:has-text('Write down a site')");
        page.getByLabel("Name").fill("Tansy Lane");
        page.getByLabel("Latitude, degrees north").fill("50.1");
        page.getByLabel("Longitude, degrees east").fill("8.2");
        inspectPhone("records-site");
        tap("button:has-text('Save')");
        assertThat(page.locator(".receipt")).containsText("Saved.");
        tap("text=Write under Houses");
        page.locator("#f-name").fill("Long reeds");
        tap("button:has-text('Save')");
        assertThat(page.locator(".receipt")).containsText("Saved.");
        open("/records");
        tap("text=Quick visit");
        tap(".chip:has-text('Long reeds')");
        tap("button[data-step='10']");
        tap("button[data-step='5']");
        tap("button[data-step='-1']");
        assertThat(page.locator("#more")).hasValue("14");
        tap(".chip:has-text('damp')");
        tap(".chip:has-text('first female')");
        inspectPhone("records-visit");
        tap(".save-bar button");
        assertThat(page.locator("#receipt"))
                .hasText("14 more plugged, 14 in all this season, mud damp (Tansy Lane / Long reeds).");
        inspectPhone("records-visit-saved");
        tap(".receipt button");
        assertThat(page.locator(".receipt"))
                .containsText("Took back: visit to Tansy Lane / Long reeds: 14 more plugged");
        open("/records");
        inspectPhone("records-home");
        assertThat(complaints).isEmpty();
    }

    @Test
    void cellsAreCountedByThumbAndByKeyboardAndAFailedTapIsKept() {
        usePhone();
        begin();
        open("/records/tally");
        page.locator("#f-species").selectOption("Osmia lignaria");
        inspectPhone("records-openings");
        tap("button:has-text('Begin to count')");
        for (int i = 0; i < 3; i++) {
            tap("button[value='alive']");
        }
        tap("button[value='mites']");
        assertThat(page.locator("#total-sentence")).hasText("4 cells in this opening: 3 alive, 1 lost (25.0 %).");
        Object least = page.evaluate(
                "Math.min(...[...document.querySelectorAll('.tap')].map(b => b.getBoundingClientRect().height))");
        assertThat(((Number) least).doubleValue()).isGreaterThanOrEqualTo(64);
        inspectPhone("records-tally");

        page.route("**/tap", route -> route.abort());
        tap("button[value='alive']");
        assertThat(page.locator("#tap-state")).containsText("1 tap is not saved yet, but kept here");
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target", "shots", "records-tally-failed.png")));
        page.unroute("**/tap");
        tap("#tap-state button");
        assertThat(page.locator("#total-sentence")).hasText("5 cells in this opening: 4 alive, 1 lost (20.0 %).");
        complaints.removeIf(line -> line.contains("ERR_FAILED"));

        page.setViewportSize(LAPTOP, 900);
        page.keyboard().press("a");
        page.keyboard().press("2");
        page.keyboard().press("u");
        assertThat(page.locator("#total-sentence")).hasText("6 cells in this opening: 5 alive, 1 lost (16.7 %).");
        assertThat(page.locator("#tap-state")).hasText("");
        page.reload();
        assertThat(page.locator("#total-sentence")).hasText("6 cells in this opening: 5 alive, 1 lost (16.7 %).");
        inspect("records-tally-wide");
        assertThat(complaints).isEmpty();
    }

    @Test
    void aSheetIsFilledAndPastedByKeyboardAlone() {
        begin();
        open("/records/sheet/visit");
        page.locator("#r1-site").focus();
        page.keyboard().type("Tansy");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().press("Tab");
        page.keyboard().type("2015-03-01");
        page.keyboard().press("Tab");
        page.keyboard().type("5");
        page.keyboard().press("Enter");
        assertThat(page.locator("#r2-more_plugged")).isFocused();
        page.locator("#r2-site").focus();
        paste("Tansy Lane\t\t\t2015-03-02\t6\nTansy Lane\t\t\t2015-03-03\tmany\n".repeat(6));
        assertThat(page.locator("#r13-more_plugged")).hasValue("many");
        for (int row = 3; row <= 13; row += 2) {
            page.locator("#r" + row + "-more_plugged").fill("7");
        }
        page.locator("#r3-more_plugged").fill("many");
        page.locator(".save-bar button").press("Enter");
        assertThat(page.locator("#r3-more_plugged-problem")).containsText("This is \"many\"; expected a whole number");
        complaints.removeIf(line -> line.contains("422"));
        inspect("records-sheet-wrong");
        page.locator("#r3-more_plugged").fill("7");
        page.locator(".save-bar button").press("Enter");
        assertThat(page.locator(".receipt")).containsText("Saved: 13 rows.");
        inspect("records-sheet");
        open("/records/table/visit");
        inspect("records-table");
        page.locator("#entries a").first().press("Enter");
        page.locator("#f-more_plugged").fill("8");
        page.locator("button:has-text('Save the correction')").press("Enter");
        assertThat(page.locator("#history")).containsText("More plugged since the last visit");
        inspect("records-entry");
        assertThat(complaints).isEmpty();
    }

    @Test
    void aLoggerFileIsLookedAtThenSaved() throws Exception {
        begin();
        open("/records/logger");
        page.getByLabel("Where it lay").selectOption("fridge");
        Path log = Files.writeString(
                folder.resolve("fridge.csv"), "time,temp_c\n2015-01-05 06:00,3\n2015-01-05 07:00,3.5\n");
        page.locator("#file").setInputFiles(log);
        page.locator("button:has-text('Look at it')").press("Enter");
        assertThat(page.locator(".facts")).containsText("2 readings, from 2015-01-05 06:00 to 2015-01-05 07:00.");
        inspect("records-logger");
        page.locator("button:has-text('Save 2 readings')").press("Enter");
        assertThat(page.locator(".receipt")).containsText("Saved: 2 readings, fridge, Tansy Lane.");
        open("/records/file/visit");
        inspect("records-file");
        assertThat(complaints).isEmpty();
    }

    private void open(String path) {
        if (root.isEmpty()) {
            page.navigate(server.address());
            root = server.address().replaceFirst("/\\?.*", "");
        }
        page.navigate(root + path);
    }

    private void begin() {
        open("/records/new/site");
        page.getByLabel("Name").fill("Tansy Lane");
        page.getByLabel("Latitude, degrees north").fill("50.1");
        page.getByLabel("Longitude, degrees east").fill("8.2");
        page.locator("button:has-text('Save')").click();
        assertThat(page.locator(".receipt")).containsText("Saved.");
    }

    private void tap(String selector) {
        page.locator(selector).first().tap();
    }

    private void paste(String text) {
        page.evaluate(
                "text => { const data = new DataTransfer(); data.setData('text/plain', text);"
                        + " document.activeElement.dispatchEvent(new ClipboardEvent('paste',"
                        + " {clipboardData: data, bubbles: true, cancelable: true})); }",
                text);
    }

    private void inspectPhone(String name) {
        inspect(name);
        page.setViewportSize(PHONE, 844);
    }
}
