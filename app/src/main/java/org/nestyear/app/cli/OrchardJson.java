package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.app.service.OrchardAnswer;
import org.nestyear.app.service.OrchardQuestion;
import org.nestyear.app.service.Version;
import org.nestyear.core.stocking.Spread;

/** Bees and tunnels of an orchard as one JSON object; its schema is {@code schema/orchard.schema.json}. */
final class OrchardJson {
    private OrchardJson() {}

    /** The text of the object. */
    static String of(OrchardAnswer answer) {
        OrchardQuestion question = answer.question();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", question.species().latinName());
            json.text("crop", question.crop());
            json.numberOrNull("trees", question.trees() == null ? null : (double) question.trees());
            spread(json, "area_ha", answer.hectares());
            spread(json, "females", answer.females());
            spread(json, "female_cocoons", answer.femaleCocoons());
            spread(json, "male_cocoons", answer.maleCocoons());
            spread(json, "cocoons", answer.cocoons());
            spread(json, "tunnels", answer.tunnels());
            json.number("hole_width_mm", answer.need().holeWidthMm());
            json.number("length_mm", answer.need().lengthMm());
            json.object("rate_per_ha", rate -> {
                rate.number("value", answer.rate().value());
                rate.number("low", answer.rate().low());
                rate.number("high", answer.rate().high());
            });
            BasisJson.write(json, answer.basis());
            json.texts("methods", List.of());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    /** The number under its name, its ends beside it. */
    private static void spread(JsonText json, String name, Spread spread) {
        json.number(name, spread.value());
        json.number(name + "_low", spread.low());
        json.number(name + "_high", spread.high());
    }
}
