package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.VisitDesk;
import org.nestyear.app.book.VisitTyped;

/** Puts the quick visit on a page. */
final class VisitPage {
    private static final List<String> MUD = List.of("wet", "damp", "dry", "none");

    private final EntryDesk entries;
    private final VisitDesk visits;

    VisitPage(BookDesk desk, VisitDesk visits) {
        this.entries = new EntryDesk(desk);
        this.visits = visits;
    }

    /**
     * What the page has to show beside the sites.
     *
     * @param line the line of plain words, still to be read
     * @param undone id of an act that took something back just now, or empty
     */
    record State(
            VisitTyped typed,
            String act,
            String line,
            List<String> understood,
            String kept,
            Optional<VisitDesk.Receipt> receipt,
            String undone,
            SaveAnswer answer) {
        static State fresh(VisitTyped typed, String act) {
            return new State(typed, act, "", List.of(), "", Optional.empty(), "", SaveAnswer.NOTHING);
        }

        State with(Optional<VisitDesk.Receipt> saved, String takenBack) {
            return new State(typed, act, line, understood, kept, saved, takenBack, answer);
        }

        State with(VisitTyped other, String unread) {
            return new State(other, act, unread, understood, kept, receipt, undone, answer);
        }

        State with(VisitDesk.Understood read) {
            return new State(read.typed(), act, "", read.understood(), read.note(), receipt, undone, answer);
        }

        State with(SaveAnswer refused) {
            return new State(typed, act, line, understood, kept, receipt, undone, refused);
        }
    }

    /** The site asked for, else the one used last, else the first. */
    VisitDesk.Site choose(List<VisitDesk.Site> sites, String asked, HttpServletRequest request) {
        String wanted = asked.isEmpty() ? Kept.get(request, "site") : asked;
        VisitDesk.Site chosen = sites.stream()
                .filter(site -> site.value().equals(wanted) || site.name().equals(wanted))
                .findFirst()
                .orElse(sites.get(0));
        Kept.put(request, "site", chosen.value());
        return chosen;
    }

    /** The form of a new visit: today, the house and the bee used last. */
    VisitTyped beginning(VisitDesk.Site here, HttpServletRequest request) {
        String house = Kept.get(request, "house");
        return new VisitTyped(
                here.value(),
                house,
                Kept.get(request, "species"),
                entries.today(here.zone()).toString(),
                "",
                "",
                "",
                "",
                List.of(),
                "");
    }

    VisitView view(List<VisitDesk.Site> sites, VisitDesk.Site here, State state, HttpServletRequest request) {
        VisitTyped typed = state.typed();
        List<String> problem = new ArrayList<>();
        Map<String, String> problems = new LinkedHashMap<>();
        state.answer().faults().forEach(fault -> {
            if (fault.field().isEmpty()) {
                problem.add(fault.sentence());
            } else {
                problems.put(fault.field(), fault.sentence());
            }
        });
        if (!problems.isEmpty()) {
            problem.add("Nothing was written yet: see what is marked below.");
        }
        boolean takenBack = state.receipt().map(r -> r.act().takenBack()).orElse(false);
        List<FieldView.Option> houses = new ArrayList<>();
        houses.add(new FieldView.Option("", "the whole site", typed.house().isEmpty()));
        visits.houses(here)
                .forEach(house -> houses.add(new FieldView.Option(
                        house.value(), house.words(), house.value().equals(typed.house()))));
        if (houses.stream().noneMatch(FieldView.Option::chosen)) {
            houses.set(0, new FieldView.Option("", "the whole site", true));
        }
        return new VisitView(
                Heads.of("Quick visit", request),
                Person.of(request),
                sites.stream()
                        .map(site -> new FieldView.Option(site.value(), site.name(), site.equals(here)))
                        .toList(),
                houses,
                EntryDesk.bees().stream()
                        .map(bee -> new FieldView.Option(
                                bee.value(), bee.words(), bee.value().equals(typed.species())))
                        .toList(),
                MUD.stream()
                        .map(word -> new FieldView.Option(word, word, word.equals(typed.mud())))
                        .toList(),
                VisitDesk.sightingWords().stream()
                        .map(word -> new FieldView.Option(
                                word, word, typed.sightings().contains(word)))
                        .toList(),
                typed,
                state.act(),
                state.line(),
                state.understood(),
                state.kept(),
                takenBack
                        ? ""
                        : state.receipt().map(VisitDesk.Receipt::sentence).orElse(""),
                takenBack ? "" : state.receipt().map(r -> r.act().id()).orElse(""),
                entries.findAct(state.undone())
                        .map(act -> RecordsController.told(act) + ".")
                        .orElse(""),
                problem,
                problems,
                Cautions.of("visit"));
    }

    static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
