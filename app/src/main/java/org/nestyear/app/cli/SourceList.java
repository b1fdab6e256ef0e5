package org.nestyear.app.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.service.BasisWords;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;

/** The sources of a long answer, each once, with how many numbers come from it and how they are known. */
final class SourceList {
    private static final int INDENT = 4;

    private SourceList() {}

    static void write(Page page, List<Parameter> basis) {
        page.heading("SOURCES");
        Map<String, Map<Basis, Integer>> byCitation = new LinkedHashMap<>();
        for (Parameter parameter : basis) {
            String doi = parameter.source().doi().isEmpty()
                    ? ""
                    : " doi:" + parameter.source().doi();
            byCitation
                    .computeIfAbsent(parameter.source().citation() + doi, key -> new LinkedHashMap<>())
                    .merge(parameter.basis(), 1, Integer::sum);
        }
        byCitation.forEach(
                (citation, kinds) -> page.hanging(0, INDENT, citation + " — " + BasisWords.counts(kinds) + "."));
    }
}
