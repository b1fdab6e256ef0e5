package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.LoggerDesk;
import org.nestyear.app.book.LoggerDesk.Lying;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** Readings of a logger: paste or choose a file, look at what it holds, save. */
@RestController
class LoggerController {
    private static final int MOST_CHOICES = 1000;
    private static final String PATH = "/records/logger";
    private static final String KEPT = LoggerController.class.getName();
    private static final int LONGEST_KEPT = 100_000;

    private final LoggerDesk desk;
    private final EntryDesk entries;
    private final Pages pages;

    LoggerController(BookDesk desk, Pages pages) {
        this.desk = new LoggerDesk(desk);
        this.entries = new EntryDesk(desk);
        this.pages = pages;
    }

    /** A log that was looked at and waits in the session for its Save. */
    private record Waiting(String id, Lying lying, LoggerDesk.Preview preview) {}

    @GetMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    String empty(
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String saved,
            HttpServletRequest request) {
        List<EntryDesk.Choice> sites = entries.choices("site", MOST_CHOICES);
        String usedLast = sites.size() == 1 ? sites.get(0).value() : Kept.get(request, "site");
        String here = site.isEmpty() ? usedLast : site;
        Optional<DoneAct> act = entries.findAct(saved);
        String notice = act.map(done -> "Saved: " + done.words() + ".").orElse("");
        Lying lying = new Lying(here, Kept.get(request, "place"), "", "");
        return page(
                request,
                lying,
                "",
                List.of(),
                null,
                notice,
                act.map(DoneAct::id).orElse(""),
                List.of());
    }

    @PostMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> look(
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String place,
            @RequestParam(defaultValue = "") String logger,
            @RequestParam(defaultValue = "") String batch,
            @RequestParam(defaultValue = "") String text,
            @RequestParam Optional<MultipartFile> file,
            HttpServletRequest request)
            throws IOException {
        Person.typed(request);
        Kept.put(request, "site", site);
        Kept.put(request, "place", place);
        Lying lying = new Lying(site, place, logger.strip(), batch);
        boolean chosen = file.isPresent() && !file.get().isEmpty();
        String all = chosen ? new String(file.get().getBytes(), StandardCharsets.UTF_8) : text;
        String given = chosen ? file.get().getOriginalFilename() : null;
        String name = given == null || given.isBlank() ? "the readings" : given;
        try {
            LoggerDesk.Looked looked = desk.look(lying, name, all);
            if (looked.preview().isEmpty()) {
                return refused(page(request, lying, text, List.of(), null, "", "", looked.faults()));
            }
            Waiting waiting =
                    new Waiting(RecordsDesk.newId(), lying, looked.preview().get());
            request.getSession().setAttribute(KEPT, waiting);
            return ResponseEntity.ok(page(request, lying, text, facts(waiting.preview()), waiting, "", "", List.of()));
        } catch (Refusal refusal) {
            return refused(page(request, lying, text, List.of(), null, "", "", TroubleAdvice.lines(refusal)));
        }
    }

    @PostMapping(path = PATH + "/save", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> save(@RequestParam String ready, HttpServletRequest request) {
        if (entries.findAct(ready).isPresent()) {
            return Redirect.to(PATH + "?saved=" + ready);
        }
        if (!(request.getSession().getAttribute(KEPT) instanceof Waiting waiting)
                || !waiting.id().equals(ready)) {
            return refused(page(
                    request,
                    new Lying(Kept.get(request, "site"), Kept.get(request, "place"), "", ""),
                    "",
                    List.of(),
                    null,
                    "",
                    "",
                    List.of("These readings are no longer at hand. Paste or choose them once more. (NY-LOG-GONE)")));
        }
        SaveAnswer answer = desk.save(Person.typed(request), ready, waiting.lying(), waiting.preview());
        if (answer.good()) {
            request.getSession().removeAttribute(KEPT);
            return Redirect.to(PATH + "?saved=" + ready);
        }
        List<String> problem = new ArrayList<>();
        answer.faults().forEach(fault -> problem.add(fault.sentence()));
        return refused(page(request, waiting.lying(), "", List.of(), null, "", "", problem));
    }

    private static ResponseEntity<String> refused(String page) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(page);
    }

    private static List<String> facts(LoggerDesk.Preview log) {
        List<String> facts = new ArrayList<>();
        facts.add(log.readings() + " readings, from " + log.from().toString().replace('T', ' ') + " to "
                + log.to().toString().replace('T', ' ') + ".");
        facts.add("Lowest " + PageWords.number(log.lowestC(), 1) + " °C, highest " + PageWords.number(log.highestC(), 1)
                + " °C.");
        facts.add(
                log.gaps() == 0
                        ? "No gap."
                        : log.gaps() + (log.gaps() == 1 ? " gap: " : " gaps: ") + String.join("; ", log.gapWords())
                                + (log.gaps() > log.gapWords().size() ? "; …" : "") + ".");
        facts.add(log.there() + " of them are in the records already and are passed over.");
        if (log.other() > 0) {
            facts.add(log.other()
                    + " stand in the records with another temperature; what is in the records stays as it is.");
        }
        facts.add("Columns other than the time and the temperature are not kept.");
        return facts;
    }

    private String page(
            HttpServletRequest request,
            Lying lying,
            String text,
            List<String> facts,
            @Nullable Waiting waiting,
            String notice,
            String undo,
            List<String> problem) {
        int fresh = waiting == null ? 0 : waiting.preview().fresh().size();
        LoggerView view = new LoggerView(
                Heads.of("Logger readings", request),
                Person.of(request),
                options(entries.choices("site", MOST_CHOICES), lying.site()),
                LoggerDesk.places().stream()
                        .map(word -> new FieldView.Option(word, word, word.equals(lying.place())))
                        .toList(),
                options(entries.choices("batch", MOST_CHOICES), lying.batch()),
                lying.logger(),
                text.length() > LONGEST_KEPT ? "" : text,
                facts,
                waiting == null || fresh == 0 ? "" : waiting.id(),
                "Save " + fresh + (fresh == 1 ? " reading" : " readings"),
                notice,
                undo,
                problem);
        return pages.render("logger.jte", view);
    }

    private static List<FieldView.Option> options(List<EntryDesk.Choice> choices, String chosen) {
        return choices.stream()
                .map(c -> new FieldView.Option(c.value(), c.words(), c.value().equals(chosen)))
                .toList();
    }
}
