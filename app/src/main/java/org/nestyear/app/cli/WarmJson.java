package org.nestyear.app.cli;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.DateBand;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.WarmAnswer;
import org.nestyear.app.service.WarmQuestion;
import org.nestyear.app.service.WarmWords;
import org.nestyear.app.service.Wording;
import org.nestyear.core.leafcutter.Milestone;

/** An answer about warming as one JSON object; its schema is {@code schema/warm.schema.json}. */
final class WarmJson {
    private static final List<Milestone> ASKED =
            List.of(Milestone.FIRST_MALE, Milestone.FIRST_FEMALE, Milestone.HALF_FEMALES, Milestone.MOST_OUT);

    private WarmJson() {}

    /** The text of the object. */
    static String of(WarmAnswer answer) {
        WarmQuestion question = answer.question();
        Wording words = new Wording(UnitSystem.METRIC, answer.start().getYear());
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", question.species().latinName());
            Double steady = WarmWords.steadyC(question);
            if (steady != null) {
                json.number("at_c", steady);
            }
            if (question.warmth() instanceof WarmQuestion.ReadyBy ready) {
                json.date("ready_by", ready.date());
                json.date("start_latest", answer.startLatest());
            }
            json.date("start", answer.start());
            for (Milestone milestone : ASKED) {
                band(json, milestone.id(), answer.date(milestone));
            }
            json.object("parasitoid_watch", watch -> {
                watch.date("from", answer.watch().early());
                watch.date("to", answer.watch().late());
            });
            json.objects("stages", answer.stages(), WarmJson::stage);
            hold(json, answer);
            log(json, answer.log());
            years(json, answer.years());
            if (steady == null) {
                json.number("too_hot_hours", answer.tooHotHours());
            }
            after(json, answer.after());
            json.texts("holding", WarmWords.holding(answer, words));
            json.text("winter", WarmWords.winter(answer, words));
            json.objects("cautions", WarmWords.cautions(answer, words), (entry, caution) -> {
                entry.text("id", caution.id());
                entry.text("text", caution.text());
            });
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void band(JsonText json, String name, DateBand band) {
        json.object(name, bounds -> {
            bounds.date("early", band.early());
            bounds.date("late", band.late());
        });
    }

    private static void stage(JsonText json, WarmAnswer.StageDates stage) {
        json.text("stage", id(stage.stage()));
        band(json, "begins", stage.begins());
        json.flag("may_be_held", stage.mayBeHeld());
    }

    private static void hold(JsonText json, WarmAnswer answer) {
        WarmAnswer.HoldAnswer hold = answer.hold();
        WarmQuestion.Hold asked = answer.question().hold();
        if (hold != null && asked != null) {
            json.object("hold", entry -> {
                entry.date("from", asked.from());
                entry.number("days", asked.days());
                entry.number("at_c", asked.celsius());
                entry.number("pulse_hours_per_day", asked.pulseHours());
                entry.text("stage_least", id(hold.least()));
                entry.text("stage_most", id(hold.most()));
                entry.text("verdict", id(hold.verdict()));
            });
        }
    }

    private static void log(JsonText json, WarmAnswer.@Nullable LogAnswer log) {
        if (log != null) {
            json.object("log", entry -> {
                entry.text("ends", log.last().toString());
                entry.number("mean_c", log.meanC());
                entry.numberOrNull("then_c", log.thenC());
                entry.number("cool_hours", log.coolHours());
                entry.text("stage_least", id(log.least()));
                entry.text("stage_most", id(log.most()));
                entry.objects("gaps", log.gaps(), (gap, found) -> {
                    gap.text("from", found.from().toString());
                    gap.text("to", found.to().toString());
                });
            });
        }
    }

    private static void years(JsonText json, WarmAnswer.@Nullable Years years) {
        if (years != null) {
            json.object("summers", entry -> {
                entry.whole("count", years.count());
                entry.whole("own_days", years.ownDays());
                entry.date("last_useful", years.lastUseful());
                entry.whole("in_time", years.inTime());
                entry.whole("perhaps_in_time", years.perhapsInTime());
                entry.object("if_house_warmer", house -> {
                    house.number("by_c", years.warmerC());
                    band(house, "half_females", years.warmerHalf());
                    house.whole("in_time", years.warmerInTime());
                });
            });
        }
    }

    private static void after(JsonText json, WarmAnswer.After after) {
        json.object("nesting", span -> {
            span.date("from", after.nesting().early());
            span.date("to", after.nesting().late());
        });
        json.object("second_generation", entry -> {
            entry.date("from", after.reopening());
            entry.number("low_share", after.secondLow());
            entry.number("high_share", after.secondHigh());
        });
    }

    private static String id(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
