package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The page of every number used, with its basis and citation. */
@RestController
class SourcesController {
    private final Pages pages;

    SourcesController(Pages pages) {
        this.pages = pages;
    }

    @GetMapping(path = "/sources", produces = MediaType.TEXT_HTML_VALUE)
    String sources(HttpServletRequest request) {
        return pages.render("sources.jte", SourcesPage.view(Heads.of("Sources", request)));
    }
}
