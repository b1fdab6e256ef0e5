package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.TallyDesk;
import org.nestyear.app.book.TallyDesk.Spot;
import org.nestyear.app.service.Refusal;

/** Puts the counter of an opening on a page. */
final class TallyPage {
    private static final int MOST_CHOICES = 20_000;
    private static final String KEYS = "a1234567890bcd";
    private static final int MOST_NESTS = 300;

    private final TallyDesk desk;
    private final EntryDesk entries;

    TallyPage(TallyDesk desk, EntryDesk entries) {
        this.desk = desk;
        this.entries = entries;
    }

    TallyView.Choice choice(
            String site,
            String act,
            String entry,
            Map<String, String> values,
            SaveAnswer answer,
            HttpServletRequest request) {
        Map<String, String> problems = new LinkedHashMap<>();
        List<String> problem = new ArrayList<>();
        answer.faults().forEach(fault -> {
            if (fault.field().isEmpty()) {
                problem.add(fault.sentence());
            } else {
                problems.put(fault.field(), fault.sentence());
            }
        });
        return new TallyView.Choice(
                Heads.of("Open nests", request),
                Person.of(request),
                desk.openings(site).stream()
                        .map(o -> new TallyView.Opening(TallyController.PATH + "/" + o.id(), o.words()))
                        .toList(),
                new RecordFields(entries)
                        .fields(EntryDesk.form("opening"), EntryController.PREFIX, values, problems, Map.of()),
                problem,
                Cautions.OPENING,
                act,
                entry);
    }

    TallyView counter(TallyDesk.Opening opening, Spot spot, List<String> problem, HttpServletRequest request) {
        Spot shown = spot;
        TallyView.Totals totals;
        try {
            totals = totals(opening.id(), spot);
        } catch (Refusal refusal) {
            problem.addAll(TroubleAdvice.lines(refusal));
            shown = new Spot("", "", "");
            totals = totals(opening.id(), shown);
        }
        String place = shown.nest().isEmpty() ? shown.house() : shown.nest();
        String tunnel = shown.tunnel().isBlank() ? "" : "tunnel " + shown.tunnel();
        return new TallyView(
                Heads.of("Count cells", request),
                Person.of(request),
                opening.words(),
                opening.id(),
                place + (place.isEmpty() || tunnel.isEmpty() ? "" : ", ") + tunnel,
                shown.house(),
                shown.nest(),
                shown.tunnel(),
                options("house", opening.site(), shown.house()),
                options("nest", opening.site(), shown.nest()),
                RecordsDesk.newId(),
                "",
                problem,
                Cautions.OPENING,
                totals);
    }

    private List<FieldView.Option> options(String table, String site, String chosen) {
        return entries.choices(table, MOST_CHOICES).stream()
                .filter(choice -> choice.words().startsWith(site + " / "))
                .limit(MOST_NESTS)
                .map(choice -> new FieldView.Option(
                        choice.value(),
                        choice.words().substring(site.length() + " / ".length()),
                        choice.value().equals(chosen)))
                .toList();
    }

    TallyView.Totals totals(String opening, Spot spot) {
        TallyDesk.Board board = desk.board(opening, spot);
        int cells = board.alive() + board.lost();
        List<TallyView.Button> buttons = new ArrayList<>();
        for (TallyDesk.Count count : board.counts()) {
            int place = buttons.size();
            buttons.add(new TallyView.Button(
                    count.found(),
                    count.label(),
                    KEYS.substring(place, place + 1).toUpperCase(Locale.ROOT),
                    Integer.toString(count.here()),
                    Integer.toString(count.all()),
                    cells == 0 ? "" : PageWords.number(100.0 * count.all() / cells, 1) + " %"));
        }
        String sentence = cells == 0
                ? "Nothing counted yet in this opening."
                : cells + (cells == 1 ? " cell" : " cells") + " in this opening: " + board.alive() + " alive, "
                        + board.lost() + " lost (" + PageWords.number(100.0 * board.lost() / cells, 1) + " %).";
        return new TallyView.Totals(buttons, sentence);
    }

    static String query(Spot spot) {
        return "?house=" + VisitPage.encode(spot.house()) + "&nest=" + VisitPage.encode(spot.nest()) + "&tunnel="
                + VisitPage.encode(spot.tunnel());
    }
}
