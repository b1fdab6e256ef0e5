package org.nestyear.app.web;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.SourceBook;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.Source;

/** Puts the whole catalogue on a page. */
final class SourcesPage {
    private SourcesPage() {}

    static SourcesView view(PageHead head) {
        List<SourceBook.Table> tables = SourceBook.tables();
        List<Parameter> rows = tables.stream().flatMap(t -> t.rows().stream()).toList();
        Map<Basis, Integer> kinds = new EnumMap<>(Basis.class);
        rows.forEach(row -> kinds.merge(row.basis(), 1, Integer::sum));
        return new SourcesView(
                head,
                rows.size(),
                BasisWords.counts(kinds),
                tables.stream()
                        .map(table -> new SourcesView.Table(
                                table.name(),
                                table.title(),
                                table.rows().stream()
                                        .map(row -> PageWords.basis(row).at(SourceBook.anchor(table.name(), row.id())))
                                        .toList()))
                        .toList(),
                SourceBook.words().stream().map(SourcesPage::words).toList(),
                SourceBook.sources().stream()
                        .map(source -> publication(source, rows))
                        .toList());
    }

    private static SourcesView.Words words(SourceBook.Words table) {
        List<String> head =
                table.head().stream().map(name -> name.replace('_', ' ')).toList();
        return new SourcesView.Words(table.name(), table.title(), head, table.rows());
    }

    private static SourcesView.Publication publication(Source source, List<Parameter> rows) {
        long uses = rows.stream()
                .filter(row -> row.source().key().equals(source.key()))
                .count();
        return new SourcesView.Publication(
                source.citation(),
                source.doi().isEmpty() ? "" : "https://doi.org/" + source.doi(),
                uses == 1 ? "1 number" : uses + " numbers");
    }
}
