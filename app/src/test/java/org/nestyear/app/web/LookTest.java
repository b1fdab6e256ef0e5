package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tokens of the style sheet: legible in the sun, and the only colours there are. */
class LookTest {
    private static final double WCAG_AAA_TEXT = 7.0;
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6});");

    private static String sheet = "";
    private static final Map<String, String> COLOURS = new HashMap<>();

    @BeforeAll
    static void readSheet() throws IOException {
        try (InputStream in = LookTest.class.getResourceAsStream("/static/nestyear.css")) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Matcher tokens = TOKEN.matcher(sheet.substring(0, sheet.indexOf('}')));
        while (tokens.find()) {
            COLOURS.put(tokens.group(1), tokens.group(2));
        }
    }

    // Every pair of text and ground that the sheet uses. WCAG 2.2, success criterion 1.4.6: at least 7 to 1.
    @ParameterizedTest
    @CsvSource({
        "ink, paper",
        "ink, leaf",
        "ink, pale",
        "ink, reed-band",
        "slate, paper",
        "slate, leaf",
        "leaf, slate-deep",
        "leaf, slate",
        "reed-light, slate-deep",
        "slate-deep, leaf",
        "clay, leaf",
        "clay, paper",
        "leaf, clay",
        "earth, leaf",
        "earth, paper",
        "reed, paper"
    })
    void textStandsOutSevenToOne(String text, String ground) {
        assertThat(contrast(colour(text), colour(ground)))
                .as(text + " on " + ground)
                .isGreaterThanOrEqualTo(WCAG_AAA_TEXT);
    }

    @Test
    void theContrastFormulaGivesThePublishedExtremes() {
        // WCAG 2.2, definition of contrast ratio: black on white is 21 to 1, a colour on itself 1 to 1.
        assertThat(contrast("#000000", "#ffffff")).isEqualTo(21.0);
        assertThat(contrast("#7d2413", "#7d2413")).isEqualTo(1.0);
    }

    @Test
    void noTextIsSmallerThanSeventeenPixels() {
        Matcher sizes = Pattern.compile("(?:font-size: |--text: |--small: |font: (?:[0-9]+ )?)([0-9.]*[0-9])rem")
                .matcher(sheet);
        int seen = 0;
        while (sizes.find()) {
            assertThat(Double.parseDouble(sizes.group(1)) * 16)
                    .as(sizes.group())
                    .isGreaterThanOrEqualTo(17);
            seen++;
        }
        assertThat(seen).isGreaterThan(8);
    }

    @Test
    void everyTokenUsedIsDefined() {
        Matcher used = Pattern.compile("var\\(--([a-z-]+)\\)").matcher(sheet);
        Set<String> names = new HashSet<>();
        while (used.find()) {
            names.add(used.group(1));
        }
        assertThat(names)
                .hasSizeGreaterThan(10)
                .allSatisfy(name -> assertThat(sheet).contains("--" + name + ":"));
    }

    private static String colour(String token) {
        return Objects.requireNonNull(COLOURS.get(token), token);
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    // WCAG 2.2, definition of relative luminance.
    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
