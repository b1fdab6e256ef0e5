package org.nestyear.data.exchange;

import java.io.StringWriter;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.nestyear.data.exchange.Blur.Blurred;
import org.nestyear.data.exchange.PlacedPlant.SeenBloom;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/**
 * Sites and plants as points on a map (GeoJSON, RFC 7946; media type {@code application/geo+json}, UTF-8).
 *
 * <p>A blurred site stands at the centre of its cell, without height or name. A plant stands where distance and direction
 * put it, as seen from an exactly given site. Without a direction, and wherever the site is blurred because a second point
 * would give the first away, it stands with the site, uncertain by its distance. Where not even that was told it has no
 * geometry.
 */
public final class GeoJson {
    /** For the answer's header (RFC 7946 §12). */
    public static final String MEDIA_TYPE = "application/geo+json";

    private static final int PLACES_M = 1;

    private final JsonGenerator json;
    private final Disclosure disclosure;

    private GeoJson(JsonGenerator json, Disclosure disclosure) {
        this.json = json;
        this.disclosure = disclosure;
    }

    /**
     * All of them as one feature collection, sites first.
     *
     * @param sites each id once
     * @param plants each id once
     * @param disclosure what may be given away
     */
    public static String write(List<PlacedSite> sites, List<PlacedPlant> plants, Disclosure disclosure) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            GeoJson geo = new GeoJson(json, disclosure);
            json.writeStartObject();
            json.writeStringProperty("type", "FeatureCollection");
            json.writeArrayPropertyStart("features");
            sites.forEach(geo::site);
            plants.forEach(geo::plant);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void site(PlacedSite site) {
        Blurred place = disclosure.blur().apply(site.at());
        begin(site.id());
        point(place.at(), disclosure.blur().isBlurred() ? null : site.elevationM());
        json.writeObjectPropertyStart("properties");
        json.writeStringProperty("kind", "site");
        if (disclosure.names()) {
            json.writeStringProperty("name", site.name());
        }
        number("faces_deg", site.facesDeg(), PLACES_M);
        uncertainty(place.withinM(), site);
        end();
    }

    private void plant(PlacedPlant plant) {
        PlacedSite site = plant.site();
        Blurred place = disclosure.blur().apply(site.at());
        begin(plant.id());
        Coordinates at = place(plant, place);
        if (at == null) {
            json.writeNullProperty("geometry");
        } else {
            point(at, null);
        }
        json.writeObjectPropertyStart("properties");
        json.writeStringProperty("kind", "plant");
        json.writeStringProperty("name", plant.name());
        if (plant.latinName() != null) {
            json.writeStringProperty("latin_name", plant.latinName());
        }
        json.writeStringProperty("site_id", site.id());
        number("cover_m2", plant.coverM2(), PLACES_M);
        json.writeBooleanProperty("target", plant.target());
        number("distance_m", plant.distanceM(), PLACES_M);
        number("direction_deg", plant.directionDeg(), PLACES_M);
        blooms(plant.blooms());
        if (at != null) {
            uncertainty(place.withinM() + (isPlaced(plant) ? 0 : Objects.requireNonNull(plant.distanceM())), site);
        }
        end();
    }

    private @Nullable Coordinates place(PlacedPlant plant, Blurred site) {
        if (plant.distanceM() == null) {
            return null;
        }
        return isPlaced(plant) && plant.directionDeg() != null
                ? Bearing.from(plant.site().at(), plant.distanceM(), plant.directionDeg())
                : site.at();
    }

    /** True where the plant has a point of its own. */
    private boolean isPlaced(PlacedPlant plant) {
        return plant.distanceM() != null
                && plant.directionDeg() != null
                && !disclosure.blur().isBlurred();
    }

    private void begin(String id) {
        json.writeStartObject();
        json.writeStringProperty("type", "Feature");
        json.writeStringProperty("id", id);
    }

    private void end() {
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Longitude before latitude (§3.1.1). */
    private void point(Coordinates at, @Nullable Double elevationM) {
        json.writeObjectPropertyStart("geometry");
        json.writeStringProperty("type", "Point");
        json.writeArrayPropertyStart("coordinates");
        json.writeNumber(Numbers.rounded(at.longitudeDeg(), Terms.PLACES_DEG));
        json.writeNumber(Numbers.rounded(at.latitudeDeg(), Terms.PLACES_DEG));
        if (elevationM != null) {
            json.writeNumber(Numbers.rounded(elevationM, PLACES_M));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** How coarse the point is: the grid's side where there is one, and how far off it may be where that is known. */
    private void uncertainty(double offM, PlacedSite site) {
        Blur blur = disclosure.blur();
        if (blur.isBlurred()) {
            json.writeNumberProperty("coordinate_grid_m", blur.gridM());
        }
        double withinM = offM + (site.withinM() == null ? 0 : site.withinM());
        if (withinM > 0) {
            number("coordinate_uncertainty_m", Math.ceil(withinM), 0);
        }
    }

    private void blooms(List<SeenBloom> blooms) {
        json.writeArrayPropertyStart("bloom");
        blooms.stream().sorted(Comparator.comparing(SeenBloom::earliest)).forEach(bloom -> {
            json.writeStartObject();
            day("first", bloom.first());
            day("full", bloom.full());
            day("last", bloom.last());
            json.writeEndObject();
        });
        json.writeEndArray();
    }

    private void day(String name, @Nullable LocalDate day) {
        if (day != null) {
            json.writeStringProperty(name, day.toString());
        }
    }

    private void number(String name, @Nullable Double value, int places) {
        if (value != null) {
            json.writeNumberProperty(name, Numbers.rounded(value, places));
        }
    }
}
