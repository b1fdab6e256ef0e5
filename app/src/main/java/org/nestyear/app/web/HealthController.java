package org.nestyear.app.web;

import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Says that the server is up, to scripts that wait for it. */
@RestController
class HealthController {
    @GetMapping(path = "/healthz", produces = MediaType.TEXT_PLAIN_VALUE)
    String health() {
        return "ok\n";
    }
}
