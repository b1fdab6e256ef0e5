package org.nestyear.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A keeper at the pages, with a real browser and the real server over a folder of its own. */
abstract class PagesInBrowser {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path SHOTS = Path.of("target", "shots");
    static final int LAPTOP = 1280;
    static final int PHONE = 390;

    private static Playwright playwright;
    private static Browser browser;

    @TempDir
    Path folder;

    WebServer.Running server;
    private BrowserContext context;
    Page page;
    final List<String> complaints = new ArrayList<>();

    @BeforeAll
    static void openBrowser() {
        assumeTrue(Files.isExecutable(CHROMIUM), "no Chromium at " + CHROMIUM);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        List<String> flags = new ArrayList<>(List.of(
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync"));
        if ("root".equals(System.getProperty("user.name"))) {
            flags.add("--no-sandbox");
        }
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setArgs(flags));
    }

    @AfterAll
    static void closeBrowser() {
        if (playwright != null) {
            playwright.close();
        }
    }

    @BeforeEach
    void openPages() throws IOException {
        server = OwnServer.start(Files.createDirectories(folder.resolve("home")));
        use(new Browser.NewContextOptions().setViewportSize(LAPTOP, 900));
    }

    /** Goes on as a keeper with a phone in the hand: touch, and a narrow screen. */
    final void usePhone() {
        context.close();
        use(new Browser.NewContextOptions()
                .setViewportSize(PHONE, 844)
                .setHasTouch(true)
                .setIsMobile(true));
    }

    private void use(Browser.NewContextOptions options) {
        context = browser.newContext(options);
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
    }

    @AfterEach
    void closePages() {
        context.close();
        server.close();
    }

    final void goTo(String name) {
        page.locator("nav a", new Page.LocatorOptions().setHasText(name)).click();
        // A long page shows before its last rows have arrived.
        page.waitForLoadState();
    }

    final void click(String button) {
        page.locator("button", new Page.LocatorOptions().setHasText(button)).click();
    }

    // On a laptop, on a phone and on paper: pictures to look at, no sideways scrolling, nothing axe objects to.
    final void inspect(String name) {
        inspect(name, "html");
    }

    /**
     * The same where only parts are shown to axe.
     *
     * @param parts selectors; the rest of a long page is like them
     */
    final void inspect(String name, String... parts) {
        for (int width : new int[] {LAPTOP, PHONE}) {
            page.setViewportSize(width, 900);
            page.screenshot(new Page.ScreenshotOptions()
                    .setFullPage(parts.length == 0)
                    .setPath(SHOTS.resolve(name + "-" + width + ".png")));
            if (page.locator("figure").count() > 0) {
                page.locator("#points")
                        .screenshot(new Locator.ScreenshotOptions()
                                .setPath(SHOTS.resolve(name + "-points-" + width + ".png")));
                page.locator("figure")
                        .screenshot(new Locator.ScreenshotOptions()
                                .setPath(SHOTS.resolve(name + "-picture-" + width + ".png")));
            }
            Object over = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(((Number) over).intValue()).as(name + " at " + width).isZero();
            AxeBuilder axe = new AxeBuilder(page);
            for (String part : parts) {
                axe.include(part);
            }
            List<Rule> objections = axe.withTags(
                            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"))
                    .analyze()
                    .getViolations();
            assertThat(objections)
                    .as(name + " at " + width)
                    .extracting(
                            rule -> rule.getId() + ": " + rule.getNodes().get(0).getHtml())
                    .isEmpty();
        }
        page.setViewportSize(LAPTOP, 900);
        emulate("print");
        // A page inspected in parts is too long to be drawn as one picture on a busy machine.
        page.screenshot(new Page.ScreenshotOptions()
                .setFullPage(parts.length == 0)
                .setPath(SHOTS.resolve(name + "-print.png")));
        emulate("");
    }

    // Asked of the browser itself: Playwright writes the names of its own constants small by the locale of the machine.
    private void emulate(String media) {
        JsonObject parameters = new JsonObject();
        parameters.addProperty("media", media);
        context.newCDPSession(page).send("Emulation.setEmulatedMedia", parameters);
    }
}
