package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.ShownEntry;
import org.nestyear.app.book.VisitDesk;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The first page of the records: the sites, what was done lately, and taking it back. */
@RestController
class RecordsController {
    static final String HOME = "/records";
    private static final String TOOK_BACK = "took back: ";
    private static final int ACTS = 20;
    private static final int SITES = 20;

    private final EntryDesk entries;
    private final VisitDesk visits;
    private final Pages pages;

    RecordsController(BookDesk desk, Pages pages) {
        this.entries = new EntryDesk(desk);
        this.visits = new VisitDesk(desk);
        this.pages = pages;
    }

    @GetMapping(path = HOME, produces = MediaType.TEXT_HTML_VALUE)
    String home(
            @RequestParam(defaultValue = "") String undone,
            @RequestParam(defaultValue = "0") int from,
            HttpServletRequest request) {
        String notice = entries.findAct(undone).map(act -> told(act) + ".").orElse("");
        return page(request, notice, List.of(), Math.max(0, from));
    }

    @PostMapping(path = HOME + "/undo", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> undo(
            @RequestParam String act, @RequestParam(defaultValue = HOME) String back, HttpServletRequest request) {
        try {
            DoneAct done = entries.undo(Person.typed(request), act);
            String to = back.startsWith(HOME) ? back : HOME;
            return Redirect.to(to + (to.contains("?") ? "&" : "?") + "undone=" + done.id());
        } catch (Refusal refusal) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(request, "", TroubleAdvice.lines(refusal), 0));
        }
    }

    /** What was done, with a large first letter. */
    static String told(DoneAct act) {
        return act.words().isEmpty()
                ? ""
                : act.words().substring(0, 1).toUpperCase(Locale.ROOT)
                        + act.words().substring(1);
    }

    private String page(HttpServletRequest request, String notice, List<String> problem, int from) {
        List<VisitDesk.Site> sites = visits.sites();
        List<VisitDesk.Site> here = sites.stream().skip(from).limit(SITES).toList();
        Map<String, ShownEntry> last = visits.last(here);
        List<RecordsView.Site> shown = here.stream()
                .map(site -> site(site, Optional.ofNullable(last.get(site.id()))))
                .toList();
        RecordsView view = new RecordsView(
                Heads.of("Records", request),
                Person.of(request),
                notice,
                problem,
                shown,
                from == 0 ? "" : HOME + "?from=" + Math.max(0, from - SITES),
                from + SITES >= sites.size() ? "" : HOME + "?from=" + (from + SITES),
                entries.done(ACTS).stream().map(RecordsController::done).toList(),
                EntryDesk.forms().stream()
                        .map(form -> new RecordsView.Table(form.name(), form.title(), form.what()))
                        .toList());
        return pages.render("records.jte", view);
    }

    private static RecordsView.Site site(VisitDesk.Site site, Optional<ShownEntry> last) {
        return new RecordsView.Site(
                site.name(),
                "?site=" + URLEncoder.encode(site.value(), StandardCharsets.UTF_8),
                EntryController.ENTRY + "site/" + site.id(),
                last.map(RecordsController::last).orElse("No visit written down yet."));
    }

    private static String last(ShownEntry visit) {
        Map<String, String> told = visit.values();
        StringBuilder words = new StringBuilder("Last visit ")
                .append(PageWords.shortDay(LocalDate.parse(told.getOrDefault("on_date", ""))))
                .append('\u00a0')
                .append(told.getOrDefault("on_date", "").substring(0, 4));
        append(words, told, "more_plugged", "", " more plugged");
        append(words, told, "all_plugged", "", " plugged in all");
        append(words, told, "torch_count", "torch ", "");
        append(words, told, "mud", "mud ", "");
        return words.append(" (").append(visit.who()).append(").").toString();
    }

    private static void append(
            StringBuilder words, Map<String, String> told, String column, String before, String after) {
        if (told.containsKey(column)) {
            words.append(", ").append(before).append(told.get(column)).append(after);
        }
    }

    private static RecordsView.Done done(DoneAct act) {
        String button = act.takenBack() || act.words().startsWith("did again: ")
                ? ""
                : act.words().startsWith(TOOK_BACK) ? "Redo" : "Undo";
        return new RecordsView.Done(act.id(), PageWords.stamp(act.at()), act.who(), told(act), act.takenBack(), button);
    }
}
