package org.nestyear.app.cli;

import java.util.stream.Collectors;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.TorchAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.core.release.TorchCount;
import org.nestyear.core.release.TorchCount.Band;

/** A torch count as text, and as JSON of the schema {@code schema/torch.schema.json}. */
final class TorchPrint {
    private TorchPrint() {}

    static String json(TorchAnswer answer) {
        TorchCount count = answer.count();
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.date("released", count.released());
            json.date("on", count.on());
            json.text("verdict", answer.verdict());
            json.object("expected_females", band -> band(band, count.expected()));
            json.object("nesting_females", band -> band(band, count.nesting()));
            json.number("no_more_chance", count.lessChance());
            json.object("cells_to_come", band -> band(band, count.cellsStill()));
            json.object("tunnels_to_come", band -> band(band, count.tunnelsStill()));
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void band(JsonText json, Band band) {
        json.number("p10", band.low());
        json.number("p50", band.middle());
        json.number("p90", band.high());
    }

    static String text(TorchAnswer answer, Wording words) {
        TorchCount count = answer.count();
        Page page = new Page();
        String nesting = Math.rint(count.nesting().high()) < 1
                ? "No female seems to be nesting yet"
                : "About " + number(count.nesting().middle()) + " females are nesting (" + span(count.nesting()) + ")";
        String counts =
                count.counts().stream().map(each -> Wording.number(each, 0)).collect(Collectors.joining(", "));
        page.paragraph(
                0,
                nesting + ", of " + Wording.number(answer.females(), 0) + " female cocoons put out; you counted "
                        + counts + ".");
        page.paragraph(0, verdict(answer, words));
        if (Math.rint(count.cellsStill().high()) >= 1) {
            page.paragraph(
                    0,
                    "They may build " + span(count.cellsStill()) + " more cells and begin " + span(count.tunnelsStill())
                            + " more tunnels. Count the empty ones: with fewer than "
                            + number(count.tunnelsStill().high()) + " left, hang more now, beside the others.");
        }
        page.heading("HOW TO COUNT");
        page.paragraph(
                2,
                "After dark or at first light on a cold morning, with a weak torch: count open tunnels with a bee's face or"
                        + " tail in them. Stay half a minute, touch nothing, and leave the guard on.");
        page.paragraph(
                2,
                "Two or three evenings in the same week tell more than one. Other bees and wasps sleep in tunnels too; leave"
                        + " out what is not yours.");
        page.blank();
        page.paragraph(
                0,
                "How well this is known: that a nesting female sleeps in her tunnel is known, how many of them a torch shows"
                        + " ("
                        + Wording.share(Grounds.value(answer.basis(), "torch_seen"), 0)
                        + ") is a guess, and so is how unlike sites are. The bands hold in eight cases of ten if those guesses"
                        + " do.");
        page.paragraph(0, BasisWords.borrowed(answer.basis(), answer.species().latinName()));
        page.paragraph(0, BasisWords.weakness(answer.basis()));
        return page.toString();
    }

    private static String verdict(TorchAnswer answer, Wording words) {
        Band expected = answer.count().expected();
        String was = "On " + words.date(answer.count().on()) + " "
                + (Math.rint(expected.high()) < 1 ? "none" : span(expected)) + " were to be expected: ";
        return was
                + switch (answer.verdict()) {
                    case "fewer" ->
                        "this is fewer than in nine cases of ten. Ask what stands in their way: nestyear normal with"
                                + " --saw females lists what to look for.";
                    case "more" -> "this is more than in nine cases of ten. See that tunnels, mud and flowers suffice.";
                    default -> "this is as it should be.";
                };
    }

    private static String span(Band band) {
        return number(band.low()) + " to " + number(band.high());
    }

    private static String number(double value) {
        return Wording.number(Math.rint(value), 0);
    }
}
