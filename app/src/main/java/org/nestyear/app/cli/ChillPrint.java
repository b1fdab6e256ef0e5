package org.nestyear.app.cli;

import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.ChillAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;

/** Cold and warmth of fruit trees as text, and as JSON of the schema {@code schema/chill.schema.json}. */
final class ChillPrint {
    private ChillPrint() {}

    static String json(ChillAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.number("chilling_hours", answer.chillingHours());
            json.number("utah_units", answer.utahUnits());
            json.number("chill_portions", answer.chillPortions());
            json.number("growing_degree_hours", answer.growingDegreeHours());
            json.whole("days", answer.days());
            json.whole("filled_days", answer.filledDays());
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static String text(ChillAnswer answer, Wording words) {
        return "From " + words.dateWithYear(answer.from()) + " to " + words.dateWithYear(answer.to()) + ", "
                + Wording.number(answer.days(), 0) + (answer.days() == 1 ? " day:\n" : " days:\n")
                + Wording.number(answer.chillPortions(), 1) + " chill portions (dynamic model)\n"
                + Wording.number(answer.utahUnits(), 1) + " Utah chill units\n"
                + Wording.number(answer.chillingHours(), 0) + " chilling hours\n"
                + words.quantity(new Quantity(answer.growingDegreeHours(), Unit.DEGREE_HOUR, 0))
                + " of growing warmth\n"
                + (answer.filledDays() == 0
                        ? ""
                        : answer.filledDays() + " of the days were missing in the table and filled.\n")
                + "\nThese are what fruit trees count, not bees. Hours are worked out from each day's lowest and highest"
                + " temperature.\n"
                + BasisWords.weakness(answer.basis()) + "\n";
    }
}
