package org.nestyear.core.mud;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.core.stats.Draws;

class TextureClassTest {
    /**
     * Points worked by hand from the tests of Benham, Ahrens & Nettleton 2009 (USDA-NRCS); many lie on a boundary. Four
     * public codings of the same tests agree on them.
     */
    @ParameterizedTest
    @CsvSource({
        "100,0,0,sand",
        "92,5,3,sand",
        "90,5,5,sand",
        "85,5,10,loamy sand",
        "86,4,10,loamy sand",
        "85,10,5,loamy sand",
        "84,10,6,loamy sand",
        "82,12,6,loamy sand",
        "80,10,10,sandy loam",
        "71,29,0,loamy sand",
        "70,30,0,sandy loam",
        "65,25,10,sandy loam",
        "60,30,10,sandy loam",
        "53,40,7,sandy loam",
        "52,41,7,loam",
        "52,28,20,loam",
        "53,27,20,sandy clay loam",
        "52.1,28,19.9,sandy loam",
        "45,49,6,sandy loam",
        "50.1,49.9,0,sandy loam",
        "50,50,0,silt loam",
        "43,50.1,6.9,silt loam",
        "40,40,20,loam",
        "40,42,18,loam",
        "45,35,20,loam",
        "20,65,15,silt loam",
        "20,80,0,silt",
        "8,80,12,silt loam",
        "8,80.1,11.9,silt",
        "5,90,5,silt",
        "10,80,10,silt",
        "60,20,20,sandy clay loam",
        "60,15,25,sandy clay loam",
        "46,27,27,sandy clay loam",
        "45,28,27,clay loam",
        "33,33,34,clay loam",
        "32,34,34,clay loam",
        "45,20,35,clay loam",
        "45.1,19.9,35,sandy clay",
        "20,53,27,silty clay loam",
        "20.1,52.9,27,clay loam",
        "10,56,34,silty clay loam",
        "20,40.1,39.9,silty clay loam",
        "20,40,40,silty clay",
        "50,15,35,sandy clay",
        "60,5,35,sandy clay",
        "50,8,42,sandy clay",
        "45,15,40,clay",
        "32,28,40,clay",
        "30,30,40,clay",
        "7,46,47,silty clay",
        "5,50,45,silty clay",
        "0,40,60,silty clay",
        "0,39.9,60.1,clay",
        "22,23,55,clay",
        "20,20,60,clay",
        "10,0,90,clay",
        "0,0,100,clay",
        "40,30,30,clay loam"
    })
    void publishedClasses(double sand, double silt, double clay, String word) {
        assertThat(TextureClass.of(new Soil(sand, silt, clay)).word()).isEqualTo(word);
    }

    /** The twelve tests as printed, each by itself: every point of the triangle passes exactly one, and it is ours. */
    @Test
    void everyPointOfTheTriangleHasOneClass() {
        int points = 0;
        Set<TextureClass> seen = EnumSet.noneOf(TextureClass.class);
        for (int s = 0; s <= 200; s++) {
            for (int i = 0; i + s <= 200; i++) {
                double sand = s / 2.0;
                double silt = i / 2.0;
                double clay = 100 - sand - silt;
                TextureClass ours = TextureClass.of(new Soil(sand, silt, clay));
                int passed = 0;
                for (TextureClass each : TextureClass.values()) {
                    if (test(each, sand, silt, clay)) {
                        passed++;
                        assertThat(ours).as("%s %s %s", sand, silt, clay).isEqualTo(each);
                    }
                }
                assertThat(passed).as("%s %s %s", sand, silt, clay).isEqualTo(1);
                seen.add(ours);
                points++;
            }
        }
        assertThat(points).isEqualTo(20_301);
        assertThat(seen).hasSize(12);
    }

    private static boolean test(TextureClass each, double sand, double silt, double clay) {
        return switch (each) {
            case SAND -> silt + 1.5 * clay < 15;
            case LOAMY_SAND -> silt + 1.5 * clay >= 15 && silt + 2 * clay < 30;
            case SANDY_LOAM ->
                (clay >= 7 && clay < 20 && sand > 52 && silt + 2 * clay >= 30)
                        || (clay < 7 && silt < 50 && silt + 2 * clay >= 30);
            case LOAM -> clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52;
            case SILT_LOAM -> (silt >= 50 && clay >= 12 && clay < 27) || (silt >= 50 && silt < 80 && clay < 12);
            case SILT -> silt >= 80 && clay < 12;
            case SANDY_CLAY_LOAM -> clay >= 20 && clay < 35 && silt < 28 && sand > 45;
            case CLAY_LOAM -> clay >= 27 && clay < 40 && sand > 20 && sand <= 45;
            case SILTY_CLAY_LOAM -> clay >= 27 && clay < 40 && sand <= 20;
            case SANDY_CLAY -> clay >= 35 && sand > 45;
            case SILTY_CLAY -> clay >= 40 && silt >= 40;
            case CLAY -> clay >= 40 && sand <= 45 && silt < 40;
        };
    }

    /** Seeded: layers of any scale give the same soil; the classes within an error hold its own and only grow with it. */
    @Test
    void jarsBehave() {
        Draws draws = new Draws(12);
        for (int i = 0; i < 300; i++) {
            double sand = draws.uniform() * 60;
            double silt = draws.uniform() * 60;
            double clay = draws.uniform() * 60;
            Soil soil = Soil.ofParts(sand, silt, clay);
            Soil scaled = Soil.ofParts(7 * sand, 7 * silt, 7 * clay);
            assertThat(scaled.sandPercent()).isCloseTo(soil.sandPercent(), within(1e-9));
            assertThat(scaled.clayPercent()).isCloseTo(soil.clayPercent(), within(1e-9));
            Set<TextureClass> near = TextureClass.within(soil, 5);
            assertThat(near).contains(TextureClass.of(soil));
            assertThat(TextureClass.within(soil, 0)).containsExactly(TextureClass.of(soil));
            assertThat(TextureClass.within(soil, 10)).containsAll(List.of(TextureClass.of(soil)));
            assertThat(TextureClass.within(soil, 100)).hasSizeGreaterThanOrEqualTo(near.size());
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Soil(50, 50, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Soil(-10, 60, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Soil(Double.NaN, 60, 40)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Soil.ofParts(0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
