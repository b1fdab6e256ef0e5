package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.VisitDesk;
import org.nestyear.app.book.VisitTyped;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The quick visit, which works with buttons alone: every button is a form that comes back with the form. */
@RestController
class VisitController {
    static final String PATH = "/records/visit";
    private static final int MOST = 1_000_000;

    private final VisitDesk desk;
    private final VisitPage page;
    private final Pages pages;

    VisitController(BookDesk desk, Pages pages) {
        this.desk = new VisitDesk(desk);
        this.page = new VisitPage(desk, this.desk);
        this.pages = pages;
    }

    @GetMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> visit(
            @RequestParam(defaultValue = "") String site,
            @RequestParam(defaultValue = "") String saved,
            @RequestParam(defaultValue = "") String undone,
            HttpServletRequest request) {
        List<VisitDesk.Site> sites = desk.sites();
        if (sites.isEmpty()) {
            return Redirect.to(RecordsController.HOME);
        }
        VisitDesk.Site here = page.choose(sites, site, request);
        VisitPage.State state = VisitPage.State.fresh(page.beginning(here, request), RecordsDesk.newId());
        Optional<VisitDesk.Receipt> receipt = saved.isEmpty() ? Optional.empty() : desk.receipt(saved);
        return ResponseEntity.ok(render(sites, here, state.with(receipt, undone), request));
    }

    @PostMapping(path = PATH, produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> send(
            @RequestParam String site,
            @RequestParam(defaultValue = "") String house,
            @RequestParam(defaultValue = "") String species,
            @RequestParam(defaultValue = "") String day,
            @RequestParam(defaultValue = "") String more,
            @RequestParam(defaultValue = "") String all,
            @RequestParam(defaultValue = "") String torch,
            @RequestParam(defaultValue = "") String mud,
            @RequestParam(defaultValue = "") List<String> seen,
            @RequestParam(defaultValue = "") String note,
            @RequestParam(defaultValue = "") String line,
            @RequestParam(defaultValue = "save") String go,
            @RequestParam String act,
            HttpServletRequest request) {
        String who = Person.typed(request);
        List<VisitDesk.Site> sites = desk.sites();
        VisitDesk.Site here = page.choose(sites, site, request);
        Kept.put(request, "house", house);
        Kept.put(request, "species", species);
        VisitTyped typed = new VisitTyped(
                here.value(), house, species, day, more.strip(), all.strip(), torch.strip(), mud, seen, note);
        VisitPage.State state = VisitPage.State.fresh(typed, act);
        if (go.startsWith("add:")) {
            String sum = Integer.toString(sum(more, go.substring("add:".length())));
            return ResponseEntity.ok(render(sites, here, state.with(typed.withMore(sum), line), request));
        }
        if (!line.isBlank()) {
            // Said back before it is saved, whichever button was pressed.
            return ResponseEntity.ok(render(sites, here, state.with(VisitDesk.understand(typed, line)), request));
        }
        SaveAnswer answer = desk.save(who, act, typed);
        if (answer.good()) {
            return Redirect.to(PATH + "?site=" + VisitPage.encode(here.value()) + "&saved="
                    + answer.act().map(done -> done.id()).orElse(act));
        }
        return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                .body(render(sites, here, state.with(answer), request));
    }

    private String render(
            List<VisitDesk.Site> sites, VisitDesk.Site here, VisitPage.State state, HttpServletRequest request) {
        return pages.render("visit.jte", page.view(sites, here, state, request));
    }

    // What is no number counts as none; never below nothing.
    private static int sum(String more, String step) {
        int before = number(more);
        return Math.max(0, Math.min(MOST, before + number(step)));
    }

    private static int number(String text) {
        return text.strip().matches("-?\\d{1,7}") ? Integer.parseInt(text.strip()) : 0;
    }
}
