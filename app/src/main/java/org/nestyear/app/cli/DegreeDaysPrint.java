package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.app.service.DegreeDaysAnswer;
import org.nestyear.app.service.DegreeDaysQuestion;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;

/** A sum of warmth as text, and as JSON of the schema {@code schema/degree-days.schema.json}. */
final class DegreeDaysPrint {
    private static final String METHOD =
            "One sine through each day, cut at the base: Baskerville & Emin 1969, Ecology 50:514";

    private DegreeDaysPrint() {}

    static String json(DegreeDaysAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.number("degree_days", answer.degreeDays());
            json.number("degree_days_of_means", answer.ofMeans());
            json.number("base_c", answer.question().baseC());
            json.numberOrNull("cap_c", answer.question().capC());
            json.whole("days", answer.days());
            json.whole("filled_days", answer.filledDays());
            BasisJson.write(json, List.of());
            json.texts("methods", List.of(METHOD));
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static String text(DegreeDaysAnswer answer, Wording words) {
        DegreeDaysQuestion question = answer.question();
        StringBuilder text = new StringBuilder();
        text.append(words.quantity(new Quantity(answer.degreeDays(), Unit.DEGREE_DAY, 1)))
                .append(" above ")
                .append(words.quantity(new Quantity(question.baseC(), Unit.CELSIUS, 1)));
        if (question.capC() != null) {
            text.append(", warmth above ")
                    .append(words.quantity(new Quantity(question.capC(), Unit.CELSIUS, 1)))
                    .append(" counted as that");
        }
        if (question.over() instanceof DegreeDaysQuestion.Table table) {
            text.append(", from ")
                    .append(words.dateWithYear(table.from()))
                    .append(" to ")
                    .append(words.dateWithYear(table.to()));
        }
        text.append(".\n");
        if (answer.filledDays() > 0) {
            text.append(answer.filledDays())
                    .append(" of the ")
                    .append(answer.days())
                    .append(" days were missing in the table and filled.\n");
        }
        text.append("By the plain mean of lowest and highest, as summed by hand: ")
                .append(words.quantity(new Quantity(answer.ofMeans(), Unit.DEGREE_DAY, 1)))
                .append(".\n\n");
        return text.append(METHOD).append(".\n").toString();
    }
}
