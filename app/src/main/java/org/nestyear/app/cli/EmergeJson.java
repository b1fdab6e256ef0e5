package org.nestyear.app.cli;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EmergeAnswer;
import org.nestyear.app.service.EmergeQuestion;
import org.nestyear.app.service.Version;

/** An answer about emergence as one JSON object; its schema is {@code schema/emerge.schema.json}. */
final class EmergeJson {
    private EmergeJson() {}

    /** The text of the object. */
    static String of(EmergeAnswer answer) {
        EmergeQuestion question = answer.question();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", question.species().latinName());
            json.number("chill_days", question.chillDays());
            json.number("chill_c", question.chillC());
            if (question.then() instanceof EmergeQuestion.Steady steady) {
                json.number("at_c", steady.celsius());
                json.object("female", sex -> days(sex, answer.female()));
                json.object("male", sex -> days(sex, answer.male()));
            } else if (question.then() instanceof EmergeQuestion.Weather weather) {
                json.date("out", weather.out());
                json.date("weather_ends", answer.lastDay());
                json.whole("filled_days", answer.filledDays());
                json.object("female", sex -> dates(sex, answer.female(), weather.out()));
                json.object("male", sex -> dates(sex, answer.male(), weather.out()));
            }
            json.object("not_emerging_share", shares -> {
                shares.number("female", answer.female().notEmergingShare());
                shares.number("male", answer.male().notEmergingShare());
            });
            json.object("left_in_store_share", shares -> {
                shares.number("female", answer.female().leftInStoreShare());
                shares.number("male", answer.male().leftInStoreShare());
            });
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void days(JsonText json, EmergeAnswer.OneSex sex) {
        json.numberOrNull("p10_days", sex.p10Days());
        json.numberOrNull("p50_days", sex.p50Days());
        json.numberOrNull("p90_days", sex.p90Days());
        json.numberOrNull("mean_days", sex.meanDays());
    }

    private static void dates(JsonText json, EmergeAnswer.OneSex sex, LocalDate out) {
        json.date("p10", date(out, sex.p10Days()));
        json.date("p50", date(out, sex.p50Days()));
        json.date("p90", date(out, sex.p90Days()));
        json.date("mean", date(out, sex.meanDays()));
    }

    /** The day within which a time in days after {@code out} falls. */
    static @Nullable LocalDate date(LocalDate out, @Nullable Double days) {
        return days == null ? null : out.plusDays((long) Math.floor(days));
    }
}
