package org.nestyear.app.service;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.Source;
import org.nestyear.core.sun.ClearSky;
import org.nestyear.core.sun.Facade;
import org.nestyear.core.sun.Light;
import org.nestyear.core.sun.SunPosition;
import org.nestyear.core.sun.SunTimes;

/**
 * Where the sun stands, and its light under a clear sky.
 *
 * @param times sunrise and sunset, over a level horizon at sea level
 * @param clearSkyWm2 light on the level under a clear sky, W/m²
 * @param facadeWm2 light on the front, W/m², or null when none was asked for
 * @param basis the numbers it rests on
 */
public record SunAnswer(
        SunQuestion question,
        SunPosition position,
        SunTimes times,
        double clearSkyWm2,
        @Nullable Double facadeWm2,
        List<Parameter> basis) {
    /** The one number of this answer, which is a custom of the trade and in no table. */
    static final Parameter ALBEDO = new Parameter(
            "ground_albedo",
            Facade.CUSTOMARY_ALBEDO,
            "1",
            Facade.CUSTOMARY_ALBEDO,
            Facade.CUSTOMARY_ALBEDO,
            Basis.COMMON_PRACTICE,
            new Source(
                    "liu-jordan-1963",
                    "Liu & Jordan 1963, The long-term average performance of flat-plate solar-energy collectors,"
                            + " Solar Energy 7(2):53",
                    ""),
            "customary value for grass and bare soil",
            "",
            "share of light the ground throws back");

    public SunAnswer {
        basis = List.copyOf(basis);
    }

    /** Answers the question. */
    public static SunAnswer of(SunQuestion question) {
        OffsetDateTime at = question.at();
        SunPosition position = SunPosition.of(question.observer(), at.toInstant());
        SunTimes times = SunTimes.of(question.observer(), at.toLocalDate(), at.getOffset());
        Light light = ClearSky.at(position.zenithDeg());
        Double faces = question.facesDeg();
        Double facade = faces == null ? null : Facade.irradianceWm2(position, light, faces, Facade.CUSTOMARY_ALBEDO);
        return new SunAnswer(
                question, position, times, light.globalWm2(), facade, faces == null ? List.of() : List.of(ALBEDO));
    }

    /** Sunrise to the second under the question's offset, or null when the sun does not rise. */
    public @Nullable OffsetDateTime sunrise() {
        return times instanceof SunTimes.RisesAndSets day ? local(day.sunrise()) : null;
    }

    /** Sunset to the second under the question's offset, or null when the sun does not set. */
    public @Nullable OffsetDateTime sunset() {
        return times instanceof SunTimes.RisesAndSets day ? local(day.sunset()) : null;
    }

    /** Sixteen characters that change with the question or the version. */
    public String fingerprint() {
        Fingerprint print = new Fingerprint("");
        print.add(question);
        return print.digits();
    }

    private OffsetDateTime local(Instant instant) {
        return instant.plusMillis(500)
                .truncatedTo(ChronoUnit.SECONDS)
                .atOffset(question.at().getOffset());
    }
}
