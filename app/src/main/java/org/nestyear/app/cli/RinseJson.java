package org.nestyear.app.cli;

import org.nestyear.app.service.RinseAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.hygiene.Mixture;

/** An answer about a rinse as one JSON object; its schema is {@code schema/rinse.schema.json}. */
final class RinseJson {
    private RinseJson() {}

    /** The text of the object. */
    static String of(RinseAnswer answer) {
        Mixture mixture = answer.question().mixture();
        // No recipe is worked out for what must not be rinsed.
        boolean recipe = answer.question().targetPpm() == null || answer.allowed();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("item", answer.question().item().word());
            json.number("label_percent", mixture.labelPercent());
            json.number("water_ml", mixture.waterMl());
            json.numberOrNull("bleach_ml", recipe ? mixture.bleachMl() : null);
            json.number("ppm", mixture.ppm());
            json.flag("allowed", answer.allowed());
            json.text("verdict", answer.verdict());
            json.texts("steps", answer.steps());
            json.texts("cautions", answer.cautions());
            json.objects("published", answer.published(), (each, row) -> {
                each.number("ppm", row.value());
                each.number("low_ppm", row.low());
                each.number("high_ppm", row.high());
                each.text("used_for", row.note());
                each.text("kind", row.basis().word());
                each.text("citation", row.source().citation());
                each.text("locator", row.locator());
            });
            BasisJson.write(json, answer.basis());
            json.texts("methods", RinseText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
