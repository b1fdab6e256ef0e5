package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.book.BookDesk;
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
import org.springframework.web.server.ResponseStatusException;

/** Any entry: a new one, one to see, correct or take out, and the entries of a table. */
@RestController
class EntryController {
    static final String ENTRY = "/records/entry/";
    /** Put before the names of columns in forms. */
    static final String PREFIX = "f-";

    private final EntryDesk desk;
    private final EntryPage page;
    private final Pages pages;

    EntryController(BookDesk desk, Pages pages) {
        this.desk = new EntryDesk(desk);
        this.page = new EntryPage(this.desk);
        this.pages = pages;
    }

    @GetMapping(path = "/records/new/{table}", produces = MediaType.TEXT_HTML_VALUE)
    String fresh(@PathVariable String table, @RequestParam Map<String, String> query, HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        EntryPage.Sent sent = new EntryPage.Sent(
                RecordsDesk.newId(), 0, RecordsDesk.newId(), page.beginning(form, query, Kept.get(request, "site")));
        return pages.render("entry.jte", page.view(form, sent, SaveAnswer.NOTHING, "", request));
    }

    @GetMapping(path = ENTRY + "{table}/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String see(
            @PathVariable String table,
            @PathVariable String id,
            @RequestParam(defaultValue = "") String saved,
            HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        ShownEntry entry = desk.find(table, id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        EntryPage.Sent sent = new EntryPage.Sent(id, entry.revision(), RecordsDesk.newId(), entry.values());
        return pages.render("entry.jte", page.view(form, sent, SaveAnswer.NOTHING, saved, request));
    }

    @PostMapping(path = ENTRY + "{table}/{id}", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> save(
            @PathVariable String table,
            @PathVariable String id,
            @RequestParam int revision,
            @RequestParam String act,
            @RequestParam Map<String, String> sent,
            HttpServletRequest request) {
        EntryForm form = EntryDesk.form(table);
        Map<String, String> typed = new LinkedHashMap<>();
        form.fields().forEach(field -> typed.put(field.name(), sent.getOrDefault(PREFIX + field.name(), "")));
        if (!typed.getOrDefault("site", "").isEmpty()) {
            Kept.put(request, "site", typed.getOrDefault("site", ""));
        }
        String words = (revision == 0 ? "wrote under " : "corrected under ") + form.title() + EntryPage.called(typed);
        SaveAnswer answer =
                desk.save(Person.typed(request), table, act, words, List.of(new TypedRow(id, revision, typed)));
        if (answer.good()) {
            return Redirect.to(ENTRY + table + "/" + id + "?saved="
                    + answer.act().map(done -> done.id()).orElse("nothing"));
        }
        int seen = answer.changed().isEmpty()
                ? revision
                : answer.changed().get(0).now().revision();
        EntryPage.Sent again = new EntryPage.Sent(id, seen, RecordsDesk.newId(), typed);
        HttpStatus status = answer.changed().isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT;
        return ResponseEntity.status(status)
                .body(pages.render("entry.jte", page.view(form, again, answer, "", request)));
    }

    @PostMapping(path = ENTRY + "{table}/{id}/remove", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> remove(
            @PathVariable String table,
            @PathVariable String id,
            @RequestParam int revision,
            HttpServletRequest request) {
        desk.remove(Person.typed(request), table, id, revision);
        return Redirect.to("/records/table/" + EntryDesk.form(table).name() + "?out=" + id);
    }

    @GetMapping(path = "/records/table/{table}", produces = MediaType.TEXT_HTML_VALUE)
    String table(
            @PathVariable String table,
            @RequestParam(defaultValue = "") String in,
            @RequestParam(defaultValue = "") String year,
            @RequestParam(defaultValue = "1") int page,
            @RequestParam(defaultValue = "") String out,
            HttpServletRequest request) {
        String notice =
                out.isEmpty() ? "" : "The entry was taken out. It stands under What was done lately, with its Undo.";
        return pages.render(
                "table.jte", this.page.table(EntryDesk.form(table), in, year, Math.max(1, page), notice, request));
    }
}
