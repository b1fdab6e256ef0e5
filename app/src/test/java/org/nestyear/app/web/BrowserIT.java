package org.nestyear.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.app.service.Demo;

/** A keeper at the pages of a season, with a real browser, the real server and the real model. */
class BrowserIT extends PagesInBrowser {
    @Test
    void theDemoOpensAndAnswersWithDatesThatFollowTheAim() {
        page.navigate(server.address());
        assertThat(page.url()).endsWith("/seasons");
        inspect("first-run");

        openDemo();
        assertThat(page.locator(".answer")).containsText("cocoons out between");
        assertThat(page.locator(".season")).containsText("Tansy Lane orchard (invented)");
        assertThat(page.locator(".job").count()).isGreaterThan(5);
        page.locator("#job-put-out summary").click();
        assertThat(page.locator("#job-put-out details table")).isVisible();
        inspect("jobs");

        goTo("Release");
        String both = page.locator("#window-both").innerText();
        String bloom = page.locator("#window-bloom").innerText();
        String answer = page.locator(".answer").innerText();
        String points = page.locator("#points").innerText();
        String picture = curvePoints();
        assertThat(both).isNotEqualTo(bloom);
        inspect("release");

        page.locator("input[value=bloom]").check();
        click("Plan for this aim");
        assertThat(page.locator("input[value=bloom]")).isChecked();
        assertThat(page.locator(".answer").innerText()).isNotEqualTo(answer);
        assertThat(page.locator("#points").innerText()).isNotEqualTo(points);
        assertThat(curvePoints()).isNotEqualTo(picture);
        assertThat(page.locator("#window-bloom").innerText()).isEqualTo(bloom);
        assertThat(complaints).isEmpty();
    }

    @Test
    void aTypedDateIsAnsweredWithItsCost() {
        page.navigate(server.address());
        openDemo();
        goTo("Release");
        Locator last = page.locator("#points tbody tr").last();
        String lastCost = last.locator("td").last().innerText();
        page.getByLabel("Date the cocoons go out").fill(page.locator("#date").getAttribute("max"));
        click("Show its cost");
        assertThat(page.locator("#cost-answer")).containsText("loses " + lastCost + " % on average");
        inspect("cost");
        assertThat(complaints).isEmpty();
    }

    @Test
    void oneChangedRecordChangesTheTableUnderTheCurve() throws IOException {
        Path season = demoFiles().get(0);
        page.navigate(server.address());
        openDemo();
        goTo("Release");
        String before = page.locator("#points").innerText();
        String daughters =
                page.locator("#points tbody tr").nth(30).locator("td").nth(2).innerText();

        Path fewer = season.resolveSibling("few-tunnels.toml");
        String text = Files.readString(season);
        Files.writeString(fewer, text.replaceFirst("count = 180", "count = 6"), StandardCharsets.UTF_8);
        assertThat(Files.readString(fewer)).isNotEqualTo(text);
        goTo("Seasons");
        page.getByLabel("Season file", new Page.GetByLabelOptions().setExact(true))
                .setInputFiles(fewer);
        page.getByLabel("Weather files").setInputFiles(demoFiles().get(1));
        click("Open these files");
        assertThat(page.locator("h1")).hasText("Jobs now");

        goTo("Release");
        assertThat(page.locator("#points").innerText()).isNotEqualTo(before);
        String now =
                page.locator("#points tbody tr").nth(30).locator("td").nth(2).innerText();
        assertThat(Double.parseDouble(now)).isLessThan(Double.parseDouble(daughters));
        goTo("Seasons");
        assertThat(page.locator(".plain-list li").first()).containsText("few-tunnels.toml");
        inspect("seasons");
        assertThat(complaints).isEmpty();
    }

    @Test
    void aFaultyFileIsToldByLineAndColumnAndNothingIsKept() throws IOException {
        Path season = demoFiles().get(0);
        Path faulty = season.resolveSibling("faulty.toml");
        Files.writeString(faulty, Files.readString(season).replace("females = 120", "femals = 120"));
        page.navigate(server.address());
        page.getByLabel("Path of the season file").fill(faulty.toString());
        click("Open this path");
        assertThat(page.locator(".notice")).containsText(faulty + ":");
        assertThat(page.locator(".notice").innerText())
                .containsPattern("faulty\\.toml:\\d+:\\d+: .*femals.*\\(NY-SEASON-KEY\\)");
        assertThat(page.getByLabel("Path of the season file")).hasValue(faulty.toString());
        assertThat(page.getByText("Seasons opened before")).hasCount(0);
        complaints.removeIf(line -> line.contains("422"));
        inspect("faulty");
        assertThat(complaints).isEmpty();
    }

    @Test
    void theRefusalWithoutTheLaunchWordIsAReadablePage() {
        page.navigate("http://127.0.0.1:" + server.port() + "/");
        assertThat(page.locator("h1")).hasText("This page opens from its start address only");
        complaints.removeIf(line -> line.contains("403"));
        inspect("closed");
        assertThat(complaints).isEmpty();
    }

    private List<Path> demoFiles() throws IOException {
        Path demo = folder.resolve("demo");
        return Files.exists(demo)
                ? List.of(demo.resolve("tansy-lane.toml"), demo.resolve("tansy-lane-weather.csv"))
                : Demo.write(demo);
    }

    private void openDemo() {
        click("Open the Tansy Lane demo");
        assertThat(page.locator("h1")).hasText("Jobs now");
    }

    private String curvePoints() {
        return page.locator(".for-wide polyline.mean").getAttribute("points");
    }
}
