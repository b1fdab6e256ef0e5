package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.EntryForm;
import org.nestyear.app.book.ImportPlan;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** A table from a CSV file, with every line told before it is written, and to one. */
@RestController
class SheetFileController {
    private static final String PATH = "/records/file/";
    private static final String KEPT = SheetFileController.class.getName();
    private static final int LINES = 500;

    private final RecordsDesk desk;
    private final EntryDesk entries;
    private final Pages pages;

    SheetFileController(BookDesk desk, Pages pages) {
        this.desk = new RecordsDesk(desk);
        this.entries = new EntryDesk(desk);
        this.pages = pages;
    }

    /** A file that was looked at and waits in the session to be written. */
    private record Waiting(String id, String table, ImportPlan plan) {}

    @GetMapping(path = PATH + "{table}", produces = MediaType.TEXT_HTML_VALUE)
    String empty(
            @PathVariable String table, @RequestParam(defaultValue = "") String saved, HttpServletRequest request) {
        return page(table, null, saved, List.of(), request);
    }

    @GetMapping(path = PATH + "{table}.csv", produces = "text/csv")
    ResponseEntity<byte[]> csv(@PathVariable String table) {
        byte[] text = desk.csv(table).getBytes(StandardCharsets.UTF_8);
        return ResponseEntity.ok()
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + EntryDesk.form(table).name() + ".csv\"")
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .body(text);
    }

    @PostMapping(path = PATH + "{table}", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> look(
            @PathVariable String table, @RequestParam Optional<MultipartFile> file, HttpServletRequest request)
            throws IOException {
        EntryForm form = EntryDesk.form(table);
        Person.typed(request);
        if (file.isEmpty() || file.get().isEmpty()) {
            return refused(page(table, null, "", List.of("No file was chosen; expected a CSV file."), request));
        }
        String given = file.get().getOriginalFilename();
        String name = given == null || given.isBlank() ? "the file" : given;
        try {
            ImportPlan plan =
                    desk.planImport(form.name(), name, new String(file.get().getBytes(), StandardCharsets.UTF_8));
            Waiting waiting = new Waiting(RecordsDesk.newId(), form.name(), plan);
            request.getSession().setAttribute(KEPT, waiting);
            return ResponseEntity.ok(page(table, waiting, "", List.of(), request));
        } catch (Refusal refusal) {
            return refused(page(table, null, "", TroubleAdvice.lines(refusal), request));
        }
    }

    @PostMapping(path = PATH + "{table}/write", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> write(@PathVariable String table, @RequestParam String ready, HttpServletRequest request) {
        if (entries.findAct(ready).isPresent()) {
            return Redirect.to(PATH + table + "?saved=" + ready);
        }
        if (!(request.getSession().getAttribute(KEPT) instanceof Waiting waiting)
                || !waiting.id().equals(ready)
                || !waiting.table().equals(table)) {
            return refused(page(
                    table,
                    null,
                    "",
                    List.of("That file is no longer at hand. Choose it once more. (NY-LOG-GONE)"),
                    request));
        }
        try {
            Optional<DoneAct> act = desk.apply(Person.typed(request), ready, waiting.plan());
            request.getSession().removeAttribute(KEPT);
            return Redirect.to(PATH + table + "?saved=" + act.map(DoneAct::id).orElse("nothing"));
        } catch (Refusal refusal) {
            return refused(page(table, null, "", TroubleAdvice.lines(refusal), request));
        }
    }

    private static ResponseEntity<String> refused(String page) {
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(page);
    }

    private String page(
            String table, @Nullable Waiting waiting, String saved, List<String> problem, HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        List<SheetView.Line> lines = new ArrayList<>();
        String summary = "";
        int hidden = 0;
        if (waiting != null) {
            ImportPlan plan = waiting.plan();
            List<String> counted = new ArrayList<>();
            for (ImportPlan.Kind kind : ImportPlan.Kind.values()) {
                counted.add(plan.count(kind) + " " + kind.word());
            }
            summary = plan.name() + ": " + String.join(", ", counted) + ".";
            for (ImportPlan.Line line :
                    plan.lines().subList(0, Math.min(LINES, plan.lines().size()))) {
                lines.add(new SheetView.Line(line.line(), line.kind().word(), told(line.told())));
            }
            hidden = plan.lines().size() - lines.size();
        }
        Optional<DoneAct> act = entries.findAct(saved);
        SheetView.File view = new SheetView.File(
                Heads.of(form.title() + " from or to a file", request),
                Person.of(request),
                form.name(),
                form.title(),
                String.join(
                        ", ", form.fields().stream().map(EntryForm.Field::name).toList()),
                summary,
                lines,
                hidden,
                waiting == null ? "" : waiting.id(),
                act.map(done -> "Written: " + done.words() + ", " + done.entries() + " entries.")
                        .orElse(saved.isEmpty() ? "" : "There was nothing to change."),
                act.map(DoneAct::id).orElse(""),
                problem);
        return pages.render("sheetfile.jte", view);
    }

    private static String told(Map<String, String> told) {
        List<String> parts = new ArrayList<>();
        told.forEach((column, value) -> parts.add(column + ": " + value));
        return String.join("; ", parts);
    }
}
