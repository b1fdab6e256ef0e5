package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.nestyear.app.service.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.multipart.MaxUploadSizeExceededException;

/** Turns what a keeper can do something about into a page that says so; defects go on to the page for those. */
@RestControllerAdvice
class TroubleAdvice {
    /** What is said of a file that is too large, wherever it was refused. */
    static final String TOO_LARGE =
            "A file is too large; expected at most 20 MB a file and 60 MB together. (NY-UPLOAD-SIZE)";

    private final Pages pages;

    TroubleAdvice(Pages pages) {
        this.pages = pages;
    }

    /** The lines to show: place, sentence and code, then the advice. */
    static List<String> lines(Refusal refusal) {
        String place = refusal.place().isEmpty() ? "" : refusal.place() + ": ";
        String first = place + refusal.sentence() + " (" + refusal.code() + ")";
        return refusal.advice().isEmpty() ? List.of(first) : List.of(first, refusal.advice());
    }

    @ExceptionHandler(Refusal.class)
    ResponseEntity<String> refused(Refusal refusal, HttpServletRequest request) {
        String title =
                request.getRequestURI().startsWith("/records") ? "Nothing was written" : "No answer for this season";
        return page(HttpStatus.UNPROCESSABLE_CONTENT, title, lines(refusal), request);
    }

    @ExceptionHandler(MaxUploadSizeExceededException.class)
    ResponseEntity<String> tooLarge(MaxUploadSizeExceededException thrown, HttpServletRequest request) {
        return page(HttpStatus.CONTENT_TOO_LARGE, "Nothing was opened or kept", List.of(TOO_LARGE), request);
    }

    private ResponseEntity<String> page(
            HttpStatus status, String title, List<String> lines, HttpServletRequest request) {
        TroubleView view = new TroubleView(Heads.of(title, request), title, lines);
        return ResponseEntity.status(status).contentType(MediaType.TEXT_HTML).body(pages.render("trouble.jte", view));
    }
}
