package org.nestyear.checks.winter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.nestyear.checks.release.Draft;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.season.Wintered;

/** What a plan says of a store, against the limits of Bosch &amp; Kemp 2003, Environ. Entomol. 32:711 (abstract). */
@Tag("reference")
class StorageLimitsTest {
    private static List<String> fridgeFindings(Draft draft) {
        return draft.plan().findings().stream()
                .map(Finding::id)
                .filter(id -> id.startsWith("fridge"))
                .toList();
    }

    /**
     * 0 to 4 °C for 150 to 270 d is good; 7 °C is good for up to 150 d; 10 °C and more is unsuitable even for short
     * (cases C06 to C08); 8 °C cost a third of the females of O. bicornis (Sci. Rep. 2025, case C39). Days are those by
     * the first of February; a release is at most three months later.
     */
    @ParameterizedTest
    @CsvSource({
        "150, 0, none",
        "120, 4, none",
        "170, 2, none",
        "70, 7, none",
        "150, 7, fridge-too-warm-too-long",
        "180, 5, fridge-too-warm-too-long",
        "60, 8, fridge-too-warm",
        "60, 9.5, fridge-too-warm",
        "60, 10, fridge-far-too-warm",
        "90, 13, fridge-far-too-warm",
        "150, -4, fridge-colder-than-tested",
        "275, 3, fridge-too-long"
    })
    void storesAreHeldAgainstThePublishedLimits(double days, double celsius, String expected) {
        Draft draft = Draft.washington(9);
        draft.chillDays = days;
        draft.chillC = celsius;
        assertThat(fridgeFindings(draft)).isEqualTo(expected.equals("none") ? List.of() : List.of(expected));
    }

    /** Limits of the fridge are never applied to bees that wintered at outdoor warmth. */
    @ParameterizedTest
    @EnumSource(
            value = Wintered.class,
            names = {"SHED", "OUTDOORS", "UNOPENED"})
    void otherStockIsNotJudgedByThem(Wintered wintered) {
        Draft draft = Draft.washington(9);
        draft.wintered = wintered;
        assertThat(fridgeFindings(draft)).isEmpty();
    }
}
