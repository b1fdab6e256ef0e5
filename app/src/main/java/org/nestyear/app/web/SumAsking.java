package org.nestyear.app.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SmallSums;
import org.nestyear.app.service.SourceBook;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.app.web.SumAnswer.Fact;
import org.nestyear.app.web.SumAnswer.Part;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.Parameter;

/** Asks the command behind a small calculator and takes its answer apart for the page. */
final class SumAsking {
    private static final String TABLE = "table.csv";

    private final SmallSums sums;

    SumAsking(SmallSums sums) {
        this.sums = sums;
    }

    /**
     * What came of it.
     *
     * @param answer the answer, or null
     * @param problem why there is none, or null
     */
    record Outcome(@Nullable SumAnswer answer, @Nullable SumProblem problem) {}

    /** Asks the command, unless a field that it needs is empty. */
    Outcome ask(SumInput input) {
        Optional<SumField> missing = input.missing();
        if (missing.isPresent()) {
            return new Outcome(null, SumProblem.missing(missing.get(), input.units()));
        }
        Path folder = null;
        try {
            String table = input.table().orElse("");
            folder = table.isEmpty() ? null : Files.createTempDirectory("nestyear-sum");
            Path file = folder == null ? Path.of(TABLE) : folder.resolve(TABLE);
            if (folder != null) {
                Files.writeString(file, table);
            }
            return ask(input, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            remove(folder);
        }
    }

    private Outcome ask(SumInput input, Path table) {
        try {
            SmallSums.Told told = sums.ask(input.words(table));
            JsonFacts json = JsonFacts.of(told.json());
            List<Parameter> basis = json.basis();
            Set<String> tabled = basis.stream().map(Parameter::id).collect(Collectors.toSet());
            List<String> lines = told.lines().stream()
                    .map(line -> SumProblem.labelled(line, input))
                    .toList();
            List<Fact> facts = facts(input, json);
            Set<String> labels = facts.stream().map(Fact::label).collect(Collectors.toSet());
            SumText text = SumText.of(lines, input.sum().leads(), tabled, labels);
            SumAnswer answer = new SumAnswer(
                    text.lead(),
                    facts,
                    text.why(),
                    text.known(),
                    basis.stream().map(SumAsking::line).toList(),
                    commandLine(input));
            return new Outcome(answer, null);
        } catch (Refusal refusal) {
            return new Outcome(null, SumProblem.of(refusal, input, table.toString()));
        }
    }

    private static void remove(@Nullable Path folder) {
        if (folder != null) {
            try {
                Files.deleteIfExists(folder.resolve(TABLE));
                Files.deleteIfExists(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static BasisLine line(Parameter row) {
        return PageWords.basis(row)
                .linked(SourceBook.find(row).map(place -> "/sources#" + place).orElse(""));
    }

    private static List<Fact> facts(SumInput input, JsonFacts json) {
        List<Fact> facts = new ArrayList<>();
        for (SumFact fact : input.sum().facts()) {
            List<Part> parts = new ArrayList<>();
            for (String path : fact.paths()) {
                String raw = json.find(path);
                if (raw != null) {
                    parts.add(new Part(raw, words(fact, raw, input.units())));
                }
            }
            if (!parts.isEmpty()) {
                facts.add(new Fact(fact.label(), parts));
            }
        }
        return facts;
    }

    private static String words(SumFact fact, String raw, UnitSystem units) {
        Wording wording = new Wording(units, 0);
        if (fact.unit() != null) {
            String number = wording.quantity(new Quantity(Double.parseDouble(raw), fact.unit(), fact.decimals()));
            boolean close = fact.suffix().isEmpty() || fact.suffix().equals("°");
            return number + (close ? "" : " ") + fact.suffix();
        }
        return raw.matches("\\d{4}-\\d{2}-\\d{2}") ? wording.dateWithYear(LocalDate.parse(raw)) : raw;
    }

    private static String commandLine(SumInput input) {
        StringBuilder line = new StringBuilder("./nestyear");
        for (String word : input.words(Path.of("FILE"))) {
            int equals = word.startsWith("--") ? word.indexOf('=') : -1;
            String value = word.substring(equals + 1);
            line.append(' ').append(equals < 0 ? "" : word.substring(0, equals) + " ");
            line.append(value.matches("[A-Za-z0-9_.,/+:%-]+") ? value : "\"" + value.replace("\"", "\\\"") + "\"");
        }
        return line.toString();
    }
}
