package org.nestyear.app.cli;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FacingAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;

/** Ways to look as text, and as JSON of the schema {@code schema/facing.schema.json}. */
final class FacingPrint {
    private static final List<String> WAYS =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");
    private static final int STEP_DEG = 45;

    private FacingPrint() {}

    static String json(FacingAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.texts("dates", answer.dates().stream().map(Object::toString).toList());
            json.objects("facings", answer.facings(), (each, facing) -> {
                each.number("faces_deg", facing.facesDeg());
                each.flag("now", facing.isOwn());
                each.text("first_sun", clock(facing.firstSun()));
                each.number("morning_sun_minutes", facing.morningMinutes());
                each.number("morning_wh_m2", facing.morningWhM2());
                each.number("hottest_w_m2", facing.hottestWm2());
            });
            BasisJson.write(json, List.of());
            json.texts("methods", SunText.METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static String text(FacingAnswer answer, Wording words) {
        Page page = new Page();
        FacingAnswer.Facing best = answer.facings().get(0);
        page.paragraph(
                0,
                "Most morning sun falls on a front that looks to the " + way(best.facesDeg()) + ": first sun about "
                        + clockOrNever(best.firstSun()) + ", " + Wording.number(best.morningMinutes(), 0)
                        + " minutes before ten by the sun.");
        page.blank();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("looks to", "first sun", ">sun before ten", ">light before ten", ">hottest after noon", ""));
        for (FacingAnswer.Facing facing : answer.facings()) {
            rows.add(List.of(
                    way(facing.facesDeg()),
                    clockOrNever(facing.firstSun()),
                    Wording.number(facing.morningMinutes(), 0) + " min",
                    Wording.number(facing.morningWhM2(), 0) + " Wh/m²",
                    Wording.number(facing.hottestWm2(), 0) + " W/m²",
                    facing.isOwn() ? "as it looks now" : ""));
        }
        page.table(0, rows);
        page.blank();
        page.paragraph(
                0,
                "Clear days: "
                        + String.join(
                                ", ",
                                answer.dates().stream().map(words::dateWithYear).toList())
                        + "; "
                        + (answer.site().horizon().isEmpty()
                                ? "level horizon, for none was sighted."
                                : "over the skyline sighted in the file.")
                        + " Trees and walls that were not sighted, and an overhanging roof, are not reckoned.");
        page.paragraph(
                0,
                "Morning sun wakes bees early (common practice: east to south). Where summers are hot, prefer of two alike"
                        + " the one with less light after noon. Never turn a house that bees are using.");
        SunText.METHODS.forEach(method -> page.paragraph(0, method + "."));
        return page.toString();
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

    private static @Nullable String clock(@Nullable LocalTime time) {
        return time == null ? null : time.truncatedTo(ChronoUnit.MINUTES).toString();
    }
}
