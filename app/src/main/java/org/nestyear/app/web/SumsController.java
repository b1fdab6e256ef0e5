package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.service.SmallSums;
import org.nestyear.app.service.UnitSystem;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;

/** The pages of the small calculators, which need no season and keep nothing. */
@RestController
class SumsController {
    private static final String UNITS = "units";

    private final SmallSums sums;
    private final Pages pages;

    SumsController(SmallSums sums, Pages pages) {
        this.sums = sums;
        this.pages = pages;
    }

    @GetMapping(path = "/sums", produces = MediaType.TEXT_HTML_VALUE)
    String index(@RequestParam Optional<String> units, HttpServletRequest request) {
        return pages.render("sums.jte", SumsPage.index(Heads.of("Quick sums", request), units(units.orElse(""))));
    }

    @GetMapping(path = "/sums/{slug}", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> sum(
            @PathVariable String slug, @RequestParam Map<String, String> form, HttpServletRequest request) {
        return page(slug, form, request);
    }

    @PostMapping(path = "/sums/{slug}", produces = MediaType.TEXT_HTML_VALUE)
    ResponseEntity<String> sumOfTable(
            @PathVariable String slug,
            @RequestParam Map<String, String> form,
            @RequestParam Optional<MultipartFile> file,
            HttpServletRequest request)
            throws IOException {
        Map<String, String> all = new HashMap<>(form);
        if (file.isPresent() && !file.get().isEmpty()) {
            all.put(SumField.TABLE, new String(file.get().getBytes(), StandardCharsets.UTF_8));
        }
        return page(slug, all, request);
    }

    private ResponseEntity<String> page(String slug, Map<String, String> form, HttpServletRequest request) {
        Sum sum = SumBook.find(slug).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        UnitSystem units = units(form.getOrDefault(UNITS, ""));
        SumInput input =
                form.containsKey(SumsPage.EXAMPLE) ? SumInput.example(sum, units) : SumInput.of(sum, units, form);
        boolean asked = sum.fields().stream().anyMatch(field -> form.containsKey(field.name()));
        SumsPage.Shown shown =
                new SumsPage(sums).page(Heads.of(sum.title(), request), input, asked || !input.isEmpty());
        return ResponseEntity.status(shown.good() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT)
                .body(pages.render("sum.jte", shown.view()));
    }

    private static UnitSystem units(String word) {
        return word.equals(UnitSystem.US.word()) ? UnitSystem.US : UnitSystem.METRIC;
    }
}
