package org.nestyear.app.cli;

import java.util.OptionalDouble;
import org.nestyear.app.service.BloomAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomModel;
import org.nestyear.core.bloom.fit.ChillThenHeat;
import org.nestyear.core.bloom.fit.MeanDate;
import org.nestyear.core.bloom.fit.SpringIndexDate;
import org.nestyear.core.bloom.fit.StandardDays;
import org.nestyear.core.bloom.fit.ThermalTimeModel;

/** An answer about bloom as one JSON object; its schema is {@code schema/bloom.schema.json}. */
final class BloomJson {
    private BloomJson() {}

    /** The text of the object. */
    static String of(BloomAnswer answer) {
        BloomChoice choice = answer.choice();
        OptionalDouble rival = choice.meanDateErrorDays();
        boolean few = choice.reason() == BloomChoice.Reason.TOO_FEW_DATES;
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("model", choice.model().kind().word());
            json.object("parameters", parameters -> parameters(parameters, choice.model()));
            json.flag("general", few);
            json.whole("dates_used", choice.dates());
            json.whole("dates_without_weather", answer.unused().size());
            json.numberOrNull("leave_one_out_rmse_days", few ? null : choice.errorDays());
            json.numberOrNull("mean_date_rmse_days", rival.isPresent() ? rival.getAsDouble() : null);
            json.objects("models", choice.scores(), (each, score) -> {
                each.text("model", score.kind().word());
                each.whole("years", score.years());
                each.numberOrNull("leave_one_out_rmse_days", score.years() > 0 ? score.rmse() : null);
            });
            json.objects("predicted", answer.predicted(), BloomJson::year);
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void year(JsonText json, BloomAnswer.Predicted predicted) {
        BloomAnswer.Dates dates = predicted.dates();
        json.whole("year", predicted.year());
        json.date("date", dates == null ? null : dates.date());
        json.date("early", dates == null ? null : dates.early());
        json.date("late", dates == null ? null : dates.late());
    }

    private static void parameters(JsonText json, BloomModel model) {
        if (model instanceof ThermalTimeModel sum) {
            json.whole("start_day", sum.startDay());
            json.number("base_c", sum.baseC());
            json.number("degree_days", sum.sum());
        } else if (model instanceof StandardDays sum) {
            json.whole("start_day", sum.startDay());
            json.number("slope_per_c", sum.slope());
            json.number("standard_days", sum.sum());
        } else if (model instanceof ChillThenHeat both) {
            json.number("chill_portions", both.portions());
            json.number("growing_degree_hours", both.degreeHours());
        } else if (model instanceof SpringIndexDate index) {
            json.number("days_after_index", index.daysAfter());
        } else if (model instanceof MeanDate mean) {
            json.number("day", mean.day());
        }
    }
}
