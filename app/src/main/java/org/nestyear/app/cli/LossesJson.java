package org.nestyear.app.cli;

import java.util.OptionalDouble;
import org.nestyear.app.service.LossesAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.losses.Comparison;
import org.nestyear.core.losses.LossTable;

/** Losses as one JSON object; its schema is {@code schema/losses.schema.json}. */
final class LossesJson {
    private LossesJson() {}

    /** The text of the object. */
    static String of(LossesAnswer answer, Wording words) {
        LossTable table = answer.table();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("bees", answer.question().bees().word());
            json.number("level", table.level());
            json.whole("nests", table.nests().size());
            json.whole("nests_ill", table.nestsIll());
            json.whole("cells", table.cells());
            json.whole("alive", table.alive());
            json.objects("losses", table.lines(), (entry, line) -> {
                entry.text("cause", line.cause().word());
                share(entry, line.share());
            });
            json.object("lost", entry -> share(entry, table.lost()));
            json.text("compared_by", comparedBy(answer));
            json.objects("groups", answer.groups(), (entry, group) -> {
                entry.text("by", group.by().word());
                entry.text("name", group.name());
                share(entry, group.share());
            });
            json.objects("comparisons", answer.comparisons(), (entry, compared) -> {
                Comparison comparison = compared.comparison();
                entry.text("by", compared.by().word());
                entry.text("first", comparison.first());
                entry.text("second", comparison.second());
                entry.number("difference", comparison.found());
                entry.number("low", comparison.difference().low());
                entry.number("high", comparison.difference().high());
                entry.flag("more_than_chance", comparison.isMoreThanChance());
            });
            json.text(
                    "log_base",
                    answer.question().rates() == null
                            ? null
                            : answer.question().rates().word());
            json.numberOrNull("k_total", answer.killInAll());
            json.objects("rates", answer.rates(), (entry, rate) -> {
                entry.text("cause", rate.cause().word());
                entry.number("alone", rate.alone());
                entry.numberOrNull("k", rate.kill());
            });
            json.objects("findings", answer.findings(), (entry, each) -> FindingPrint.json(entry, each, words));
            BasisJson.write(json, answer.basis());
            json.texts("methods", LossesText.methods(answer));
            json.text("fingerprint", answer.fingerprint());
        });
    }

    /** Word of the cause by which groups are compared. */
    static String comparedBy(LossesAnswer answer) {
        return answer.question().cause() == null
                ? "lost"
                : answer.question().cause().word();
    }

    private static void share(JsonText json, CellShare share) {
        json.whole("found", Math.round(share.total().found()));
        json.whole("of", Math.round(share.total().of()));
        json.whole("nests", share.nests());
        json.whole("nests_with", share.nestsWith());
        json.number("share", share.share());
        json.number("low", share.limits().low());
        json.number("high", share.limits().high());
        OptionalDouble effect = share.designEffect();
        json.numberOrNull("design_effect", effect.isPresent() ? (Double) effect.getAsDouble() : null);
        json.numberOrNull("upper_by_nest", share.total().found() == 0 ? (Double) share.noneFoundUpperByNest() : null);
    }
}
