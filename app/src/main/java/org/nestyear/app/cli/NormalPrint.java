package org.nestyear.app.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.SightAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.release.Sighting;

/** Whether a sighting is normal as text, and as JSON of the schema {@code schema/normal.schema.json}. */
final class NormalPrint {
    private static final int TEN = 10;

    private NormalPrint() {}

    static String json(SightAnswer answer, Wording words) {
        Sighting sighting = answer.sighting();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.text("saw", sighting.seen().word());
            json.date("released", sighting.released());
            json.date("on", sighting.on());
            json.text("verdict", answer.verdict());
            json.number("chance", sighting.chance());
            json.date("early", sighting.early());
            json.date("middle", sighting.middle());
            json.date("unusual_from", sighting.unusual());
            json.objects("causes", answer.causes(), (each, cause) -> FindingPrint.json(each, cause, words));
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static String text(SightAnswer answer, Wording words) {
        Page page = new Page();
        Sighting sighting = answer.sighting();
        page.paragraph(0, verdict(answer));
        page.paragraph(0, band(sighting, words));
        if (!answer.causes().isEmpty()) {
            page.heading("WHAT ELSE TO LOOK FOR");
            for (Finding cause : answer.causes()) {
                FindingPrint.text(page, cause, words);
            }
        }
        page.blank();
        page.paragraph(0, BasisWords.borrowed(answer.basis(), answer.species().latinName()));
        page.paragraph(0, BasisWords.weakness(answer.basis()));
        return page.toString();
    }

    private static String verdict(SightAnswer answer) {
        Sighting sighting = answer.sighting();
        long day = ChronoUnit.DAYS.between(sighting.released(), sighting.on());
        String state = switch (sighting.seen()) {
            case NOTHING -> "no bee yet";
            case MALES -> "males and no female yet";
            case FEMALES -> "females about and nothing nesting yet";
        };
        String often = often(sighting.chance());
        return "Day " + day + " after putting them out, " + state + ": "
                + switch (answer.verdict()) {
                    case "normal" -> "that is normal, it happens " + often + ".";
                    case "late" -> "that is late, but it happens " + often + ".";
                    default -> "that is unusual, it happens " + often + ".";
                };
    }

    private static String often(double chance) {
        long tenths = Math.round(chance * TEN);
        if (tenths == 0) {
            return chance < 1.0 / (2 * TEN) ? "less than once in twenty" : "about once in twenty";
        }
        return tenths == TEN ? "nearly always" : "in " + tenths + (tenths == 1 ? " case of ten" : " cases of ten");
    }

    private static String band(Sighting sighting, Wording words) {
        String next = switch (sighting.seen()) {
            case NOTHING -> "The first bee";
            case MALES -> "The first female";
            case FEMALES -> "The first nest";
        };
        LocalDate early = sighting.early();
        LocalDate middle = sighting.middle();
        LocalDate unusual = sighting.unusual();
        if (early == null || middle == null) {
            return next + " may not come at all this season.";
        }
        return next + " is to be expected from " + words.date(early) + " on, most likely about " + words.date(middle)
                + (unusual == null
                        ? "."
                        : sighting.on().isBefore(unusual)
                                ? "; look again on " + words.date(unusual) + ": only then would it be unusual."
                                : "; by " + words.date(unusual) + " it should have been there.");
    }
}
