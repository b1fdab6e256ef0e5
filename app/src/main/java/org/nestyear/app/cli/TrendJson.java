package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.app.service.TrendAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.outlook.GrowthFit;

/** A trend as one JSON object; its schema is {@code schema/trend.schema.json}. */
final class TrendJson {
    private TrendJson() {}

    /** The text of the object. */
    static String of(TrendAnswer answer) {
        GrowthFit fit = answer.fit();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.whole("first_year", answer.firstYear());
            json.whole("last_year", answer.lastYear());
            json.whole("counts", fit.transitions() + 1);
            json.number("last_count", fit.last());
            json.number("level", answer.question().level());
            json.number("mu", fit.mu());
            json.number("mu_low", answer.mu().low());
            json.number("mu_high", answer.mu().high());
            json.number("sigma2", fit.sigma2());
            json.number("sigma2_low", answer.sigma2().low());
            json.number("sigma2_high", answer.sigma2().high());
            json.number("target", answer.target());
            json.number("within_years", answer.question().withinYears());
            json.number("reach_probability", answer.reach());
            json.number("reach_low", answer.reachRange().low());
            json.number("reach_high", answer.reachRange().high());
            BasisJson.write(json, List.of());
            json.texts("methods", TrendText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
