package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Optional;
import org.nestyear.app.service.OpenSeason;
import org.nestyear.app.service.SeasonDesk;
import org.nestyear.core.season.Goal;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** The pages of the current season: Jobs now and Release. */
@RestController
class PlanController {
    private final SeasonDesk desk;
    private final Pages pages;

    PlanController(SeasonDesk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping(path = "/", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> jobs(HttpServletRequest request) {
        Optional<OpenSeason> season = desk.findCurrent();
        if (season.isEmpty()) {
            return Redirect.to("/seasons");
        }
        PageHead head = Heads.of("Jobs now", request);
        return ResponseEntity.ok(pages.render("jobs.jte", JobsPage.view(head, season.get())));
    }

    @GetMapping(path = "/release", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> release(@RequestParam Optional<String> date, HttpServletRequest request) {
        Optional<OpenSeason> season = desk.findCurrent();
        if (season.isEmpty()) {
            return Redirect.to("/seasons");
        }
        PageHead head = Heads.of("Release", request);
        ReleaseView view = ReleasePage.view(head, season.get(), date);
        return ResponseEntity.ok(pages.render("release.jte", view));
    }

    @PostMapping("/release/aim")
    ResponseEntity<String> chooseAim(@RequestParam String aim) {
        Goal goal = Arrays.stream(Goal.values())
                .filter(known -> known.word().equals(aim))
                .findFirst()
                .orElseThrow(() -> new ResponseStatusException(
                        HttpStatus.BAD_REQUEST, "The aim is “" + aim + "”; expected both, brood or bloom."));
        desk.chooseGoal(goal);
        return Redirect.to("/release");
    }
}
