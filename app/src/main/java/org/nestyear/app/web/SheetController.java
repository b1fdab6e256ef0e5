package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.EntryForm;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.ShownEntry;
import org.nestyear.app.book.TypedRow;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Any table as a sheet of rows, saved all together or not at all. */
@RestController
class SheetController {
    private static final String PATH = "/records/sheet/";
    private static final int ROWS = 50;
    private static final int EMPTY = 10;
    /** Rows a sheet may be sent with; a longer table is read as a file. */
    private static final int MOST = 1000;

    private final EntryDesk desk;
    private final Pages pages;

    SheetController(BookDesk desk, Pages pages) {
        this.desk = new EntryDesk(desk);
        this.pages = pages;
    }

    /** What stands on the sheet. */
    private record Shown(List<TypedRow> rows, SaveAnswer answer, Map<Integer, Integer> placeOf, String saved) {}

    @GetMapping(path = PATH + "{table}", produces = MediaType.TEXT_HTML_VALUE)
    String sheet(
            @PathVariable String table,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String saved,
            HttpServletRequest request) {
        int from = Math.max(1, page);
        List<TypedRow> rows = new ArrayList<>();
        for (ShownEntry entry : desk.list(table, "", 0, ROWS, (from - 1) * ROWS).entries()) {
            rows.add(new TypedRow(entry.id(), entry.revision(), entry.values()));
        }
        return render(table, from, new Shown(rows, SaveAnswer.NOTHING, Map.of(), saved), request);
    }

    @PostMapping(path = PATH + "{table}", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> save(
            @PathVariable String table,
            @RequestParam String act,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam Map<String, String> sent,
            HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        List<TypedRow> all = new ArrayList<>();
        List<TypedRow> told = new ArrayList<>();
        Map<Integer, Integer> placeOf = new HashMap<>();
        for (int i = 1; i <= MOST && sent.containsKey("r" + i + "-id"); i++) {
            TypedRow row = row(form, sent, i);
            if (row.revision() > 0 || row.typed().values().stream().anyMatch(text -> !text.isBlank())) {
                placeOf.put(told.size(), all.size());
                told.add(row);
            }
            all.add(row);
        }
        SaveAnswer answer = desk.save(Person.typed(request), table, act, "filled in " + form.title(), told);
        if (answer.good()) {
            return Redirect.to(PATH + table + "?page=" + page + "&saved="
                    + answer.act().map(DoneAct::id).orElse("nothing"));
        }
        answer.changed().forEach(changed -> {
            int place = placeOf.getOrDefault(changed.row(), 0);
            TypedRow mine = all.get(place);
            all.set(place, new TypedRow(mine.id(), changed.now().revision(), mine.typed()));
        });
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(render(table, page, new Shown(all, answer, placeOf, ""), request));
    }

    private static TypedRow row(EntryForm form, Map<String, String> sent, int number) {
        String prefix = "r" + number + "-";
        Map<String, String> typed = new LinkedHashMap<>();
        form.fields().forEach(field -> typed.put(field.name(), sent.getOrDefault(prefix + field.name(), "")));
        String revision = sent.getOrDefault(prefix + "revision", "0");
        return new TypedRow(
                sent.getOrDefault(prefix + "id", ""),
                revision.matches("\\d{1,9}") ? Integer.parseInt(revision) : 0,
                typed);
    }

    private String render(String table, int page, Shown shown, HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        RecordFields fields = new RecordFields(desk);
        Map<Integer, Map<String, String>> problems = new HashMap<>();
        Map<Integer, Map<String, String>> now = new HashMap<>();
        List<String> problem = new ArrayList<>();
        shown.answer()
                .faults()
                .forEach(fault -> problems.computeIfAbsent(
                                shown.placeOf().getOrDefault(fault.row(), 0), row -> new HashMap<>())
                        .put(fault.field(), fault.sentence()));
        shown.answer().changed().forEach(changed -> {
            int place = shown.placeOf().getOrDefault(changed.row(), 0);
            problems.computeIfAbsent(place, row -> new HashMap<>()).put("", changed.sentence());
            now.put(
                    place,
                    EntryPage.differing(
                            form, shown.rows().get(place).typed(), changed.now().values()));
        });
        if (!problems.isEmpty()) {
            problem.add("Nothing was written: " + count(shown.answer().faults().size(), "cell", "cannot stand")
                    + count(shown.answer().changed().size(), "row", "changed by others meanwhile")
                    + "what you typed is kept.");
        }
        List<TypedRow> rows = new ArrayList<>(shown.rows());
        for (int i = 0; i < EMPTY && shown.answer().good(); i++) {
            rows.add(new TypedRow(RecordsDesk.newId(), 0, Map.of()));
        }
        List<SheetView.Row> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            TypedRow row = rows.get(i);
            Map<String, String> wrong = problems.getOrDefault(i, Map.of());
            lines.add(new SheetView.Row(
                    i + 1,
                    row.id(),
                    row.revision(),
                    wrong.getOrDefault("", ""),
                    fields.fields(form, "r" + (i + 1) + "-", row.typed(), wrong, now.getOrDefault(i, Map.of()))));
        }
        Optional<DoneAct> saved = desk.findAct(shown.saved());
        int all = desk.list(table, "", 0, 1, 0).all();
        SheetView view = new SheetView(
                Heads.of(form.title() + " as a sheet", request),
                Person.of(request),
                form.name(),
                form.title(),
                RecordsDesk.newId(),
                page,
                form.fields().stream().map(EntryForm.Field::label).toList(),
                lines,
                saved.map(act -> "Saved: " + act.entries() + (act.entries() == 1 ? " row." : " rows."))
                        .orElse(shown.saved().isEmpty() ? "" : "Nothing had changed."),
                saved.map(DoneAct::id).orElse(""),
                problem,
                page == 1 ? "" : PATH + table + "?page=" + (page - 1),
                page * ROWS >= all ? "" : PATH + table + "?page=" + (page + 1));
        return pages.render("sheet.jte", view);
    }

    private static String count(int number, String what, String rest) {
        return number == 0 ? "" : number + " " + what + (number == 1 ? " " : "s ") + rest + "; ";
    }
}
