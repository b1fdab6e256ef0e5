package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.BloomAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.BloomModelWords;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.ModelScore;

/** An answer about bloom in words. */
final class BloomText {
    private BloomText() {}

    /** The lines of the answer. */
    static String of(BloomAnswer answer, Wording words) {
        List<String> lines = new ArrayList<>();
        lines.add(chosen(answer, words));
        for (ModelScore score : answer.choice().scores()) {
            if (score.years() > 0) {
                lines.add("On " + score.years() + " years left out, "
                        + score.kind().word() + " was " + days(words, score.rmse()) + " off.");
            }
        }
        if (!answer.unused().isEmpty()) {
            lines.add(answer.unused().size() + " of the dates have no weather behind them and were not used.");
        }
        lines.add("");
        for (BloomAnswer.Predicted year : answer.predicted()) {
            BloomAnswer.Dates dates = year.dates();
            lines.add(
                    dates == null
                            ? year.year() + ": the weather does not cover that spring."
                            : year.year() + ": " + words.date(dates.date()) + ", in eight years of ten "
                                    + words.range(dates.early(), dates.late()) + ".");
        }
        if (answer.predicted().isEmpty()) {
            lines.add("Every spring of the weather has its own date, so nothing is predicted.");
        }
        lines.add("");
        lines.add(BasisWords.weakness(answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String chosen(BloomAnswer answer, Wording words) {
        BloomChoice choice = answer.choice();
        String model = words.phrase(BloomModelWords.of(choice.model(), answer::date));
        return switch (choice.reason()) {
            case SMALLEST_ERROR -> "Used: " + model + ", fitted to " + choice.dates() + " dates.";
            case NONE_BEATS_THE_MEAN_DATE ->
                "No weather model came closer to the " + choice.dates()
                        + " dates than their mean, so it is used whatever the weather: " + model + ".";
            case TOO_FEW_DATES ->
                "With " + choice.dates() + " dates nothing is fitted; used: " + model
                        + ", a general sum that is off by " + days(words, choice.errorDays()) + ".";
        };
    }

    private static String days(Wording words, double days) {
        return words.quantity(new Quantity(days, Unit.DAY, 1));
    }
}
