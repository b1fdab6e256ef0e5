package org.nestyear.app.cli;

import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.WinterAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.winter.WinterCheck;

/** A judged winter as text, and as JSON of the schema {@code schema/winter.schema.json}. */
final class WinterPrint {
    private static final double PERCENT = 100;

    private WinterPrint() {}

    static String json(WinterAnswer answer, Wording words) {
        WinterCheck mason = answer.mason();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.question().species().latinName());
            json.text("kept", answer.question().kept().word());
            json.text("log_from", answer.from().toString());
            json.text("log_to", answer.to().toString());
            json.whole("gaps_bridged", answer.gaps());
            json.number("chill_days", answer.chillDays());
            json.numberOrNull("body_fat_spent_percent", mason == null ? null : PERCENT * mason.spent());
            json.numberOrNull("days_left", mason == null ? null : Math.floor(mason.daysLeft()));
            json.text("days_left_by", daysLeftBy(mason));
            json.numberOrNull("last_day_c", mason == null ? null : mason.nowC());
            json.objects("findings", answer.findings(), (each, finding) -> FindingPrint.json(each, finding, words));
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static @Nullable String daysLeftBy(@Nullable WinterCheck mason) {
        if (mason == null) {
            return null;
        }
        Double tested = mason.testedDaysLeft();
        return tested != null && tested < mason.fatDaysLeft() ? "longest store tested" : "weight lost";
    }

    static Page text(WinterAnswer answer, Wording words) {
        Page page = new Page();
        WinterCheck mason = answer.mason();
        page.paragraph(0, headline(answer, words));
        if (mason != null) {
            page.paragraph(
                    0,
                    "They have spent " + Wording.share(mason.spent(), 0)
                            + " of the weight they can spare. At the "
                            + words.quantity(Quantity.celsius(mason.nowC()).withDecimals(1))
                            + " of the last day they can wait about "
                            + words.quantity(Quantity.days(Math.floor(mason.daysLeft()))) + " more, by the "
                            + daysLeftBy(mason) + ".");
        }
        if (answer.gaps() > 0) {
            page.paragraph(
                    0,
                    "The log has " + answer.gaps() + (answer.gaps() == 1 ? " gap" : " gaps")
                            + ", bridged by a straight line.");
        }
        if (!answer.findings().isEmpty()) {
            page.heading("FINDINGS");
            for (Finding finding : answer.findings()) {
                FindingPrint.text(page, finding, words);
            }
        }
        page.blank();
        if (mason != null) {
            page.paragraph(
                    0,
                    "Fat itself is not weighed: this takes the weight that cocoons lost in a published trial. Deaths and"
                            + " days left are not a promise for your bees.");
        }
        page.paragraph(
                0,
                BasisWords.borrowed(answer.basis(), answer.question().species().latinName()));
        page.paragraph(0, BasisWords.weakness(answer.basis()));
        return page;
    }

    private static String headline(WinterAnswer answer, Wording words) {
        boolean well = answer.findings().stream().noneMatch(finding -> finding.level() == Level.ACT);
        String span = words.dateWithYear(answer.from().toLocalDate()) + " to "
                + words.dateWithYear(answer.to().toLocalDate());
        return (well ? "Nothing in the log asks for action. " : "Something needs doing; see the findings. ")
                + words.quantity(Quantity.days(Math.floor(answer.chillDays())))
                + " of cold so far (log of " + span + ").";
    }
}
