package org.nestyear.app.cli;

import org.nestyear.app.service.MudAnswer;
import org.nestyear.app.service.MudQuestion;
import org.nestyear.app.service.Version;
import org.nestyear.core.mud.TextureClass;

/** An answer about mud as one JSON object; its schema is {@code schema/mud.schema.json}. */
final class MudJson {
    private MudJson() {}

    /** The text of the object. */
    static String of(MudAnswer answer) {
        MudQuestion question = answer.question();
        MudQuestion.Tray tray = question.tray();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.number("sand_percent", question.soil().sandPercent());
            json.number("silt_percent", question.soil().siltPercent());
            json.number("clay_percent", question.soil().clayPercent());
            json.text("texture_class", answer.texture().word());
            json.texts(
                    "possible_classes",
                    answer.possible().stream().map(TextureClass::word).toList());
            json.number("error_points", answer.errorPoints());
            json.number("height_mm", question.settling().heightMm());
            json.number("water_c", question.settling().waterC());
            json.object("settle_minutes", minutes -> {
                minutes.number("sand", answer.sandMinutes());
                minutes.number("silt", answer.siltMinutes());
            });
            json.number("cut_at_two_hours_mm", answer.cutAtTwoHoursMm());
            json.numberOrNull("tray_m2", tray == null ? null : tray.squareMetres());
            json.numberOrNull("et0_mm", tray == null ? null : tray.et0Mm());
            json.numberOrNull("water_l_per_day", answer.litresADay());
            BasisJson.write(json, answer.basis());
            json.texts("methods", MudText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
