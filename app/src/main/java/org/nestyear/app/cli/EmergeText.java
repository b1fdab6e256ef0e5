package org.nestyear.app.cli;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.EmergeAnswer;
import org.nestyear.app.service.EmergeQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;

/** An answer about emergence in words. */
final class EmergeText {
    private final EmergeAnswer answer;
    private final Wording words;

    private EmergeText(EmergeAnswer answer, Wording words) {
        this.answer = answer;
        this.words = words;
    }

    /** The lines of the answer. */
    static String of(EmergeAnswer answer, Wording words) {
        EmergeText text = new EmergeText(answer, words);
        StringBuilder lines = new StringBuilder();
        lines.append(text.question()).append('\n');
        lines.append(text.sex("Males", answer.male())).append('\n');
        lines.append(text.sex("Females", answer.female())).append('\n');
        if (!answer.isComplete() && answer.lastDay() != null) {
            lines.append("The weather ends on ")
                    .append(words.dateWithYear(answer.lastDay()))
                    .append(", before all are out; more weather gives the rest.\n");
        }
        if (answer.filledDays() > 0) {
            lines.append(answer.filledDays()).append(" days without temperatures were filled.\n");
        }
        lines.append('\n');
        String borrowed =
                BasisWords.borrowed(answer.basis(), answer.question().species().latinName());
        if (!borrowed.isEmpty()) {
            lines.append(borrowed).append('\n');
        }
        lines.append(BasisWords.weakness(answer.basis())).append('\n');
        return lines.toString();
    }

    private String question() {
        EmergeQuestion question = answer.question();
        String after =
                question.species().commonName() + " (" + question.species().latinName() + "), "
                        + words.quantity(Quantity.days(question.chillDays())) + " at "
                        + words.quantity(new Quantity(question.chillC(), Unit.CELSIUS, 1));
        if (question.then() instanceof EmergeQuestion.Steady steady) {
            return after + ", then kept at " + words.quantity(new Quantity(steady.celsius(), Unit.CELSIUS, 1)) + ".";
        }
        EmergeQuestion.Weather weather = (EmergeQuestion.Weather) question.then();
        return after + ", put out on " + words.dateWithYear(weather.out()) + ".";
    }

    private String sex(String who, EmergeAnswer.OneSex sex) {
        String spread = answer.question().then() instanceof EmergeQuestion.Weather weather
                ? "a tenth out on " + date(weather.out(), sex.p10Days()) + ", half on "
                        + date(weather.out(), sex.p50Days()) + ", nine tenths on " + date(weather.out(), sex.p90Days())
                : "a tenth out after " + days(sex.p10Days()) + ", half after " + days(sex.p50Days())
                        + ", nine tenths after " + days(sex.p90Days()) + " (mean " + days(sex.meanDays()) + ")";
        String store = sex.leftInStoreShare() > 0
                ? ", and " + Wording.share(sex.leftInStoreShare(), 0) + " leave their cocoons in the store"
                : "";
        return who + ": " + spread + ". About " + Wording.share(sex.notEmergingShare(), 0) + " of cocoons never open"
                + store + ".";
    }

    private String days(@Nullable Double days) {
        return days == null ? "more than a year" : words.quantity(new Quantity(days, Unit.DAY, 1));
    }

    private String date(LocalDate out, @Nullable Double days) {
        LocalDate date = EmergeJson.date(out, days);
        return date == null ? "a later day" : words.date(date);
    }
}
