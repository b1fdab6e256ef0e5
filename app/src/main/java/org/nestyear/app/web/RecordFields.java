package org.nestyear.app.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.EntryDesk.Choice;
import org.nestyear.app.book.EntryForm;
import org.nestyear.app.book.EntryForm.Field;

/** Makes the fields of a record form; what can be linked to is read once for one page. */
final class RecordFields {
    /** More entries than this are typed by name instead of chosen from a list. */
    private static final int MOST_OPTIONS = 300;

    private final EntryDesk desk;
    private final Map<String, List<Choice>> choices = new HashMap<>();

    RecordFields(EntryDesk desk) {
        this.desk = desk;
    }

    /**
     * The fields of a form.
     *
     * @param prefix put before the names of the columns
     * @param values what stands in them, by column
     * @param problems what is wrong, by column
     * @param now what others wrote there meanwhile, by column
     */
    List<FieldView> fields(
            EntryForm form,
            String prefix,
            Map<String, String> values,
            Map<String, String> problems,
            Map<String, String> now) {
        List<FieldView> fields = new ArrayList<>();
        for (Field field : form.fields()) {
            fields.add(field(
                    field,
                    prefix,
                    values.getOrDefault(field.name(), ""),
                    problems.getOrDefault(field.name(), ""),
                    now.getOrDefault(field.name(), "")));
        }
        return fields;
    }

    FieldView field(Field field, String prefix, String value, String problem, String now) {
        List<FieldView.Option> options = options(field, value);
        boolean chosen = !options.isEmpty();
        return new FieldView(
                prefix + field.name(),
                prefix + field.name(),
                chosen ? "choice" : kind(field.kind()),
                field.label(),
                field.required(),
                value,
                help(field, chosen),
                problem,
                now,
                options);
    }

    private static String help(Field field, boolean chosen) {
        return switch (field.kind()) {
            case WHOLE, NUMBER -> "Expected " + field.expected() + ".";
            case LINK -> chosen ? "" : "Its full name, such as Site / House.";
            default -> "";
        };
    }

    private static String kind(EntryForm.Kind kind) {
        return switch (kind) {
            case LONG_TEXT -> "long";
            case DATE -> "date";
            case MOMENT -> "moment";
            case WHOLE -> "whole";
            case NUMBER -> "number";
            default -> "text";
        };
    }

    private List<FieldView.Option> options(Field field, String value) {
        List<Choice> all = switch (field.kind()) {
            case WORD ->
                field.words().stream()
                        .map(word -> new Choice(word, word.replace('_', ' ')))
                        .toList();
            case SPECIES -> EntryDesk.bees();
            case LINK -> choices.computeIfAbsent(field.linkTo(), table -> desk.choices(table, MOST_OPTIONS));
            default -> List.of();
        };
        List<FieldView.Option> options = new ArrayList<>();
        boolean known = value.isEmpty();
        for (Choice choice : all) {
            boolean chosen = choice.value().equals(value);
            known |= chosen;
            options.add(new FieldView.Option(choice.value(), choice.words(), chosen));
        }
        if (!known && !options.isEmpty()) {
            // What was typed stays, whatever it is.
            options.add(new FieldView.Option(value, value, true));
        }
        return options;
    }
}
