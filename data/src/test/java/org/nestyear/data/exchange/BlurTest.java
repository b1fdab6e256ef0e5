package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.data.exchange.Blur.Blurred;

/**
 * The grid over the whole earth, with distances on the WGS 84 ellipsoid by GeographicLib (C. F. F. Karney, Algorithms for
 * geodesics, J. Geodesy 87, 2013), which the blur does not use.
 */
class BlurTest {
    private static final long SEED = 7946;
    private static final int PLACES = 20_000;

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXACT")
    void thePlaceLiesWithinWhatIsStatedAndTheCentreBlursToItself(Blur blur) {
        SplittableRandom random = new SplittableRandom(SEED);
        double widest = 0;
        for (int i = 0; i < PLACES; i++) {
            Coordinates place = anywhere(random);
            Blurred blurred = blur.apply(place);
            double away = metres(place, blurred.at());
            assertThat(away).as("seed %s, %s", SEED, place).isLessThanOrEqualTo(blurred.withinM());
            assertThat(blur.apply(blurred.at())).as("seed %s, %s", SEED, place).isEqualTo(blurred);
            assertThat(blur.apply(place)).isEqualTo(blurred);
            widest = Math.max(widest, away / blurred.withinM());
        }
        // The stated distance is not much more than it need be: somewhere in 20 000 places it is nearly reached.
        assertThat(widest).isBetween(0.95, 1.0);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "EXACT")
    void cellsAreAboutAsWideAsTheGridSays(Blur blur) {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int i = 0; i < PLACES; i++) {
            // Down to three cells from the pole, where whole cells no longer fit well around.
            double north = 85 * (2 * random.nextDouble() - 1);
            Coordinates place = new Coordinates(north, 360 * random.nextDouble() - 180);
            // Half the diagonal of a square is its side by the square root of 2; a tenth either way.
            assertThat(blur.apply(place).withinM() * Math.sqrt(2))
                    .as("seed %s, %s", SEED + 1, place)
                    .isBetween(0.9 * blur.gridM(), 1.15 * blur.gridM());
        }
    }

    @Test
    void coarseCellsAreMadeOfWholeFineOnes() {
        SplittableRandom random = new SplittableRandom(SEED + 2);
        for (int i = 0; i < PLACES; i++) {
            Coordinates place = anywhere(random);
            Coordinates fine = Blur.ONE_KM.apply(place).at();
            Coordinates middle = Blur.TEN_KM.apply(place).at();
            Coordinates coarse = Blur.HUNDRED_KM.apply(place).at();
            assertThat(Blur.TEN_KM.apply(fine).at())
                    .as("seed %s, %s", SEED + 2, place)
                    .isEqualTo(middle);
            assertThat(Blur.HUNDRED_KM.apply(middle).at())
                    .as("seed %s, %s", SEED + 2, place)
                    .isEqualTo(coarse);
        }
    }

    @Test
    void manyFilesOfOnePlaceAverageToTheSameCentre() {
        Coordinates place = Samples.LANE.at();
        Set<Coordinates> told = new HashSet<>();
        for (int i = 0; i < 100; i++) {
            told.add(Blur.TEN_KM.apply(place).at());
        }
        assertThat(told).hasSize(1);
        assertThat(metres(place, Blur.TEN_KM.apply(place).at())).isGreaterThan(100);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-89.999, -66.6, -17.2, 0, 0.004, 51.5, 78.2, 89.3})
    void theAntimeridianIsOnePlaceFromBothSides(double north) {
        for (Blur blur : List.of(Blur.ONE_KM, Blur.TEN_KM, Blur.HUNDRED_KM)) {
            Blurred east = blur.apply(new Coordinates(north, 180));
            assertThat(blur.apply(new Coordinates(north, -180))).isEqualTo(east);
            // A step to either side lands in the cell that begins or in the cell that ends there.
            Blurred before = blur.apply(new Coordinates(north, Math.nextDown(180.0)));
            assertThat(metres(new Coordinates(north, 180), before.at())).isLessThanOrEqualTo(before.withinM());
        }
    }

    @Test
    void thePoleIsOneCellHoweverItsLongitudeIsTold() {
        for (Blur blur : List.of(Blur.ONE_KM, Blur.TEN_KM, Blur.HUNDRED_KM)) {
            for (double pole : new double[] {-90, 90}) {
                Map<Blurred, Integer> told = new HashMap<>();
                for (int east = -180; east <= 180; east += 15) {
                    told.merge(blur.apply(new Coordinates(pole, east)), 1, Integer::sum);
                }
                assertThat(told).hasSize(1).containsValue(25);
                assertThat(told.keySet().iterator().next().at()).isEqualTo(new Coordinates(pole, 0));
            }
        }
    }

    @Test
    void exactIsExactAndNoPlaceIsRefused() {
        Coordinates place = Samples.LANE.at();
        assertThat(Blur.EXACT.apply(place)).isEqualTo(new Blurred(place, 0));
        for (double[] wrong : new double[][] {{91, 0}, {0, 181}, {Double.NaN, 0}, {0, Double.NaN}}) {
            assertThatThrownBy(() -> new Coordinates(wrong[0], wrong[1]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("is no place");
        }
    }

    /** Evenly over the globe, with poles, equator and antimeridian now and then to the digit. */
    private static Coordinates anywhere(SplittableRandom random) {
        double north = Math.toDegrees(Math.asin(2 * random.nextDouble() - 1));
        double east = 360 * random.nextDouble() - 180;
        return switch (random.nextInt(20)) {
            case 0 -> new Coordinates(north, random.nextBoolean() ? 180 : -180);
            case 1 -> new Coordinates(Math.copySign(90 - random.nextDouble() * 1e-3, north), east);
            case 2 -> new Coordinates(random.nextBoolean() ? 0 : -0.0, east);
            case 3 -> new Coordinates(Math.copySign(90 - random.nextDouble(), north), east);
            default -> new Coordinates(north, east);
        };
    }

    static double metres(Coordinates one, Coordinates other) {
        return Geodesic.WGS84.Inverse(one.latitudeDeg(), one.longitudeDeg(), other.latitudeDeg(), other.longitudeDeg())
                .s12;
    }
}
