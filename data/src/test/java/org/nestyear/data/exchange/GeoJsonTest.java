package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import org.nestyear.data.exchange.PlacedPlant.SeenBloom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The map file as others read it: the geometries by JTS ({@code jts-io-common}, whose JSON parser is json-simple), the
 * members by Jackson's tree, and all of it against the rules of RFC 7946 written down as a JSON Schema.
 */
class GeoJsonTest {
    private static final Disclosure ALL = Disclosure.all();
    private static final Disclosure CAREFUL = Disclosure.careful();

    @Test
    void exactSitesStandWhereTheyAreWithTheirHeight() throws Exception {
        String text = GeoJson.write(List.of(Samples.LANE, Samples.FAR), List.of(), ALL);
        checkRules(text);
        List<Point> points = points(text);
        assertThat(points).hasSize(2);
        // RFC 7946 §3.1.1: longitude first; §4: height third, in metres.
        assertThat(points.get(0).getCoordinate().getX()).isEqualTo(-73.967891);
        assertThat(points.get(0).getCoordinate().getY()).isEqualTo(40.781234);
        assertThat(points.get(0).getCoordinate().getZ()).isEqualTo(40);
        assertThat(points.get(1).getCoordinate()).isEqualTo(new Coordinate(44.04, 39.92));
        JsonNode site = features(text).get(0);
        assertThat(site.get("id").asString()).isEqualTo(Samples.LANE.id());
        JsonNode told = site.get("properties");
        assertThat(told.get("name").asString()).isEqualTo(Samples.LANE.name());
        assertThat(told.get("faces_deg").asDouble()).isEqualTo(135);
        assertThat(told.get("coordinate_uncertainty_m").asInt()).isEqualTo(25);
        assertThat(told.has("coordinate_grid_m")).isFalse();
        assertThat(features(text).get(1).get("properties").get("name").asString())
                .isEqualTo(Samples.FAR.name());
    }

    @Test
    void aBlurredSiteGivesNeitherItsPlaceNorHeightNorNameAway() throws Exception {
        PlacedPlant plant = plant(Samples.LANE, 120.0, 75.0);
        String text = GeoJson.write(List.of(Samples.LANE), List.of(plant), CAREFUL);
        checkRules(text);
        assertThat(text).doesNotContain("Tansy", "40.781", "73.9678", "elevation");
        JsonNode told = features(text).get(0).get("properties");
        assertThat(told.get("coordinate_grid_m").asInt()).isEqualTo(10_000);
        List<Point> points = points(text);
        assertThat(points.get(0).getCoordinate().getZ()).isNaN();
        Coordinates at = new Coordinates(points.get(0).getY(), points.get(0).getX());
        assertThat(BlurTest.metres(at, Samples.LANE.at()))
                .isBetween(1.0, told.get("coordinate_uncertainty_m").asDouble());
        // The plant stands with its site: a point of its own in another cell would narrow the site down.
        assertThat(points.get(1).getCoordinate()).isEqualTo(points.get(0).getCoordinate());
    }

    @Test
    void aPlantAcrossTheCellsEdgeStillStandsWithItsSite() throws Exception {
        SplittableRandom random = new SplittableRandom(7946);
        for (int i = 0; i < 200; i++) {
            PlacedSite site = new PlacedSite(
                    "s" + i,
                    "n",
                    new Coordinates(80 * random.nextDouble() - 40, 360 * random.nextDouble() - 180),
                    null,
                    null,
                    null);
            PlacedPlant plant = plant(site, 15_000 * random.nextDouble(), 360 * random.nextDouble());
            List<Point> points = points(GeoJson.write(List.of(site), List.of(plant), CAREFUL));
            assertThat(points.get(1).getCoordinate())
                    .as("seed 7946, round %s", i)
                    .isEqualTo(points.get(0).getCoordinate());
        }
    }

    @Test
    void anExactPlantStandsSoFarInThatDirection() throws Exception {
        SplittableRandom random = new SplittableRandom(9467);
        for (int i = 0; i < 500; i++) {
            double far = 1500 * random.nextDouble();
            double direction = 360 * random.nextDouble();
            PlacedSite site = new PlacedSite(
                    "s",
                    "n",
                    new Coordinates(170 * random.nextDouble() - 85, 180 - 0.005 * random.nextDouble()),
                    null,
                    null,
                    null);
            String text = GeoJson.write(List.of(site), List.of(plant(site, far, direction)), ALL);
            checkRules(text);
            Point at = points(text).get(1);
            GeodesicData way =
                    Geodesic.WGS84.Inverse(site.at().latitudeDeg(), site.at().longitudeDeg(), at.getY(), at.getX());
            // A globe for the ellipsoid: half a per cent of the way, and a step of the sixth decimal.
            assertThat(Math.abs(way.s12 - far)).as("seed 9467, round %s", i).isLessThan(0.006 * far + 0.2);
            if (far > 100) {
                assertThat(Math.abs(Math.IEEEremainder(way.azi1 - direction, 360)))
                        .as("seed 9467, round %s", i)
                        .isLessThan(0.5);
            }
        }
    }

    @Test
    void aPlantWhoseWayNobodyToldHasNoGeometry() throws Exception {
        List<PlacedPlant> plants = List.of(plant(Samples.LANE, null, null), plant(Samples.LANE, null, 75.0));
        String text = GeoJson.write(List.of(), plants, ALL);
        checkRules(text);
        assertThat(features(text)).hasSize(2);
        for (JsonNode feature : features(text)) {
            // RFC 7946 §3.2: the member is there and is null.
            assertThat(feature.get("geometry").isNull()).isTrue();
            assertThat(feature.get("properties").get("site_id").asString()).isEqualTo(Samples.LANE.id());
        }
        JsonNode told = features(text).get(1).get("properties");
        assertThat(told.get("direction_deg").asDouble()).isEqualTo(75);
        assertThat(told.get("cover_m2").asDouble()).isEqualTo(90.5);
        assertThat(told.get("target").asBoolean()).isTrue();
        assertThat(told.get("latin_name").asString()).isEqualTo("Malus domestica");
        assertThat(told.get("bloom")).hasSize(2);
        assertThat(told.get("bloom").get(0).get("full").asString()).isEqualTo("2014-04-28");
        assertThat(told.get("bloom").get(1).get("last").asString()).isEqualTo("2015-05-08");
    }

    @Test
    void aPlantSoFarOffNobodySaidWhereStandsWithItsSiteUncertainByTheDistance() throws Exception {
        PlacedPlant plant = plant(Samples.LANE, 120.0, null);
        String exact = GeoJson.write(List.of(Samples.LANE), List.of(plant), ALL);
        checkRules(exact);
        assertThat(points(exact)
                        .get(1)
                        .getCoordinate()
                        .equals2D(points(exact).get(0).getCoordinate()))
                .isTrue();
        assertThat(uncertainty(exact, 0)).isEqualTo(25);
        assertThat(uncertainty(exact, 1)).isEqualTo(145);
        String blurred = GeoJson.write(List.of(Samples.LANE), List.of(plant), CAREFUL);
        assertThat(uncertainty(blurred, 1)).isEqualTo(uncertainty(blurred, 0) + 120);
    }

    private static int uncertainty(String text, int feature) {
        return features(text)
                .get(feature)
                .get("properties")
                .get("coordinate_uncertainty_m")
                .asInt();
    }

    @Test
    void nothingIsAnEmptyCollection() throws Exception {
        String text = GeoJson.write(List.of(), List.of(), CAREFUL);
        checkRules(text);
        assertThat(features(text)).isEmpty();
    }

    @Test
    void theRulesFindFaults() throws Exception {
        String right = GeoJson.write(List.of(Samples.LANE), List.of(), ALL);
        for (String[] wrong : new String[][] {
            {"-73.967891,40.781234", "40.781234,-173.967891"},
            {"-73.967891,", "-73.9678912,"},
            {"\"Feature\"", "\"feature\""},
            {"\"type\":\"FeatureCollection\"", "\"type\":\"FeatureCollection\",\"crs\":{}"},
            {"\"geometry\"", "\"place\""}
        }) {
            String text = right.replace(wrong[0], wrong[1]);
            assertThat(text).isNotEqualTo(right);
            assertThat(faults(text)).as(wrong[1]).isNotEmpty();
        }
    }

    @Test
    void impossibleNumbersAreRefused() {
        assertThatThrownBy(() -> plant(Samples.LANE, -1.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("distance to apple is -1.0 m, not 0 to 20000.0");
        assertThatThrownBy(() -> plant(Samples.LANE, 1.0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        LocalDate day = LocalDate.parse("2015-04-20");
        assertThatThrownBy(() -> new SeenBloom(day, null, day.minusDays(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("days of bloom out of order: [2015-04-20, 2015-04-19]");
        assertThatThrownBy(() -> new SeenBloom(null, null, null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PlacedSite("", "n", Samples.LANE.at(), null, null, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new PlacedSite("s", "n", Samples.LANE.at(), 0.0, null, null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static PlacedPlant plant(PlacedSite site, @Nullable Double distanceM, @Nullable Double directionDeg) {
        return new PlacedPlant(
                String.format(Locale.ROOT, "plant-%s-%s", distanceM, directionDeg),
                site,
                "apple",
                "Malus domestica",
                90.5,
                true,
                distanceM,
                directionDeg,
                List.of(
                        new SeenBloom(
                                LocalDate.parse("2015-04-20"),
                                LocalDate.parse("2015-04-28"),
                                LocalDate.parse("2015-05-08")),
                        new SeenBloom(null, LocalDate.parse("2014-04-28"), null)));
    }

    private static void checkRules(String text) throws IOException {
        assertThat(faults(text)).as(text).isEmpty();
    }

    private static List<com.networknt.schema.Error> faults(String text) throws IOException {
        try (InputStream rules = GeoJsonTest.class.getResourceAsStream("/exchange/points.schema.json")) {
            assertThat(rules).isNotNull();
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(rules.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
            return schema.validate(text, InputFormat.JSON);
        }
    }

    private static JsonNode features(String text) {
        return JsonMapper.shared().readTree(text).get("features");
    }

    /** Points as JTS reads them; features without geometry are left out. */
    private static List<Point> points(String text) throws ParseException {
        Geometry all = new GeoJsonReader().read(text);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            points.add((Point) all.getGeometryN(i));
        }
        return points;
    }
}
