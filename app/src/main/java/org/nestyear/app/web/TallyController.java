package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.TallyDesk;
import org.nestyear.app.book.TallyDesk.Spot;
import org.nestyear.app.book.TypedRow;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** The counter at an opening. Every tap is saved at once; a script may ask for the counts alone. */
@RestController
class TallyController {
    static final String PATH = "/records/tally";
    /** Sent by the script of the page, which wants the counts alone. */
    private static final String SCRIPT = "X-Nestyear-Tap";

    private final TallyDesk desk;
    private final EntryDesk entries;
    private final TallyPage page;
    private final Pages pages;

    TallyController(BookDesk desk, Pages pages) {
        this.desk = new TallyDesk(desk);
        this.entries = new EntryDesk(desk);
        this.page = new TallyPage(this.desk, entries);
        this.pages = pages;
    }

    @GetMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    String choose(@RequestParam(defaultValue = "") String site, HttpServletRequest request) {
        if (!site.isEmpty()) {
            Kept.put(request, "site", site);
        }
        Map<String, String> values = new EntryPage(entries)
                .beginning(EntryDesk.form("opening"), Map.of("site", site), Kept.get(request, "site"));
        values.putIfAbsent("species", Kept.get(request, "species"));
        // Nests opened in winter were built the summer before.
        String day = values.getOrDefault("on_date", "");
        values.putIfAbsent("year", Integer.toString(Integer.parseInt(day.substring(0, 4)) - 1));
        return pages.render(
                "tallies.jte",
                page.choice(site, RecordsDesk.newId(), RecordsDesk.newId(), values, SaveAnswer.NOTHING, request));
    }

    @PostMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> begin(
            @RequestParam String act,
            @RequestParam String entry,
            @RequestParam Map<String, String> sent,
            HttpServletRequest request) {
        Map<String, String> typed = new LinkedHashMap<>();
        EntryDesk.form("opening")
                .fields()
                .forEach(f -> typed.put(f.name(), sent.getOrDefault(EntryController.PREFIX + f.name(), "")));
        Kept.put(request, "site", typed.getOrDefault("site", ""));
        Kept.put(request, "species", typed.getOrDefault("species", ""));
        SaveAnswer answer = entries.save(
                Person.typed(request), "opening", act, "began an opening", List.of(new TypedRow(entry, 0, typed)));
        return answer.good()
                ? Redirect.to(PATH + "/" + entry)
                : ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                        .body(pages.render("tallies.jte", page.choice("", act, entry, typed, answer, request)));
    }

    @GetMapping(path = PATH + "/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String counter(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String house,
            @RequestParam(defaultValue = "") String nest,
            @RequestParam(defaultValue = "") String tunnel,
            HttpServletRequest request) {
        return counter(id, new Spot(house, nest, tunnel), List.of(), request);
    }

    @PostMapping(path = PATH + "/{id}/tap", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> tap(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String house,
            @RequestParam(defaultValue = "") String nest,
            @RequestParam(defaultValue = "") String tunnel,
            @RequestParam String found,
            @RequestParam String tap,
            @RequestHeader(name = SCRIPT, defaultValue = "") String script,
            HttpServletRequest request) {
        Spot spot = new Spot(house, nest, tunnel);
        return answered(
                id,
                spot,
                script,
                request,
                () -> desk.tap(Person.typed(request), id, spot, found, 1, tap)
                        .ifPresent(act -> Taps.of(request).add(new Taps.Tap(act.id(), id, spot, found))));
    }

    @PostMapping(path = PATH + "/{id}/undo", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> undo(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String house,
            @RequestParam(defaultValue = "") String nest,
            @RequestParam(defaultValue = "") String tunnel,
            @RequestParam String tap,
            @RequestHeader(name = SCRIPT, defaultValue = "") String script,
            HttpServletRequest request) {
        return answered(id, new Spot(house, nest, tunnel), script, request, () -> {
            if (Taps.of(request).isNew(tap)) {
                takeBack(Person.typed(request), id, tap, request);
            }
        });
    }

    private void takeBack(String who, String id, String tap, HttpServletRequest request) {
        Taps.Tap last = Taps.of(request).takeLast(id).orElse(null);
        if (last == null) {
            desk.lastTap(who, id).ifPresent(act -> entries.undo(who, act.id()));
            return;
        }
        if (entries.findAct(last.act()).map(act -> act.takenBack()).orElse(true)) {
            return;
        }
        try {
            entries.undo(who, last.act());
        } catch (Refusal refusal) {
            // Somebody tapped the same sort since: theirs stays, ours is taken off.
            desk.tap(who, id, last.spot(), last.found(), -1, tap);
        }
    }

    private ResponseEntity<String> answered(
            String id, Spot spot, String script, HttpServletRequest request, Runnable work) {
        try {
            work.run();
        } catch (Refusal refusal) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(counter(id, spot, TroubleAdvice.lines(refusal), request));
        }
        return script.isEmpty()
                ? Redirect.to(PATH + "/" + id + TallyPage.query(spot) + "#taps")
                : ResponseEntity.ok(pages.render("tallycounts.jte", page.totals(id, spot)));
    }

    private String counter(String id, Spot spot, List<String> problem, HttpServletRequest request) {
        TallyDesk.Opening opening = desk.find(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        return pages.render("tally.jte", page.counter(opening, spot, new ArrayList<>(problem), request));
    }
}
