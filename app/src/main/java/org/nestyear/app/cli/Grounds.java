package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.BasisWords;
import org.nestyear.core.source.Parameter;

/** The end of a small answer: how well it is known, by what methods, from what sources. */
final class Grounds {
    private Grounds() {}

    /** The value of a number that was read for the answer. */
    static double value(List<Parameter> basis, String id) {
        return basis.stream()
                .filter(parameter -> parameter.id().equals(id))
                .mapToDouble(Parameter::value)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + id + "\" was not read for this answer"));
    }

    /**
     * The lines, each a paragraph.
     *
     * @param known sentences on how well the answer is known
     * @param methods the published methods behind it
     * @param basis the numbers read for it
     */
    static List<String> lines(String known, List<String> methods, List<Parameter> basis) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("How well this is known: " + known + (basis.isEmpty() ? "" : " " + BasisWords.weakness(basis)));
        methods.forEach(method -> lines.add(method + "."));
        basis.forEach(parameter -> lines.add(BasisWords.line(parameter)));
        return lines;
    }
}
