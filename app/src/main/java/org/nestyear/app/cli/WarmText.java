package org.nestyear.app.cli;

import java.time.LocalDate;
import java.util.List;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.DateBand;
import org.nestyear.app.service.WarmAnswer;
import org.nestyear.app.service.WarmQuestion;
import org.nestyear.app.service.WarmWords;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.weather.LogGap;

/** An answer about warming in words: the dates first, then what to watch, hold and heed. */
final class WarmText {
    private final WarmAnswer answer;
    private final Wording words;
    private final LocalDate today;
    private final Page page = new Page();

    private WarmText(WarmAnswer answer, Wording words, LocalDate today) {
        this.today = today;
        this.answer = answer;
        this.words = words;
    }

    /** The whole page, one paragraph a line. */
    static String of(WarmAnswer answer, Wording words, LocalDate today) {
        WarmText text = new WarmText(answer, words, today);
        text.head();
        text.dates();
        text.section("PARASITOIDS", List.of(text.watch()));
        text.section("IF THE WEATHER TURNS BAD", WarmWords.holding(answer, words));
        text.section("AFTERWARDS", WarmWords.afterwards(answer, words));
        text.section("WINTER", List.of(WarmWords.winter(answer, words)));
        text.section(
                "CAUTIONS",
                WarmWords.cautions(answer, words).stream()
                        .map(WarmWords.Caution::text)
                        .toList());
        text.known();
        return text.page.toString();
    }

    private void head() {
        WarmQuestion question = answer.question();
        DateBand half = answer.date(Milestone.HALF_FEMALES);
        WarmAnswer.Years years = answer.years();
        if (question.warmth() instanceof WarmQuestion.ReadyBy ready) {
            LocalDate latest = answer.startLatest();
            page.line("Begin warming on " + words.dateWithYear(answer.start())
                    + (latest == null || latest.equals(answer.start())
                            ? ""
                            : ", at the latest on " + words.date(latest))
                    + ", to have half the females out by " + words.date(ready.date()) + ".");
            if (latest != null && latest.isBefore(today)) {
                page.line("That is past. --start " + today
                        + " in place of --ready-by tells when they come out if you begin" + " today.");
            }
        } else if (years != null && 2 * years.inTime() < years.count()) {
            page.line("Perhaps not this summer: " + inTime(years).replaceFirst("^H", "h") + ".");
        } else if (years != null) {
            page.line("Outdoors half the females come out " + WarmWords.band(words, half)
                    + (years.count() == 1 ? " in the weather of that summer." : " in eight summers of ten."));
        } else {
            page.line("Half the females come out " + WarmWords.band(words, half) + ".");
        }
        page.blank();
        page.line(sentenceCase(question.species().commonName()) + " ("
                + question.species().latinName() + "), " + how() + ".");
    }

    private String how() {
        WarmQuestion.Warmth warmth = answer.question().warmth();
        String had = before();
        if (warmth instanceof WarmQuestion.Logged) {
            WarmAnswer.LogAnswer log = answer.log();
            return "by the log from " + words.dateWithYear(answer.start()) + had
                    + (log == null ? "" : " (mean " + celsius(log.meanC()) + ")");
        }
        if (warmth instanceof WarmQuestion.Outdoors) {
            return "put out in the house on " + words.dateWithYear(answer.start()) + had;
        }
        Double at = WarmWords.steadyC(answer.question());
        return "warmed at " + (at == null ? "" : celsius(at)) + " from " + words.dateWithYear(answer.start()) + had;
    }

    private String before() {
        if (answer.question().before() instanceof WarmQuestion.Warmed warmed) {
            return ", after " + days(warmed.days()) + " of warmth before";
        }
        return answer.question().before() instanceof WarmQuestion.FlightIn flight
                ? ", bought " + days(flight.days()) + " before flight"
                : "";
    }

    private void dates() {
        page.blank();
        page.table(
                0,
                List.of(
                        row("first males", Milestone.FIRST_MALE),
                        row("first females", Milestone.FIRST_FEMALE),
                        row("half the females", Milestone.HALF_FEMALES),
                        row("most bees", Milestone.MOST_OUT)));
        WarmAnswer.Years years = answer.years();
        WarmAnswer.LogAnswer log = answer.log();
        WarmAnswer.HoldAnswer hold = answer.hold();
        if (years != null || log != null || hold != null) {
            page.blank();
        }
        if (years != null) {
            years(years);
        }
        if (log != null) {
            log(log);
        }
        if (hold != null) {
            page.line(WarmWords.verdict(hold, answer, words));
        }
    }

    private List<String> row(String what, Milestone milestone) {
        return List.of(what, WarmWords.band(words, answer.date(milestone)));
    }

    private void years(WarmAnswer.Years years) {
        page.line(
                inTime(years) + "; later bees hardly raise brood. These temperatures are those of the air in the shade."
                        + " In a house that the sun keeps " + warmer(years) + " warmer, half the females come out "
                        + WarmWords.band(words, years.warmerHalf()) + ".");
        if (years.inTime() < years.count()) {
            page.line("To be sure of them, warm them indoors.");
        }
    }

    private String inTime(WarmAnswer.Years years) {
        String inTime = years.inTime() == years.perhapsInTime()
                ? String.valueOf(years.inTime())
                : years.inTime() + " to " + years.perhapsInTime();
        return "Half the females are out by " + words.date(years.lastUseful()) + " in " + inTime + " of "
                + years.count() + (years.count() == 1 ? " summer" : " summers");
    }

    private String warmer(WarmAnswer.Years years) {
        return words.quantity(new Quantity(years.warmerC(), Unit.CELSIUS_DIFFERENCE, 0));
    }

    private void log(WarmAnswer.LogAnswer log) {
        Double then = log.thenC();
        page.line("When the log ends, on " + words.date(log.last().toLocalDate()) + ", the foremost cells are at: "
                + WarmWords.stages(log.least(), log.most()) + ". "
                + (then == null
                        ? "Its last day lies outside the temperatures that can be carried on, so what comes"
                                + " later has no date; --at-c tells how warm they are kept."
                        : "After it they are taken to be kept at " + celsius(then) + "."));
        if (log.coolHours() >= 1) {
            page.line(Wording.number(log.coolHours(), 0) + " hours of it are under "
                    + words.quantity(Quantity.celsius(answer.value("steady_low_c")))
                    + ", at which they go on slowly, and how slowly is hardly known.");
        }
        for (LogGap gap : log.gaps()) {
            page.line("No reading for " + Wording.number(gap.hours(), 0) + " hours from "
                    + words.date(gap.from().toLocalDate()) + "; a straight line bridges them.");
        }
    }

    private String watch() {
        return "Look for small wasps among the cells " + WarmWords.band(words, answer.watch())
                + ". They come out before the bees and lay in the cells around them: within hours they can spoil a"
                + " quarter. "
                + (answer.years() == null
                        ? "Vacuum them, or draw them to a light trap."
                        : "Wipe them off, and lay a finger's breadth of sawdust over loose cells.");
    }

    private void section(String heading, List<String> lines) {
        page.heading(heading);
        lines.forEach(page::line);
    }

    private void known() {
        page.heading("HOW WELL THIS IS KNOWN");
        page.line("The days at " + celsius(answer.value("calendar_c")) + " are those of an extension"
                + " calendar. For other temperatures warmth is counted above "
                + words.quantity(Quantity.celsius(answer.value("warmth_low_base_c"))) + " and above "
                + words.quantity(Quantity.celsius(answer.value("warmth_high_base_c")))
                + ", between which the true base lies; the dates hold both. No table of emergence by temperature"
                + " was at hand to check them against.");
        page.line(BasisWords.weakness(answer.basis()));
    }

    private String days(double days) {
        return words.quantity(Quantity.days(days));
    }

    private String celsius(double celsius) {
        return words.quantity(new Quantity(celsius, Unit.CELSIUS, 1));
    }

    private static String sentenceCase(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
