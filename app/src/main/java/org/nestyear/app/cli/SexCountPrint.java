package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.SexCountAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.sexing.Group;
import org.nestyear.core.sexing.SexCount;

/** The sexes of a lot in words and as JSON; the schema is {@code schema/sex-count.schema.json}. */
final class SexCountPrint {
    static final List<String> METHODS = List.of(
            "Groups: Dempster, Laird & Rubin 1977, J. R. Stat. Soc. B 39:1; one or two: Schwarz 1978, Ann. Stat. 6:461",
            "Interval: 300 lots drawn from the groups and counted the same way (parametric bootstrap)");

    private SexCountPrint() {}

    /** The lines of the answer. */
    static String text(SexCountAnswer answer) {
        SexCount count = answer.count();
        List<String> lines = new ArrayList<>();
        lines.add("About " + whole(count.females()) + " of these " + whole(answer.cocoons()) + " cocoons of the "
                + answer.species().commonName() + " (" + answer.species().latinName() + ") are female, and between "
                + whole(count.low()) + " and " + whole(count.high()) + " with 90 % confidence; about "
                + whole(answer.cocoons() - count.females()) + " are male.");
        lines.add("Why: " + answer.why() + ". Males " + verb(answer) + " about "
                + size(answer, count.groups().get(0))
                + ", females about " + size(answer, count.groups().get(1)) + ". At "
                + amount(answer, count.cut()) + " a cocoon may as well be the one as the other; a cut there puts about "
                + Wording.share(count.rightShare(), 0) + " right, never all.");
        String sure = Wording.share(Grounds.value(answer.basis(), "told_certainty"), 0);
        lines.add("One by one: " + whole(count.sureFemales()) + " are female and " + whole(count.sureMales())
                + " male with a certainty of " + sure + " or more. "
                + (count.unsure() < 0.5
                        ? "None is left that cannot be told."
                        : "For the other " + whole(count.unsure()) + " size cannot tell."));
        lines.add("Take large cocoons for females when you sort, but put none away by its size alone: bees raised on"
                + " poor forage or in narrow tunnels are small, and big sons and small daughters are common. Where a"
                + " cocoon lay tells too: daughters at the back, sons in front.");
        if (!answer.byGroups()) {
            lines.add(
                    answer.isWeighed()
                            ? "The known weights are those of 1 December. By spring cocoons have lost some 6 to 15 % of it, and"
                                    + " females would be taken for males: weigh early in winter."
                            : "The known widths were read off pictures; a sieve may let a cocoon through on its slimmest side.");
        }
        lines.addAll(Grounds.lines(
                "in eight real lots, 1,113 cocoons whose sex came to light in spring, cuts by weight found in this way put "
                        + (answer.byGroups() ? "93 % (red mason bee) and 86 %" : "89 % (red mason bee) and 87 %")
                        + " (European orchard bee) right, and in one lot of the eight the true number lay outside the"
                        + " interval. It holds only if the lot's sexes differ in size as the groups say.",
                METHODS,
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String verb(SexCountAnswer answer) {
        return answer.isWeighed() ? "weigh" : "measure";
    }

    private static String size(SexCountAnswer answer, Group group) {
        int decimals = answer.isWeighed() ? 0 : 1;
        return amount(answer, group.mean()) + " (two in three from "
                + Wording.number(group.mean() - group.sd(), decimals) + " to "
                + Wording.number(group.mean() + group.sd(), decimals) + ")";
    }

    private static String amount(SexCountAnswer answer, double size) {
        return answer.isWeighed() ? Wording.number(size, 0) + " mg" : Wording.number(size, 1) + " mm";
    }

    private static String whole(double number) {
        return Wording.number(number, 0);
    }

    /** The text of the object. */
    static String json(SexCountAnswer answer) {
        SexCount count = answer.count();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.text("measure", answer.measure());
            json.text("unit", answer.isWeighed() ? "mg" : "mm");
            json.whole("cocoons", answer.cocoons());
            json.number("females", count.females());
            json.number("low", count.low());
            json.number("high", count.high());
            json.objects("components", count.groups(), (entry, group) -> {
                entry.number("mean", group.mean());
                entry.number("sd", group.sd());
                entry.number("weight", group.weight());
            });
            json.numberOrNull("one_group_bic", answer.oneGroupBic());
            json.numberOrNull("two_group_bic", answer.twoGroupBic());
            json.text("method", answer.byGroups() ? "two groups" : "known sizes");
            json.text("why", answer.why());
            json.number("cut", count.cut());
            json.number("right_share", count.rightShare());
            json.number("sure_females", count.sureFemales());
            json.number("sure_males", count.sureMales());
            json.number("cannot_tell", count.unsure());
            BasisJson.write(json, answer.basis());
            json.texts("methods", METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}
