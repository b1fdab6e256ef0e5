package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import org.nestyear.app.book.BookDesk;
import org.nestyear.app.book.DemoAccount;
import org.nestyear.app.book.JobCalendar;
import org.nestyear.app.book.OpenFiles;
import org.nestyear.app.book.RecordsDesk;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.mvc.method.annotation.StreamingResponseBody;

/** The whole account and its open forms to carry away, links to the calendar of jobs, and the invented account. */
@RestController
class ShareController {
    static final String SHARE = RecordsController.HOME + "/share";
    static final String CALENDAR = "/calendar/";

    private final RecordsDesk records;
    private final JobCalendar calendar;
    private final KeptFolder folder;
    private final Pages pages;

    ShareController(BookDesk desk, KeptFolder folder, Pages pages) {
        this.records = new RecordsDesk(desk);
        this.folder = folder;
        this.calendar = new JobCalendar(records, folder.path());
        this.pages = pages;
    }

    @GetMapping(path = SHARE, produces = MediaType.TEXT_HTML_VALUE)
    String share(HttpServletRequest request) {
        return page(request, "", List.of());
    }

    @GetMapping(path = SHARE + "/account", produces = "application/zip")
    ResponseEntity<StreamingResponseBody> account() {
        return download(
                "nestyear-account-" + records.desk().today() + ".zip",
                "application/zip",
                out -> records.desk().archive().write(out, table -> {}));
    }

    @GetMapping(path = SHARE + "/darwin-core", produces = "application/zip")
    ResponseEntity<StreamingResponseBody> darwinCore(@RequestParam(defaultValue = "10km") String places) {
        OpenFiles.disclosure(places);
        return download(
                "nestyear-darwin-core.zip",
                "application/zip",
                out -> new OpenFiles(records).darwinCore(places, records.desk().today(), out));
    }

    @GetMapping(path = SHARE + "/geojson", produces = "application/geo+json")
    ResponseEntity<StreamingResponseBody> geoJson(@RequestParam(defaultValue = "10km") String places) {
        byte[] text = new OpenFiles(records).geoJson(places).getBytes(StandardCharsets.UTF_8);
        return download("nestyear-places.geojson", "application/geo+json", out -> out.write(text));
    }

    @PostMapping(path = SHARE + "/links", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> makeLink(@RequestParam(defaultValue = "") String name, HttpServletRequest request) {
        try {
            String secret = calendar.makeLink(name);
            String root = request.getRequestURL()
                    .substring(
                            0,
                            request.getRequestURL().length()
                                    - request.getRequestURI().length());
            // Shown once, on the answer itself: only its digest is kept.
            return ResponseEntity.ok(page(request, root + CALENDAR + secret + ".ics", List.of()));
        } catch (Refusal refusal) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(request, "", TroubleAdvice.lines(refusal)));
        }
    }

    @PostMapping(path = SHARE + "/revoke", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> revoke(@RequestParam String id) {
        calendar.revoke(id);
        return Redirect.to(SHARE);
    }

    /** The calendar itself, for whoever has the secret address; nothing else of the records is open to it. */
    @GetMapping(path = CALENDAR + "{secret}.ics")
    ResponseEntity<String> calendar(@PathVariable String secret) {
        return calendar.open(secret, records.desk().today())
                .map(text -> ResponseEntity.ok()
                        .header(HttpHeaders.CONTENT_TYPE, "text/calendar;charset=utf-8")
                        .header(HttpHeaders.CACHE_CONTROL, "private, max-age=3600")
                        .body(text))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.NOT_FOUND)
                        .header(HttpHeaders.CONTENT_TYPE, "text/plain;charset=utf-8")
                        .body("There is no calendar here. The link was mistyped or has been taken back."));
    }

    @PostMapping(path = RecordsController.HOME + "/demo", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> demo(HttpServletRequest request) {
        DemoAccount.open(records, Person.of(request), folder.path());
        return Redirect.to(RecordsController.HOME);
    }

    private String page(HttpServletRequest request, String made, List<String> problem) {
        return pages.render(
                "share.jte",
                new ShareView(
                        Heads.of("Files and links", request),
                        made,
                        problem,
                        calendar.links().stream()
                                .map(link -> new ShareView.Link(
                                        link.id(),
                                        link.name(),
                                        link.madeAt()
                                                .atZone(ZoneId.systemDefault())
                                                .toLocalDate()
                                                .toString(),
                                        link.revoked()))
                                .toList()));
    }

    /** Writes a file to the browser. */
    private interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    private static ResponseEntity<StreamingResponseBody> download(String name, String type, Content content) {
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, type)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .body(content::writeTo);
    }
}
