package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SeasonDesk;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;

/** The page on which a season is opened: the demo, the keeper's own files, or one opened before. */
@RestController
class SeasonsController {
    private final SeasonDesk desk;
    private final Pages pages;

    SeasonsController(SeasonDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping(path = "/seasons", produces = MediaType.TEXT_HTML_VALUE)
    String seasons(HttpServletRequest request) {
        return page(request, List.of(), "");
    }

    @PostMapping(path = "/seasons/demo", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> openDemo(HttpServletRequest request) {
        return open(desk::openDemo, "", request);
    }

    @PostMapping(path = "/seasons/path", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> openPath(@RequestParam String path, HttpServletRequest request) {
        return open(() -> desk.openPath(path), path, request);
    }

    @PostMapping(path = "/seasons/files", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> openFiles(
            @RequestParam MultipartFile season,
            @RequestParam Optional<List<MultipartFile>> weather,
            HttpServletRequest request) {
        return open(() -> upload(season, weather.orElse(List.of())), "", request);
    }

    @PostMapping(path = "/seasons/again", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> openAgain(@RequestParam String id, HttpServletRequest request) {
        return open(() -> desk.openAgain(id), "", request);
    }

    private void upload(MultipartFile season, List<MultipartFile> weather) {
        try {
            UploadedFiles files = UploadedFiles.of(season, weather);
            desk.openUpload(files.seasonName(), files.files());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ResponseEntity<String> open(Runnable opening, String path, HttpServletRequest request) {
        try {
            opening.run();
            return Redirect.to("/");
        } catch (Refusal refusal) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT)
                    .body(page(request, TroubleAdvice.lines(refusal), path));
        }
    }

    private String page(HttpServletRequest request, List<String> problem, String path) {
        List<SeasonsView.Earlier> earlier = desk.list().stream()
                .map(s -> new SeasonsView.Earlier(s.id(), s.name(), PageWords.stamp(s.openedAt()), s.current()))
                .toList();
        PageHead head = Heads.of("Open a season", request);
        SeasonsView view = new SeasonsView(head, earlier.isEmpty(), problem, path, earlier, desk.demoText());
        return pages.render("seasons.jte", view);
    }
}
