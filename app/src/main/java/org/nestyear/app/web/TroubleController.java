package org.nestyear.app.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The page for whatever no other page answered. It tells nothing about the inside of the program. */
@RestController
class TroubleController implements ErrorController {
    private final Pages pages;

    TroubleController(Pages pages) {
        this.pages = pages;
    }

    @RequestMapping("/error")
    ResponseEntity<String> trouble(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        HttpStatus status = code instanceof Integer number ? HttpStatus.resolve(number) : null;
        HttpStatus shown = status == null ? HttpStatus.INTERNAL_SERVER_ERROR : status;
        String title = title(shown);
        TroubleView view = new TroubleView(Heads.of(title, request), title, List.of(advice(shown)));
        return ResponseEntity.status(shown).contentType(MediaType.TEXT_HTML).body(pages.render("trouble.jte", view));
    }

    private static String title(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "There is no such page";
            case FORBIDDEN -> "This form is out of date";
            case CONTENT_TOO_LARGE -> "Nothing was opened or kept";
            case INTERNAL_SERVER_ERROR -> "A mistake in Nestyear";
            default -> "This was not understood";
        };
    }

    private static String advice(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "Maybe the address was mistyped.";
            case FORBIDDEN ->
                "It came from a page opened before Nestyear was started again. Open the page anew and send it again.";
            case CONTENT_TOO_LARGE -> TroubleAdvice.TOO_LARGE;
            case INTERNAL_SERVER_ERROR ->
                "It is not your doing, and your records are as they were. The terminal says more; please report it.";
            default -> "The browser sent something this page does not expect. Open the page anew and try again.";
        };
    }
}
