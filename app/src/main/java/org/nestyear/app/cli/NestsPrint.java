package org.nestyear.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.NestDatesAnswer;
import org.nestyear.app.service.NestDatesAnswer.Nest;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;

/** Dates of each nest as text, and as JSON of the schema {@code schema/nests.schema.json}. */
final class NestsPrint {
    private NestsPrint() {}

    static String json(NestDatesAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.species().latinName());
            json.text("ready_as", answer.leafcutter() ? "prepupa" : "adult");
            json.objects("nests", answer.nests(), (each, nest) -> {
                each.text("nest", nest.name());
                each.date("plugged", nest.plugged());
                each.date("spun_early", nest.spunEarly());
                each.date("spun_late", nest.spunLate());
                each.date("ready_early", nest.readyEarly());
                each.date("ready_late", nest.readyLate());
                each.date("cold_not_before", nest.coldFrom());
            });
            BasisJson.write(json, answer.basis());
            json.text("fingerprint", answer.fingerprint());
        });
    }

    static Page text(NestDatesAnswer answer, Wording words) {
        Page page = new Page();
        page.paragraph(0, answer.leafcutter() ? resting(answer, words) : cold(answer, words));
        page.blank();
        page.table(0, rows(answer, words));
        page.blank();
        page.paragraph(
                0,
                answer.leafcutter()
                        ? "The look: open two or three cells of the newest nest. Ready is a plump, still, cream-coloured grub"
                                + " in its spun cocoon, with the food eaten up."
                        : "The look: open three to five spun cocoons from the newest nests. Ready means dark, winged bees in"
                                + " all of them. Until the young have spun, never knock or move a nest.");
        page.paragraph(
                0,
                "Caution: use a blade away from your hand, on a table; a bee of this kind stings only when squeezed.");
        page.blank();
        page.paragraph(
                0,
                "How well this is known: past summers, at both ends of what is published on how fast the young grow; this"
                        + " summer may be cooler or warmer. Eggs are taken to be laid until the day of the plug.");
        page.paragraph(0, BasisWords.borrowed(answer.basis(), answer.species().latinName()));
        page.paragraph(0, BasisWords.weakness(answer.basis()));
        return page;
    }

    private static String cold(NestDatesAnswer answer, Wording words) {
        if (answer.nests().stream().anyMatch(nest -> nest.coldFrom() == null)) {
            return "In some past summers the young of the latest nests were not ready by autumn: do not chill them; winter"
                    + " them outdoors, and look in spring.";
        }
        LocalDate last = answer.nests().stream()
                .map(Nest::coldFrom)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return "All nests may go into the cold from " + words.date(last)
                + " on, once a look has proved the youngest ready.";
    }

    private static String resting(NestDatesAnswer answer, Wording words) {
        LocalDate last = answer.nests().stream()
                .map(Nest::readyLate)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .orElse(null);
        return (last == null
                        ? "In some past summers the young of these nests did not come to rest."
                        : "The young of all nests should be at rest, as settled prepupae, by " + words.date(last) + ".")
                + " Neither chill nor bag them yet: part of them may fly this same summer. Wait until no plug has been chewed"
                + " open for weeks and the nights are cool.";
    }

    private static List<List<String>> rows(NestDatesAnswer answer, Wording words) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                answer.leafcutter()
                        ? List.of("nest", "plugged", "settled prepupae")
                        : List.of("nest", "plugged", "spun by", "adult", "cold not before"));
        for (Nest nest : answer.nests()) {
            List<String> row = new ArrayList<>();
            row.add(nest.name());
            row.add(words.date(nest.plugged()));
            if (!answer.leafcutter()) {
                row.add(date(nest.spunLate(), words));
            }
            LocalDate early = nest.readyEarly();
            LocalDate late = nest.readyLate();
            row.add(early != null && late != null ? words.range(early, late) : date(late, words));
            if (!answer.leafcutter()) {
                row.add(date(nest.coldFrom(), words));
            }
            rows.add(row);
        }
        return rows;
    }

    private static String date(@Nullable LocalDate date, Wording words) {
        return date == null ? "not this year" : words.date(date);
    }
}
