package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.RinseAnswer;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.hygiene.Mixture;
import org.nestyear.core.source.Parameter;

/** An answer about a rinse in words. */
final class RinseText {
    static final List<String> METHODS = List.of(
            "Strength: label % × 10,000 × bleach / (bleach + water), as the World Health Organization (2014) reckons it");

    private RinseText() {}

    /** The lines of the answer. */
    static String of(RinseAnswer answer, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        lines.add(answer.verdict());
        Mixture mixture = answer.question().mixture();
        if (answer.question().targetPpm() == null || answer.allowed()) {
            lines.add(Measures.volume(mixture.bleachMl(), units) + " of bleach of "
                    + Measures.trimmed(mixture.labelPercent(), 2) + " % in " + Measures.volume(mixture.waterMl(), units)
                    + " of water " + (answer.question().targetPpm() == null ? "is " : "gives ")
                    + strength(mixture.ppm())
                    + " of available chlorine.");
        }
        if (!answer.steps().isEmpty()) {
            lines.add("");
            lines.add("How:");
            answer.steps().forEach(step -> lines.add("- " + step));
        }
        lines.add("");
        lines.add("Caution:");
        answer.cautions().forEach(caution -> lines.add("- " + caution));
        lines.add("");
        lines.add("Strengths in print, of which none is \"the\" strength:");
        answer.published().forEach(row -> lines.add("- " + published(row)));
        lines.add("");
        lines.add(
                "How well this is known: the arithmetic is sure. What a strength does to chalkbrood nobody has published,"
                        + " so no share of spores killed is claimed; in one study clean boards did not lower disease in the field"
                        + " (James 2005, J. Econ. Entomol. 98:1094). Taking out ill cells does more. "
                        + BasisWords.weakness(answer.basis()));
        METHODS.forEach(method -> lines.add(method + "."));
        return String.join("\n", lines) + "\n";
    }

    private static String published(Parameter row) {
        String range = row.low() == row.high()
                ? strength(row.value())
                : Wording.number(row.low(), 0) + " to " + strength(row.high());
        return range + ": " + row.note() + " (" + BasisWords.words(row.basis()) + ": "
                + row.source().citation() + "; " + row.locator() + ").";
    }

    private static String strength(double ppm) {
        return Wording.number(ppm, 0) + " ppm";
    }
}
