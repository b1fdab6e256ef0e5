package org.nestyear.app.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.NextYear;
import org.nestyear.app.book.SpringThatWas;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;

/** A year looked back on, as text and as JSON of the schemas {@code next-year} and {@code spring}. */
final class LookBackPrint {
    private LookBackPrint() {}

    static String text(NextYear answer) {
        Page page = new Page();
        page.paragraph(
                0,
                (answer.written() ? "Wrote down the batch " : "Nothing was written. The batch would be ")
                        + answer.batch() + ": " + answer.alive() + " living, about " + answer.females()
                        + " of them females (" + answer.sexesFrom() + ").");
        page.paragraph(
                0,
                "The nests of " + answer.year() + " held " + answer.cells() + " cells; "
                        + share(answer.cells() - answer.alive(), answer.cells()) + " were lost"
                        + (answer.lost().isEmpty()
                                ? "."
                                : ": "
                                        + answer.lost().entrySet().stream()
                                                .map(cause -> cause.getValue() + " "
                                                        + cause.getKey().replace('_', ' '))
                                                .collect(Collectors.joining(", "))
                                        + "."));
        if (answer.femalesOut() > 0) {
            page.paragraph(
                    0,
                    "For " + answer.femalesOut() + " females put out there are " + answer.females() + " again: times "
                            + String.format(Locale.ROOT, "%.2f", answer.growth()) + ".");
        }
        if (answer.written()) {
            page.paragraph(0, "Take it back with nestyear undo. What was lost and why: nestyear losses --site.");
        }
        return page.toString();
    }

    private static String share(int part, int all) {
        return Wording.share(part / (double) Math.max(1, all), 0);
    }

    static String json(NextYear answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("site", answer.site());
            json.text("species", answer.species());
            json.whole("year", answer.year());
            json.text("batch", answer.batch());
            json.flag("written", answer.written());
            json.whole("cells", answer.cells());
            json.whole("alive", answer.alive());
            json.object("lost", lost -> answer.lost().forEach(lost::whole));
            json.whole("females_out", answer.femalesOut());
            json.whole("females", answer.females());
            json.whole("males", answer.males());
            json.text("sexes_from", answer.sexesFrom());
            json.numberOrNull("growth", answer.femalesOut() == 0 ? null : Double.valueOf(answer.growth()));
            json.texts("parents", answer.parents());
        });
    }

    static String text(SpringThatWas answer, Wording words) {
        Page page = new Page();
        page.paragraph(
                0,
                "The spring of " + answer.year() + " at " + answer.site() + ", " + answer.species() + ", put out on "
                        + words.date(answer.released()) + ".");
        page.heading("FORECAST AND WHAT HAPPENED");
        for (SpringThatWas.Line line : answer.lines()) {
            page.hanging(2, 6, capital(line.what()) + ": forecast " + band(line, words) + "; " + came(line, words));
        }
        page.heading("WHAT ONE CHANGE WOULD HAVE GAINED");
        SpringThatWas.Hindsight hindsight = answer.hindsight();
        if (hindsight == null) {
            page.paragraph(2, "That cannot be told: the weather of the whole spring is not in the table yet.");
        } else if (hindsight.cost() < 0.02 || hindsight.best().equals(answer.released())) {
            page.paragraph(
                    2,
                    "Nothing: with the weather that came, no other day would have been more than "
                            + Wording.share(Math.max(0.01, hindsight.cost()), 0) + " better.");
        } else {
            page.paragraph(
                    2,
                    "With the weather that came, " + words.date(hindsight.best()) + " would have been the best day; the"
                            + " day you chose lost " + Wording.share(hindsight.cost(), 0)
                            + " against it. Nobody could know that weather on the day.");
        }
        counts(page, answer);
        own(page, answer.own());
        if (answer.own().isEmpty()) {
            page.heading("YOUR SPRINGS AND THE MODEL");
            page.paragraph(2, "Write down the first male, female and nesting bee, and they are compared here.");
        }
        page.blank();
        page.paragraph(0, "How well this is known: " + BasisWords.weakness(answer.basis()));
        return page.toString();
    }

    /** The keeper's own springs beside a plan; empty where none is told. */
    static String ownSprings(List<SpringThatWas.Offset> own) {
        Page page = new Page();
        own(page, own);
        return page.toString();
    }

    private static void own(Page page, List<SpringThatWas.Offset> own) {
        if (own.isEmpty()) {
            return;
        }
        page.heading("YOUR SPRINGS AND THE MODEL");
        for (SpringThatWas.Offset offset : own) {
            page.hanging(
                    2,
                    6,
                    capital(offset.what()) + ": " + days(offset.meanDays()) + " on average of " + offset.years()
                            + (offset.years() == 1 ? " spring" : " springs")
                            + (offset.years() == 1
                                    ? ""
                                    : " (from " + days(offset.leastDays()) + " to " + days(offset.mostDays()) + ")")
                            + ".");
        }
        page.paragraph(
                2,
                "Reckoned with each spring's own weather, so what is left is your bees, your site and the model. The dates"
                        + " above are the model's. Under five springs, take this as a hint.");
    }

    private static void counts(Page page, SpringThatWas answer) {
        if (answer.plugged() >= 0 || answer.cells() >= 0) {
            page.heading("COUNTED");
            page.paragraph(
                    2,
                    (answer.plugged() < 0 ? "" : answer.plugged() + " tunnels plugged on your visits. ")
                            + (answer.cells() < 0 ? "" : answer.cells() + " cells found when the nests were opened."));
        }
    }

    private static String band(SpringThatWas.Line line, Wording words) {
        LocalDate early = line.early();
        LocalDate late = line.late();
        return early == null || late == null
                ? "no day"
                : words.date(early) + " to " + words.date(late)
                        + (line.middle() == null ? "" : ", most likely about " + words.date(line.middle()));
    }

    private static String came(SpringThatWas.Line line, Wording words) {
        LocalDate happened = line.happened();
        if (happened == null) {
            return "not written down.";
        }
        String then = switch (line.verdict()) {
            case "earlier" -> ", earlier than forecast";
            case "later" -> ", later than forecast";
            case "as forecast" -> ", as forecast";
            default -> "";
        };
        return "seen on " + words.date(happened) + then + "."
                + (line.weatherKnown() == null
                        ? ""
                        : " With the weather known the model says " + words.date(line.weatherKnown()) + ".");
    }

    private static String days(double days) {
        long whole = Math.round(Math.abs(days));
        return whole == 0 ? "on the day" : whole + (whole == 1 ? " day " : " days ") + (days > 0 ? "later" : "earlier");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String json(SpringThatWas answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("site", answer.site());
            json.text("species", answer.species());
            json.whole("year", answer.year());
            json.date("released", answer.released());
            json.objects("seen", answer.lines(), (to, line) -> {
                to.text("what", line.what());
                to.date("early", line.early());
                to.date("middle", line.middle());
                to.date("unusual_from", line.late());
                to.date("happened", line.happened());
                to.date("middle_weather_known", line.weatherKnown());
                to.text("verdict", line.verdict().isEmpty() ? null : line.verdict());
            });
            SpringThatWas.@Nullable Hindsight hindsight = answer.hindsight();
            if (hindsight == null) {
                json.text("hindsight", null);
            } else {
                json.object("hindsight", to -> {
                    to.date("best", hindsight.best());
                    to.number("cost", hindsight.cost());
                });
            }
            json.objects("own_springs", answer.own(), (to, offset) -> {
                to.text("what", offset.what());
                to.number("mean_days", offset.meanDays());
                to.number("least_days", offset.leastDays());
                to.number("most_days", offset.mostDays());
                to.whole("years", offset.years());
            });
            json.numberOrNull("plugged", answer.plugged() < 0 ? null : Double.valueOf(answer.plugged()));
            json.numberOrNull("cells", answer.cells() < 0 ? null : Double.valueOf(answer.cells()));
            BasisJson.write(json, answer.basis());
        });
    }
}
