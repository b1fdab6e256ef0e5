package org.nestyear.checks.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.checks.Repository;

/**
 * Numbers about bees and plants live in the catalogue with their sources, never in the code. So the model's packages
 * hold no number but plain ones and private constants that say they are numerical (sizes of grids, tolerances); sun and
 * weather hold physical constants, each named and with its source beside it.
 */
class NoBiologicalLiteralTest {
    private static final Set<Modifier> PRIVATE_CONSTANT = Set.of(Modifier.PRIVATE, Modifier.STATIC, Modifier.FINAL);
    private static final Set<Modifier> CONSTANT = Set.of(Modifier.STATIC, Modifier.FINAL);
    private static final Pattern SOURCE_WORDS = Pattern.compile(
            "\\b(18|19|20)\\d\\d\\b|FAO-56|by definition|convention|numerical", Pattern.CASE_INSENSITIVE);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "species",
                "season",
                "winter",
                "bloom",
                "count",
                "hygiene",
                "emergence",
                "flight",
                "forage",
                "brood",
                "leafcutter",
                "nesting",
                "outlook",
                "reach",
                "sexing",
                "stocking",
                "release",
                "advice",
                "plan"
            })
    void modelHoldsNoNumberOfItsOwn(String name) {
        check(
                name,
                PRIVATE_CONSTANT,
                NoBiologicalLiteralTest::saysNumerical,
                "a row of the catalogue, or a private constant called numerical");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mud", "sun", "weather"})
    void physicsNamesTheSourceOfEveryConstant(String name) {
        check(
                name,
                CONSTANT,
                NoBiologicalLiteralTest::namesSource,
                "a named constant with its source in the comment above it");
    }

    @Test
    void scanFindsWhatItShould() {
        String source = """
                class Invented {
                    /** Days to emergence. */
                    private static final double DAYS = 63.5;
                    /** A numerical choice, not a biological one: points of the grid. */
                    private static final int POINTS = 41;
                    static final int OPEN = 7; // numerical
                    // A tolerance, numerical.
                    private static final double TOLERANCE = 1e-9;
                    double at(double t) {
                        return t > 12 ? -3 * t : 0.5 * t + 100 - 2.0 + 24 * 60 + 10L;
                    }
                }
                """;
        NumberScan scan =
                NumberScan.of("Invented.java", source, PRIVATE_CONSTANT, NoBiologicalLiteralTest::saysNumerical);
        assertThat(scan.loose())
                .containsExactly(
                        "Invented.java line 3: 63.5",
                        "Invented.java line 6: 7",
                        "Invented.java line 10: 12",
                        "Invented.java line 10: -3");
        assertThat(scan.constants()).containsExactly("POINTS", "TOLERANCE");
    }

    @Test
    void scanAsksPhysicsForASource() {
        String source = """
                class Invented {
                    /** Slope of the line. */
                    static final double SLOPE = 0.0065;
                    /** Slope of the line, FAO-56 equation 7. */
                    static final double CITED = 0.0065;
                    static final double BY_YEAR = 1098; // Haurwitz (1945)
                }
                """;
        NumberScan scan = NumberScan.of("Invented.java", source, CONSTANT, NoBiologicalLiteralTest::namesSource);
        assertThat(scan.loose()).containsExactly("Invented.java line 3: 0.0065");
        assertThat(scan.constants()).containsExactly("CITED", "BY_YEAR");
    }

    private static boolean saysNumerical(String comment) {
        return comment.toLowerCase(Locale.ROOT).contains("numerical");
    }

    private static boolean namesSource(String comment) {
        return SOURCE_WORDS.matcher(comment).find();
    }

    private static void check(String name, Set<Modifier> modifiers, Predicate<String> accepts, String instead) {
        Path folder = Repository.root()
                .resolve("core/src/main/java/org/nestyear/core")
                .resolve(name);
        assertThat(Files.isDirectory(folder)).as("package folder " + folder).isTrue();
        List<String> loose = new ArrayList<>();
        int constants = 0;
        List<Path> files = Repository.javaFiles(folder);
        for (Path file : files) {
            NumberScan scan = NumberScan.of(file.getFileName().toString(), Repository.text(file), modifiers, accepts);
            loose.addAll(scan.loose());
            constants += scan.constants().size();
        }
        System.out.println("core." + name + ": " + files.size() + " files, " + constants + " constants accepted");
        assertThat(files).as("files of " + name).isNotEmpty();
        assertThat(loose).as("numbers that should be " + instead).isEmpty();
    }
}
