package org.nestyear.app.web;

import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;

/** Sends the browser on to another page, so that loading it again repeats nothing. */
final class Redirect {
    private Redirect() {}

    static ResponseEntity<String> to(String path) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(path))
                .build();
    }
}
