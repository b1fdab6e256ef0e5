package org.nestyear.app.cli;

import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FacingAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.place.Site;
import org.nestyear.core.siting.WayToLook;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.species.BeeKind;

/** Ways to look as text, and as JSON of the schema {@code schema/facing.schema.json}. */
final class FacingPrint {
    private static final List<String> WAYS =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");
    private static final int STEP_DEG = 45;

    private FacingPrint() {}

    static String json(FacingAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("bees", answer.bees().word());
            json.whole("years", answer.years());
            json.objects("facings", answer.ways(), (each, way) -> {
                each.number("faces_deg", way.facesDeg());
                each.flag("now", way.equals(answer.now()));
                each.text("first_sun", clock(way.firstSun()));
                each.text("warm_from", clock(way.warmFrom()));
                each.number("morning_sun_minutes", way.morningMinutes());
                each.number("morning_wh_m2", way.morningWhM2());
                each.number("hottest_w_m2", way.hottestWm2());
                each.number("watch_days_a_year", way.watchDays());
                each.object("urgent_days_a_year", days -> {
                    days.number("value", way.urgentDays());
                    days.number("low", way.urgentDaysLow());
                    days.number("high", way.urgentDaysHigh());
                });
            });
            json.objects("weeks", answer.weeks(), (each, week) -> {
                each.text("from", week.from().toString());
                each.text("first_sun", clock(answer.site(), week.sun().firstSun()));
                each.number("morning_sun_minutes", week.sun().morningMinutes());
                each.number("morning_wh_m2", week.sun().morningWhM2());
                each.number("hottest_w_m2", week.sun().hottestWm2());
                each.number("tunnels_one_day_in_ten_c", week.heat().oneInTenC());
                each.number("watch_share", week.heat().watchShare());
                each.number("urgent_share", week.heat().urgentShare());
            });
            BasisJson.write(json, answer.basis());
            json.texts("methods", SunText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static Page text(FacingAnswer answer, Wording words) {
        Page page = new Page();
        page.paragraph(0, headline(answer, words));
        page.blank();
        page.table(0, ways(answer, words));
        page.blank();
        page.paragraph(
                0,
                (answer.now() == null ? "The best, week by week" : "As it looks now, week by week")
                        + " (the last column is" + " the hottest hour that one day in ten surpasses):");
        page.table(0, weeks(answer, words));
        page.blank();
        setUp(page, answer, words);
        page.blank();
        known(page, answer, words);
        return page;
    }

    private static String headline(FacingAnswer answer, Wording words) {
        WayToLook best = answer.ways().get(0);
        LocalTime sun = best.firstSun();
        String first = "For " + answer.bees().word() + " bees this house looks best to the " + way(best.facesDeg())
                + ": "
                + (sun == null ? "" : "first sun about " + clock(sun) + ", ")
                + Wording.number(best.morningMinutes(), 0) + " minutes of sun before ten by the sun, and tunnels above "
                + limit(answer, words) + " on about " + days(hot(answer, best)) + " a year.";
        WayToLook now = answer.now();
        if (now == null) {
            return first;
        }
        if (now.equals(best)) {
            return first + " It looks that way now.";
        }
        int rank = answer.ways().indexOf(now) + 1;
        return first + " Now it looks to the " + way(now.facesDeg()) + ", number " + rank + " of "
                + answer.ways().size() + " (" + Wording.number(now.morningMinutes(), 0) + " minutes; "
                + days(hot(answer, now)) + ").";
    }

    private static double hot(FacingAnswer answer, WayToLook way) {
        return answer.bees() == BeeKind.MASON ? way.urgentDays() : way.watchDays();
    }

    private static String limit(FacingAnswer answer, Wording words) {
        return celsius(words, value(answer, answer.bees() == BeeKind.MASON ? "tunnel_urgent_c" : "tunnel_watch_c"));
    }

    private static String days(double days) {
        String number = Wording.number(days, 0);
        return number.equals("0") ? "no day" : number.equals("1") ? "1 day" : number + " days";
    }

    private static List<List<String>> ways(FacingAnswer answer, Wording words) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "looks to",
                "first sun",
                "warm from",
                ">sun before ten",
                ">light before ten",
                ">days over " + celsius(words, value(answer, "tunnel_watch_c")),
                ">over " + celsius(words, value(answer, "tunnel_urgent_c")),
                ""));
        for (WayToLook way : answer.ways()) {
            rows.add(List.of(
                    way(way.facesDeg()),
                    clockOrNever(way.firstSun()),
                    clockOrNever(way.warmFrom()),
                    Wording.number(way.morningMinutes(), 0) + " min",
                    Wording.number(way.morningWhM2(), 0) + " Wh/m²",
                    Wording.number(way.watchDays(), 0),
                    Wording.number(way.urgentDays(), 0),
                    way.equals(answer.now()) ? "as it looks now" : ""));
        }
        return rows;
    }

    private static List<List<String>> weeks(FacingAnswer answer, Wording words) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("week from", "first sun", ">sun before ten", ">hottest after noon", ">in the tunnels"));
        for (FacingAnswer.Week week : answer.weeks()) {
            String first = clock(answer.site(), week.sun().firstSun());
            rows.add(List.of(
                    words.date(week.from()),
                    first == null ? "none" : first,
                    Wording.number(week.sun().morningMinutes(), 0) + " min",
                    Wording.number(week.sun().hottestWm2(), 0) + " W/m²",
                    celsius(words, week.heat().oneInTenC())));
        }
        return rows;
    }

    private static void setUp(Page page, FacingAnswer answer, Wording words) {
        page.paragraph(0, "Then look at the place itself:");
        Parameter height = row(answer, "house_height_m");
        Parameter mesh = row(answer, "guard_mesh_mm");
        Parameter gap = row(answer, "guard_gap_mm");
        List<String> checks = new ArrayList<>();
        checks.add("Height: " + metres(words, height.low()) + " to " + metres(words, height.high())
                + " up, where you can reach it with both feet on the ground.");
        checks.add("Fixing: screwed to a wall or to a post that does not sway; bees give up a house that swings.");
        checks.add(
                "Rain: its back to the side from which driving rain comes, a roof that reaches out over the tunnels, and"
                        + " tunnels level or tipped a little forward.");
        checks.add("Guard: mesh of " + millimetres(words, mesh.low()) + " to " + millimetres(words, mesh.high())
                + ", held "
                + millimetres(words, gap.low()) + " to " + millimetres(words, gap.high())
                + " off the face, up before the first bee flies.");
        if (answer.ways().stream().mapToDouble(way -> hot(answer, way)).min().orElse(0) >= 1) {
            checks.add(
                    "Heat: whichever way it looks the tunnels get too hot on some days; give it afternoon shade. Never move"
                            + " it while bees nest, and never plug the tunnels.");
        }
        checks.add(
                "If you need a ladder: firm level ground, and someone to hold it. Never turn a house that bees are using.");
        checks.forEach(check -> page.paragraph(2, check));
    }

    private static void known(Page page, FacingAnswer answer, Wording words) {
        Site site = answer.site();
        double excess = value(answer, "tunnel_excess_c");
        WayToLook shown = answer.now() == null ? answer.ways().get(0) : answer.now();
        page.paragraph(
                0,
                "How well this is known: the sun to the minute, over "
                        + (site.horizon().isEmpty() ? "a level horizon, for none was sighted" : "the sighted skyline")
                        + (site.roof() == null ? ", without an overhanging roof" : " and below the roof told")
                        + ". The heat in the tunnels is a guess: the air of " + answer.years()
                        + " years, and " + Wording.number(excess, 1) + " °C more for every 100 W/m² of a clear sky ("
                        + "no clean figure is published; hang a thermometer in an empty tunnel and set --excess-c). With the"
                        + " least and the most thought possible this front passes "
                        + celsius(words, value(answer, "tunnel_urgent_c")) + " on "
                        + Wording.number(shown.urgentDaysLow(), 0) + " to " + Wording.number(shown.urgentDaysHigh(), 0)
                        + " days a year. A day too hot is weighed as a loss of "
                        + Wording.share(value(answer, answer.bees().word() + "_hot_day_worth"), 0)
                        + " of the morning light, which is a guess too. That morning sun is what mason bees want is common practice; leafcutters filled"
                        + " fronts to the north faster and did worst to the south-west on a hot plain (Wilson et al. 2020), while"
                        + " growers where summers are cool face them east to south.");
        Grounds.lines("", SunText.METHODS, answer.basis()).stream().skip(2).forEach(line -> page.paragraph(0, line));
    }

    private static Parameter row(FacingAnswer answer, String id) {
        return answer.basis().stream()
                .filter(parameter -> parameter.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double value(FacingAnswer answer, String id) {
        return Grounds.value(answer.basis(), id);
    }

    private static String celsius(Wording words, double celsius) {
        return words.quantity(Quantity.celsius(celsius).withDecimals(0));
    }

    private static String metres(Wording words, double metres) {
        return words.quantity(Quantity.metres(metres).withDecimals(1));
    }

    private static String millimetres(Wording words, double mm) {
        return words.quantity(Quantity.millimetres(mm));
    }

    private static String way(double facesDeg) {
        boolean whole = facesDeg % STEP_DEG == 0;
        String degrees = Wording.number(facesDeg, 0) + "°";
        return whole ? WAYS.get((int) facesDeg / STEP_DEG % WAYS.size()) + " (" + degrees + ")" : degrees;
    }

    private static String clockOrNever(@Nullable LocalTime time) {
        String clock = clock(time);
        return clock == null ? "never on some day" : clock;
    }

    private static @Nullable String clock(Site site, @Nullable Instant at) {
        return at == null ? null : clock(at.atZone(site.zone()).toLocalTime());
    }

    private static @Nullable String clock(@Nullable LocalTime time) {
        return time == null ? null : time.truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
