package org.nestyear.app.cli;

import java.util.OptionalDouble;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Job;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.Alternative;
import org.nestyear.core.release.BestPair;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.DateRange;
import org.nestyear.core.release.Edge;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.release.WholeBeeOdds;
import org.nestyear.core.season.Goal;

/** A plan as one JSON object; its schema is {@code schema/plan.schema.json}. */
final class PlanJson {
    private final Wording words;

    private PlanJson(Wording words) {
        this.words = words;
    }

    /**
     * The text of the object.
     *
     * @param words for the sentences in it; the numbers are always metric
     */
    static String of(PlanAnswer answer, Wording words) {
        PlanJson writer = new PlanJson(words);
        Plan plan = answer.plan();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("site", answer.inputs().site().name());
            json.text("species", plan.species().latinName());
            json.date("today", plan.today());
            json.text("headline", words.headline(plan.headline()));
            json.object("release", release -> writer.release(release, plan.release()));
            json.object("outlook", outlook -> outlook(outlook, plan.outlook()));
            json.objects("past_bloom", plan.pastBlooms(), PlanJson::pastBloom);
            BroodOutlook brood = plan.brood();
            if (brood != null) {
                json.object("brood", each -> brood(each, brood));
            }
            json.objects("jobs", plan.jobs(), writer::job);
            json.objects("findings", plan.findings(), (each, finding) -> FindingPrint.json(each, finding, words));
            json.whole("real_years", plan.realYears());
            json.whole("members", plan.members());
            BasisJson.write(json, plan.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private void release(JsonText json, ReleasePlan release) {
        json.text("goal", release.goal().word());
        json.objects("curve", release.curve(), PlanJson::point);
        json.object("best", best -> {
            window(best, release.window());
            best.date("date", release.bestDate());
        });
        json.object("windows", windows -> {
            for (Goal goal : Goal.values()) {
                ReleaseWindow window = release.windowsByGoal().get(goal);
                if (window != null) {
                    windows.object(goal.word(), each -> window(each, window));
                }
            }
        });
        json.object("not_ruled_out", window -> window(window, release.notRuledOut()));
        json.objects("releases", release.releases(), (each, portion) -> {
            each.date("date", portion.date());
            each.whole("females", portion.females());
            each.whole("males", portion.males());
        });
        json.text("split_reason", release.splitReason());
        json.number("split_gain_share", release.splitGain());
        json.number("split_gain_bad_years_share", release.splitGainInBadYears());
        json.objects("hold_back", release.holdBack(), (each, held) -> {
            each.number("share", held.share());
            each.date("second_date", held.second());
            each.number("cost_share", held.cost());
            each.number("gain_bad_years_share", held.gainInBadYears());
            each.number("all_lost_chance", held.allLost());
            each.number("left_if_first_lost_share", held.left());
        });
        BestPair pair = release.bestPair();
        if (pair != null) {
            json.object("best_pair", each -> {
                each.whole("tried", pair.tried());
                each.date("first", pair.first());
                each.date("second", pair.second());
                each.number("first_share", pair.share());
                each.number("gain_share", pair.gain());
            });
        }
        json.object("parameter_draws", draws -> {
            draws.whole("draws", release.agreement().draws());
            draws.whole("best_in_window", release.agreement().inWindow());
            draws.date("best_p10", release.agreement().early());
            draws.date("best_p90", release.agreement().late());
        });
        json.object("rule_of_thumb", rule -> dates(rule, release.ruleOfThumb()));
        json.number("cost_of_rule", release.ruleOfThumb().cost());
        json.object("fixed_date", fixed -> dates(fixed, release.fixedDate()));
        json.number("cost_of_fixed_date", release.fixedDate().cost());
        json.objects("sensitivities", release.sensitivities(), (each, sensitivity) -> {
            each.text("id", sensitivity.id());
            each.whole("best_date_moves_days", sensitivity.days());
        });
        json.number("tunnels_run_out_share", release.shareCapped());
        json.number("missed_bloom_share", release.missedBloom());
        WholeBeeOdds odds = release.odds();
        if (odds != null) {
            json.object("whole_bee_odds", each -> {
                each.whole("runs", odds.runs());
                each.number("no_female_settles_chance", odds.noneSettles());
                each.number("no_daughter_chance", odds.noDaughter());
                each.object("daughters", daughters -> {
                    daughters.number("p10", odds.daughtersLow());
                    daughters.number("p50", odds.daughtersMiddle());
                    daughters.number("p90", odds.daughtersHigh());
                });
            });
        }
    }

    private static void point(JsonText json, CurvePoint point) {
        json.date("date", point.date());
        json.number("mean", point.mean());
        json.number("p10", point.p10());
        json.number("p90", point.p90());
        json.number("daughters", point.daughters());
        json.number("bloom_flight_days", point.bloomDays());
        json.number("cost", point.cost());
        json.flag("in_window", point.inWindow());
    }

    private static void window(JsonText json, ReleaseWindow window) {
        json.date("from", window.from());
        json.date("to", window.to());
        if (window.edge() != Edge.NONE) {
            json.text("edge", window.edge().word());
        }
    }

    private static void dates(JsonText json, Alternative alternative) {
        json.date("date", alternative.date());
        json.date("earliest", alternative.earliest());
        json.date("latest", alternative.latest());
    }

    private static void outlook(JsonText json, Outlook outlook) {
        range(json, "first_males", outlook.firstMales());
        range(json, "half_males", outlook.halfMales());
        range(json, "first_females", outlook.firstFemales());
        range(json, "half_females", outlook.halfFemales());
        range(json, "most_females", outlook.mostFemales());
        range(json, "target_bloom", outlook.targetBloom());
        range(json, "target_bloom_end", outlook.targetBloomEnd());
        range(json, "last_nesting", outlook.lastNesting());
        json.number("cells", outlook.cells());
        json.object("daughters", daughters -> {
            daughters.number("mean", outlook.daughters());
            daughters.number("p10", outlook.daughtersLow());
            daughters.number("p90", outlook.daughtersHigh());
        });
        json.number("sons", outlook.sons());
        json.number("tunnels_used", outlook.tunnelsUsed());
        json.number("unmated_share", outlook.unmated());
        json.number("lost_in_store_share", outlook.lostInStore());
        json.number("males_lost_in_store_share", outlook.malesLostInStore());
        json.number("cold_spell_share", outlook.coldSpell());
        json.number("no_female_settles_chance", outlook.noFemaleSettles());
    }

    private static void pastBloom(JsonText json, PastBloom past) {
        json.text("plant", past.plant().name());
        json.text("model", past.choice().model().kind().word());
        json.flag("general", !past.isFitted());
        json.whole("dates_used", past.choice().dates());
        json.whole("dates_without_weather", past.unused().size());
        json.number("error_days", past.choice().errorDays());
        OptionalDouble rival = past.choice().meanDateErrorDays();
        json.numberOrNull("mean_date_error_days", rival.isPresent() ? rival.getAsDouble() : null);
        json.texts("models_not_run", past.notRun().stream().map(BloomKind::word).toList());
    }

    private static void range(JsonText json, String name, DateRange range) {
        json.object(name, dates -> {
            dates.date("early", range.early());
            dates.date("middle", range.middle());
            dates.date("late", range.late());
        });
    }

    private static void brood(JsonText json, BroodOutlook brood) {
        json.date("last_eggs", brood.lastEgg());
        json.date("spun_early", brood.spunEarly());
        json.date("spun_late", brood.spunLate());
        json.date("adult_early", brood.adultEarly());
        json.date("adult_late", brood.adultLate());
        json.number("not_adult_share", brood.notAdult());
        json.whole("summers", brood.summers());
    }

    private void job(JsonText json, Job job) {
        json.text("id", job.id());
        json.text("title", words.phrase(job.title()));
        json.date("from", job.from());
        json.date("to", job.to());
        json.text("number", words.phrase(job.number()));
        json.text("reason", words.phrase(job.reason()));
        json.text("caution", job.caution() == null ? null : words.phrase(job.caution()));
        json.texts("why", job.why().stream().map(words::phrase).toList());
        BasisJson.writeIds(json, job.basis());
    }
}
