package org.nestyear.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.SmallSums;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.web.SumField.Kind;

/** Asks a small calculator and puts its form and its answer on a page. */
final class SumsPage {
    /** Field that asks for the worked example in the form. */
    static final String EXAMPLE = "example";

    private static final String FOLDER = "/sums/";
    /** Files longer than this are not written back into the page. */
    private static final int LONGEST_KEPT = 100_000;

    private static final int LINES_SHOWN = 12;

    private final SmallSums sums;

    SumsPage(SmallSums sums) {
        this.sums = sums;
    }

    static SumsView.Index index(PageHead head, UnitSystem units) {
        String query = units == UnitSystem.US ? "?units=us" : "";
        List<SumsView.Task> tasks = SumBook.groups().stream()
                .map(group -> new SumsView.Task(
                        group.title(),
                        group.about(),
                        group.sums().stream()
                                .map(sum -> new SumsView.Link(FOLDER + sum.slug() + query, sum.title(), sum.question()))
                                .toList()))
                .toList();
        return new SumsView.Index(head, units.word(), other(units).word(), tasks);
    }

    /**
     * The page of a calculator.
     *
     * @param asked false while the form has not been sent: then the worked example is answered
     */
    Shown page(PageHead head, SumInput input, boolean asked) {
        SumInput answered = asked ? input : SumInput.example(input.sum(), input.units());
        SumAsking.Outcome outcome = new SumAsking(sums).ask(answered);
        String example = asked ? "" : example(input);
        return new Shown(view(head, input, example, outcome), outcome.problem() == null);
    }

    /**
     * A page that is ready.
     *
     * @param good whether the question was answered
     */
    record Shown(SumsView view, boolean good) {}

    private SumsView view(PageHead head, SumInput input, String example, SumAsking.Outcome outcome) {
        SumProblem problem = outcome.problem();
        Sum sum = input.sum();
        UnitSystem other = other(input.units());
        List<String> ofForm = problem == null || problem.field() != null ? List.of() : problem.lines();
        return new SumsView(
                head,
                sum.title(),
                sum.question(),
                FOLDER + sum.slug(),
                sum.readsTable(),
                input.units().word(),
                other.word(),
                address(input, other, input::kept),
                fields(input, problem),
                ofForm,
                example,
                outcome.answer());
    }

    private List<SumsView.Field> fields(SumInput input, @Nullable SumProblem problem) {
        Map<String, String> help = new HashMap<>();
        sums.wordsOf(input.sum().command().get(0)).forEach(word -> help.put(word.name(), word.description()));
        List<SumsView.Field> fields = new ArrayList<>();
        for (SumField field : input.sum().fields()) {
            String value = input.text(field);
            SumField.InUnits words = field.in(input.units());
            String wrong = problem != null && field.equals(problem.field()) ? String.join(" ", problem.lines()) : "";
            fields.add(new SumsView.Field(
                    field.name(),
                    field.kind().name().toLowerCase(Locale.ROOT),
                    words.label(),
                    field.help().isEmpty() ? told(field, words.label(), help) : field.help(),
                    field.required(),
                    value.length() > LONGEST_KEPT ? "" : value,
                    input.ticked(field),
                    field.choices().get().stream()
                            .filter(choice -> choice.value().equals(words.example()))
                            .map(SumField.Choice::words)
                            .findFirst()
                            .orElse(excerpt(words.example())),
                    wrong,
                    field.choices().get().stream()
                            .map(c -> new SumsView.Option(
                                    c.value(), c.words(), c.value().equals(value)))
                            .toList()));
        }
        return fields;
    }

    // What the command says of its option, unless that speaks of other options or says what the label says.
    private static String told(SumField field, String label, Map<String, String> help) {
        String description = help.getOrDefault(field.word(), "");
        String name = label.replaceFirst(",.*", "").toLowerCase(Locale.ROOT);
        boolean typed = field.kind() == Kind.TEXT || field.kind() == Kind.SEVERAL;
        boolean says = description.toLowerCase(Locale.ROOT).startsWith(name);
        return !typed || says || description.contains("--") || description.contains("in quotes") ? "" : description;
    }

    // The first lines of a long table.
    private static String excerpt(String example) {
        List<String> lines = example.lines().toList();
        return lines.size() <= LINES_SHOWN
                ? example
                : String.join("\n", lines.subList(0, LINES_SHOWN / 2)) + "\n… and " + (lines.size() - LINES_SHOWN / 2)
                        + " more lines";
    }

    private static String example(SumInput input) {
        SumInput example = SumInput.example(input.sum(), input.units());
        String units = input.units() == UnitSystem.US ? "&units=us" : "";
        // A table is too long for an address.
        return input.sum().readsTable()
                ? FOLDER + input.sum().slug() + "?" + EXAMPLE + "=yes" + units
                : address(example, input.units(), example::text);
    }

    private static String address(SumInput input, UnitSystem units, Function<SumField, String> written) {
        List<String> query = new ArrayList<>();
        if (units == UnitSystem.US) {
            query.add("units=" + units.word());
        }
        for (SumField field : input.sum().fields()) {
            String text = written.apply(field);
            if (!text.isEmpty() && field.kind() != Kind.TABLE) {
                query.add(field.name() + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8));
            }
        }
        return FOLDER + input.sum().slug() + (query.isEmpty() ? "" : "?" + String.join("&", query));
    }

    private static UnitSystem other(UnitSystem units) {
        return units == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    }
}
