package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumFact.span;
import static org.nestyear.app.web.SumField.percent;
import static org.nestyear.app.web.SumField.table;
import static org.nestyear.app.web.SumField.text;

import java.util.List;
import org.nestyear.core.advice.Unit;

/** Calculators over years. */
final class YearSums {
    private static final String COUNTS = """
            year,count
            2011,40
            2012,55
            2013,48
            2015,90
            """;

    private static final String YEARS = """
            year,females_out,daughters
            2013,40,55
            2014,50,41
            2015,41,60
            """;

    private YearSums() {}

    static List<Sum> all() {
        return List.of(trend(), years());
    }

    private static Sum years() {
        return Sum.of(
                        "years",
                        "How the stock may go on",
                        "How many bees in the springs to come, and can you spare some?",
                        "years")
                .asks(
                        table("FILE", "Your years", YEARS)
                                .help(
                                        "A heading and a line a year: year,females_out and, where known, daughters, cocoons,"
                                                + " cells, bought, given, joined."),
                        text("--target", "Females to come to", "").optional().help("As many as now unless told."),
                        text("--by", "By the spring of", "").optional().help("Five years on unless told."),
                        text("--tunnels", "Tunnels you have", "").optional().help("Always enough unless told."))
                .shows(
                        number("Females now", "first_females", 0, ""),
                        span("Females next spring, 8 cases in 10", "years/0/p10", "years/0/p90", Unit.COUNT, 0),
                        SumFact.of("Chance of the target", "reach_probability", Unit.SHARE, 0),
                        number("Tunnels needed", "tunnels_needed", 0, ""),
                        number("Females to spare now", "can_spare", 0, ""));
    }

    private static Sum trend() {
        return Sum.of("trend", "Did the stock grow", "How did it grow, and will it come to a number?", "trend")
                .asks(
                        table("FILE", "Counts by year", COUNTS)
                                .help(
                                        "A heading and a line a year: year,count. Three years or more; years may be missing."),
                        text("--target", "Number to come to", "").optional().help("Twice the last count unless told."),
                        text("--within", "Within so many years", "").optional().help("10 unless told."),
                        percent("--level", "Confidence, %", "").optional().help("95 unless told."))
                .shows(
                        number("Growth a year (mu, logarithm)", "mu", 3, ""),
                        span("Growth a year, between", "mu_low", "mu_high", Unit.NUMBER, 3),
                        number("Noise (sigma²)", "sigma2", 3, ""),
                        SumFact.of("Chance to come to the number", "reach_probability", Unit.SHARE, 0),
                        span("Chance, between", "reach_low", "reach_high", Unit.SHARE, 0));
    }
}
