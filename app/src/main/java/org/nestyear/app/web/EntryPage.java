package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.EntryForm;
import org.nestyear.app.book.SaveAnswer;
import org.nestyear.app.book.ShownEntry;

/** Puts an entry, or the entries of a table, on a page. */
final class EntryPage {
    private static final int ROWS = 50;
    private static final int COLUMNS = 6;
    private static final int LONGEST_CELL = 60;

    private final EntryDesk desk;

    EntryPage(EntryDesk desk) {
        this.desk = desk;
    }

    /**
     * An entry as it stands in the form.
     *
     * @param revision the revision it will be written over, 0 for a new entry
     * @param act id of what sending the form does
     */
    record Sent(String id, int revision, String act, Map<String, String> values) {}

    /** What stands in the form of a new entry: what the address says, else today, the site used last, this zone. */
    Map<String, String> beginning(EntryForm form, Map<String, String> query, String usedLast) {
        List<EntryDesk.Choice> sites = desk.choices("site", 1);
        String site = sites.size() == 1 ? sites.get(0).value() : usedLast;
        Map<String, String> values = new LinkedHashMap<>();
        String zone = ZoneId.systemDefault().getId();
        for (EntryForm.Field field : form.fields()) {
            String given = query.getOrDefault(field.name(), "");
            if (!given.isEmpty()) {
                values.put(field.name(), given);
            } else if (field.name().equals("on_date")) {
                values.put("on_date", desk.today(zone).toString());
            } else if (field.name().equals("site") && !site.isEmpty()) {
                values.put("site", site);
            } else if (field.name().equals("zone")) {
                values.put("zone", zone);
            }
        }
        return values;
    }

    /** The name among values, for a sentence; empty where there is none. */
    static String called(Map<String, String> values) {
        String name = values.getOrDefault("name", "");
        return name.isEmpty() ? "" : ": " + name;
    }

    EntryView view(EntryForm form, Sent sent, SaveAnswer answer, String saved, HttpServletRequest request) {
        Map<String, String> problems = new LinkedHashMap<>();
        List<String> problem = new ArrayList<>();
        answer.faults().forEach(fault -> {
            if (fault.field().isEmpty()) {
                problem.add(fault.sentence());
            } else {
                problems.put(fault.field(), fault.sentence());
            }
        });
        Map<String, String> now = new LinkedHashMap<>();
        answer.changed().forEach(changed -> {
            problem.add(changed.sentence() + " What you typed is kept below; what stands there now is shown beside it."
                    + " Save again to write yours over it.");
            now.putAll(differing(form, sent.values(), changed.now().values()));
        });
        if (!problems.isEmpty()) {
            problem.add("Nothing was written yet: see the marked "
                    + (problems.size() == 1 ? "field" : problems.size() + " fields") + " below.");
        }
        Optional<ShownEntry> stands = sent.revision() == 0 ? Optional.empty() : desk.find(form.name(), sent.id());
        String title = sent.revision() == 0 ? form.title() + ": a new entry" : form.title() + called(sent.values());
        return new EntryView(
                Heads.of(title, request),
                Person.of(request),
                title,
                form.what(),
                form.name(),
                form.title(),
                sent.id(),
                sent.revision(),
                sent.act(),
                stands.map(entry -> "Written by " + entry.who() + ", " + PageWords.stamp(entry.changedAt())
                                + (entry.revision() > 1 ? ", version " + entry.revision() : "") + ".")
                        .orElse(""),
                stands.map(ShownEntry::removed).orElse(false),
                desk.findAct(saved)
                        .filter(act -> !act.takenBack())
                        .map(act -> act.id())
                        .orElse(""),
                notice(saved),
                problem,
                Cautions.of(form.name()),
                new RecordFields(desk).fields(form, EntryController.PREFIX, sent.values(), problems, now),
                stands.map(entry -> history(form, entry)).orElse(List.of()),
                stands.isEmpty() ? List.of() : next(form, sent.values()));
    }

    private String notice(String saved) {
        if (saved.equals("nothing")) {
            return "Nothing had changed.";
        }
        return desk.findAct(saved)
                .map(act -> act.takenBack() ? "This was taken back." : "Saved.")
                .orElse("");
    }

    /** What stands in the records where it is not what was typed, by column. */
    static Map<String, String> differing(EntryForm form, Map<String, String> typed, Map<String, String> now) {
        Map<String, String> differing = new LinkedHashMap<>();
        for (EntryForm.Field field : form.fields()) {
            String stands = now.getOrDefault(field.name(), "");
            if (!stands.equals(typed.getOrDefault(field.name(), "").strip())) {
                differing.put(field.name(), stands.isEmpty() ? "nothing" : stands);
            }
        }
        return differing;
    }

    private static List<EntryView.Replaced> history(EntryForm form, ShownEntry entry) {
        return entry.history().stream()
                .map(old -> new EntryView.Replaced(
                        PageWords.stamp(old.at()),
                        old.who(),
                        form.fields().stream()
                                .filter(field -> field.name().equals(old.column()))
                                .map(EntryForm.Field::label)
                                .findFirst()
                                .orElse(old.column()),
                        old.was().isEmpty() ? "nothing" : old.was(),
                        old.became().isEmpty() ? "nothing" : old.became(),
                        old.takenBack()))
                .toList();
    }

    // What can be written down below an entry that has a name: a house below its site, a nest below its house.
    private List<EntryView.Next> next(EntryForm form, Map<String, String> values) {
        List<EntryView.Next> next = new ArrayList<>();
        String own = values.getOrDefault("name", "");
        Optional<EntryForm.Field> above = form.parent();
        String full = above.isPresent() && !form.name().equals("batch")
                ? values.getOrDefault(above.get().name(), "") + " / " + own
                : own;
        if (own.isEmpty()) {
            return next;
        }
        if (form.name().equals("site")) {
            next.add(new EntryView.Next("/records/visit?site=" + encode(own), "Quick visit"));
        }
        for (EntryForm other : EntryDesk.forms()) {
            other.parent()
                    .filter(field -> field.linkTo().equals(form.name()))
                    .ifPresent(field -> next.add(new EntryView.Next(
                            "/records/new/" + other.name() + "?" + field.name() + "=" + encode(full),
                            "Write under " + other.title())));
        }
        return next;
    }

    EntryView.Table table(EntryForm form, String in, String year, int page, String notice, HttpServletRequest request) {
        int wanted = year.matches("\\d{4}") ? Integer.parseInt(year) : 0;
        EntryDesk.Found found = desk.list(form.name(), in, wanted, ROWS, (page - 1) * ROWS);
        List<EntryForm.Field> columns = form.fields().stream().limit(COLUMNS).toList();
        List<EntryView.Row> rows = found.entries().stream()
                .map(entry -> new EntryView.Row(
                        EntryController.ENTRY + form.name() + "/" + entry.id(),
                        columns.stream().map(field -> cell(entry, field)).toList(),
                        entry.who()))
                .toList();
        String query = "/records/table/" + form.name() + "?in=" + encode(in) + "&year=" + (wanted == 0 ? "" : year);
        List<FieldView.Option> parents = form.parent()
                .map(field ->
                        new RecordFields(desk).field(field, "", in, "", "").options())
                .orElse(List.of());
        return new EntryView.Table(
                Heads.of(form.title(), request),
                form.name(),
                form.title(),
                form.what(),
                notice,
                span(found.all(), rows.size(), page),
                form.parent().map(EntryForm.Field::label).orElse(""),
                in,
                parents,
                wanted == 0 ? "" : year,
                form.hasYear(),
                columns.stream().map(EntryForm.Field::label).toList(),
                rows,
                page == 1 ? "" : query + "&page=" + (page - 1),
                page * ROWS >= found.all() ? "" : query + "&page=" + (page + 1));
    }

    private static String cell(ShownEntry entry, EntryForm.Field field) {
        String value = entry.values().getOrDefault(field.name(), "");
        return value.length() > LONGEST_CELL ? value.substring(0, LONGEST_CELL) + " …" : value;
    }

    private static String span(int all, int shown, int page) {
        if (all == 0) {
            return "No entry.";
        }
        int first = (page - 1) * ROWS + 1;
        return all <= ROWS && page == 1
                ? all + (all == 1 ? " entry." : " entries.")
                : "Entries " + first + " to " + (first + shown - 1) + " of " + all + ", newest first.";
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
