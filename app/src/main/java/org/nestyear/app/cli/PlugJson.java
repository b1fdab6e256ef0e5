package org.nestyear.app.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PlugAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.Lodger;

/** The plug card as one JSON object; its schema is {@code schema/plug.schema.json}. */
final class PlugJson {
    private PlugJson() {}

    /** The text of the object. */
    static String of(PlugAnswer answer) {
        CardQuestion next = answer.next();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.object("given", entry -> {
                for (CardQuestion question : CardQuestion.values()) {
                    entry.text(question.word(), answer.given().get(question));
                }
            });
            json.text("when", answer.when() == null ? null : answer.when().word());
            json.text("sure", answer.given().isEmpty() ? null : answer.sure().word());
            json.objects("likely", answer.likely(), (entry, match) -> {
                entry.number("share", match.share());
                entry.texts(
                        "does_not_fit",
                        match.against().stream().map(CardQuestion::word).toList());
                lodger(entry, match.lodger());
            });
            json.text("next", next == null ? null : next.word());
            json.objects("card", answer.given().isEmpty() ? answer.card().lodgers() : List.of(), PlugJson::lodger);
            json.objects("words", answer.given().isEmpty() ? answer.card().signs() : List.of(), (entry, sign) -> {
                entry.text("question", sign.question().word());
                entry.text("word", sign.word());
                entry.text("meaning", sign.meaning());
            });
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void lodger(JsonText json, Lodger lodger) {
        json.text("id", lodger.id());
        json.text("name", lodger.name());
        json.text("latin", orNull(lodger.latin()));
        json.text("kind", lodger.kind().word());
        json.text("verdict", lodger.verdict().word());
        json.text("spring_summer", lodger.inFlight());
        json.text("autumn_winter", lodger.atRest());
        json.text("never", lodger.never());
        json.text("caution", orNull(lodger.caution()));
        json.text("basis_of_signs", lodger.basis().word());
        json.text("citation", lodger.source().citation());
        json.text("locator", lodger.locator());
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
