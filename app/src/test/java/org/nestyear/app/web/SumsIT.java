package org.nestyear.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.nestyear.app.service.Demo;

/** A keeper at Quick sums and Sources, before any season is opened. */
class SumsIT extends PagesInBrowser {
    @Test
    void theExampleIsPutIntoTheFormAndChanged() {
        page.navigate(server.address());
        goTo("Quick sums");
        inspect("sums");
        page.getByText("Tunnels to hang").click();
        assertThat(page.locator("#answer-title")).hasText("A worked example");
        page.getByText("Put this example into the form").click();
        assertThat(page.locator("#answer-title")).hasText("The answer");
        String many = page.locator("#facts data").first().innerText();

        page.getByLabel("Female cocoons or cells put out").fill("12");
        click("Work it out");
        assertThat(page.url()).contains("females=12").endsWith("#answer");
        Locator few = page.locator("#facts data").first();
        assertThat(Integer.parseInt(few.innerText())).isLessThan(Integer.parseInt(many));
        assertThat(page.getByLabel("Female cocoons or cells put out")).hasValue("12");
        page.locator("#answer summary").first().click();
        inspect("sum");

        page.locator("#answer .basis a").first().click();
        assertThat(page.locator("h1")).hasText("Sources");
        assertThat(page.locator("tr:target")).isVisible();
        assertThat(complaints).isEmpty();
    }

    @Test
    void aWrongNumberIsToldBesideItsFieldAndKept() {
        page.navigate(server.address());
        page.navigate(server.address().replaceFirst("/\\?.*", "/sums/rinse"));
        page.getByLabel("What is rinsed").selectOption("gear");
        page.getByLabel("Sodium hypochlorite by the label, %").fill("50");
        page.getByLabel("Bleach, ml").fill("60");
        page.getByLabel("Water it is poured into, litres").fill("4");
        click("Work it out");
        assertThat(page.locator(".wrong .problem")).containsText("is 50; expected a number from 1 to 15 per cent.");
        assertThat(page.getByLabel("Sodium hypochlorite by the label, %")).hasValue("50");
        assertThat(page.getByLabel("Bleach, ml")).hasValue("60");
        complaints.removeIf(line -> line.contains("422"));
        inspect("sum-wrong");
        page.getByLabel("Sodium hypochlorite by the label, %").fill("5");
        click("Work it out");
        assertThat(page.locator("#facts")).containsText("739 ppm");
        assertThat(complaints).isEmpty();
    }

    @Test
    void aTableIsChosenAsAFileOrPasted() throws Exception {
        Path weather = Files.writeString(folder.resolve("weather.csv"), Demo.weather(), StandardCharsets.UTF_8);
        page.navigate(server.address());
        page.navigate(server.address().replaceFirst("/\\?.*", "/sums/chill"));
        page.getByLabel("Latitude, degrees north").fill("40.78");
        page.getByLabel("First day").fill("2013-11-01");
        page.getByLabel("Last day").fill("2014-03-15");
        page.getByLabel("or choose a file that holds it").setInputFiles(weather);
        click("Work it out");
        assertThat(page.locator("#facts")).containsText("82.2");
        page.getByLabel("Last day").fill("2014-02-15");
        click("Work it out");
        assertThat(page.locator(".answer").first()).containsText("107 days");
        assertThat(complaints).isEmpty();
    }

    /** Every calculator on both screens: nothing scrolls sideways, nothing is refused by the content policy. */
    @Test
    void everyCalculatorFitsAPhoneInBothUnits() {
        page.navigate(server.address());
        String root = server.address().replaceFirst("/\\?.*", "");
        page.setViewportSize(PHONE, 900);
        for (Sum sum : SumBook.all()) {
            for (String units : new String[] {"", "&units=us"}) {
                page.navigate(root + "/sums/" + sum.slug() + "?example=yes" + units);
                assertThat(page.locator("#answer-title")).isVisible();
                Object over =
                        page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(((Number) over).intValue()).as(sum.slug()).isZero();
            }
        }
        page.navigate(root + "/sums/facing?example=yes");
        inspect("sum-facing");
        assertThat(complaints).isEmpty();
    }

    @Test
    void theSourcesCanBeReadOnAPhone() {
        page.navigate(server.address());
        goTo("Sources");
        assertThat(page.locator(".basis tbody tr").count()).isGreaterThan(400);
        inspect("sources", "header", "h1", "nav[aria-label=Tables]", "section[aria-labelledby=osmia_lignaria]");
        page.getByText("Publications").first().click();
        assertThat(page.locator("#publications")).isInViewport();
        assertThat(complaints).isEmpty();
    }
}
