package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.app.service.SampleAnswer;
import org.nestyear.app.service.SampleQuestion;
import org.nestyear.app.service.SampleQuestion.Things;
import org.nestyear.app.service.Version;

/** How many to look at as one JSON object; its schema is {@code schema/sample.schema.json}. */
final class SampleJson {
    private SampleJson() {}

    /** The text of the object. */
    static String of(SampleAnswer answer) {
        SampleQuestion question = answer.question();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("things", question.things().word());
            json.numberOrNull(
                    "population",
                    question.population().isPresent()
                            ? (double) question.population().getAsInt()
                            : null);
            Double prevalence = null;
            Double margin = null;
            Double confidence = null;
            Double sensitivity = null;
            if (question.aim() instanceof SampleQuestion.See see) {
                prevalence = see.prevalence();
                confidence = see.confidence();
                sensitivity = see.sensitivity();
            } else if (question.aim() instanceof SampleQuestion.Know know) {
                prevalence = know.expected();
                margin = know.margin();
                confidence = know.confidence();
            }
            json.numberOrNull("prevalence", prevalence);
            json.numberOrNull("margin", margin);
            json.numberOrNull("confidence", confidence);
            json.numberOrNull("sensitivity", sensitivity);
            json.whole("n", answer.n());
            json.numberOrNull("n_exact", answer.exact() == null ? null : (double) answer.exact());
            json.numberOrNull("chance_with_n_exact", answer.chance());
            json.flag("reached", answer.isReached());
            json.numberOrNull("ill", answer.ill() == null ? null : (double) answer.ill());
            json.flag("look_at_all", answer.lookAtAll());
            json.flag("destructive_allowed", answer.opening().allowed());
            json.whole("open_at_most", answer.opening().most());
            json.numberOrNull("chance_with_those", answer.opening().chanceWithMost());
            json.texts(
                    "non_destructive_checks",
                    question.things() == Things.COCOONS ? SampleText.NOTHING_DESTROYED : List.of());
            BasisJson.write(json, answer.basis());
            json.texts("methods", SampleText.methods(answer));
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
