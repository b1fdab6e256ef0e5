package org.nestyear.app.cli;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.SunAnswer;
import org.nestyear.app.service.SunQuestion;
import org.nestyear.app.service.Version;
import org.nestyear.core.sun.SunTimes;

/** An answer about the sun as one JSON object; its schema is {@code schema/sun.schema.json}. */
final class SunJson {
    private SunJson() {}

    /** The text of the object. */
    static String of(SunAnswer answer) {
        SunQuestion question = answer.question();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.number("latitude_deg", question.observer().latitudeDeg());
            json.number("longitude_deg", question.observer().longitudeDeg());
            json.number("elevation_m", question.observer().elevationM());
            json.number("pressure_hpa", question.observer().pressureHPa());
            json.number("temperature_c", question.observer().temperatureC());
            json.text("at", stamp(question.at()));
            json.number("zenith_deg", answer.position().zenithDeg());
            json.number("refraction_deg", answer.position().refractionDeg());
            json.number("azimuth_deg", answer.position().azimuthDeg());
            json.text("sunrise", stamp(answer.sunrise()));
            json.text("sunset", stamp(answer.sunset()));
            json.text("sun", word(answer.times()));
            json.number("clear_sky_w_m2", answer.clearSkyWm2());
            json.numberOrNull("facade_w_m2", answer.facadeWm2());
            json.numberOrNull("faces_deg", question.facesDeg());
            BasisJson.write(json, answer.basis());
            json.texts("methods", SunText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static String word(SunTimes times) {
        if (times instanceof SunTimes.RisesAndSets) {
            return "rises and sets";
        }
        return times instanceof SunTimes.StaysUp ? "stays up" : "stays down";
    }

    private static @Nullable String stamp(@Nullable OffsetDateTime time) {
        return time == null ? null : DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }
}
