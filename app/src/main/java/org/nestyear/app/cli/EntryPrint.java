package org.nestyear.app.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.ShownEntry;
import org.nestyear.app.book.TableWords;

/** Answers about records as text. */
final class EntryPrint {
    private static final int ID_SHOWN = 8;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private EntryPrint() {}

    static String tables() {
        Page page = new Page();
        page.paragraph(0, "The tables of the records. See what one holds with nestyear tables TABLE.");
        page.blank();
        for (TableWords table : TableWords.all()) {
            page.hanging(0, 15, String.format(Locale.ROOT, "%-14s %s", table.name(), table.what()));
        }
        return page.toString();
    }

    static String table(TableWords table) {
        Page page = new Page();
        page.paragraph(0, table.title() + ": " + table.what());
        page.blank();
        table.columns()
                .forEach(column -> page.hanging(
                        0,
                        4,
                        column.name() + (column.required() ? " (needed)" : "") + ": " + column.label() + "; "
                                + column.expected() + "."));
        return page.toString();
    }

    static String written(String did, ShownEntry entry) {
        Page page = new Page();
        page.paragraph(0, did + " under " + entry.title() + ", " + shortId(entry.id()) + ": " + values(entry) + ".");
        page.paragraph(0, "Take it back with nestyear undo.");
        return page.toString();
    }

    static String one(ShownEntry entry) {
        Page page = new Page();
        page.paragraph(
                0,
                entry.title() + ", " + entry.id() + (entry.removed() ? ", taken out" : "") + ", last written by "
                        + entry.who() + " " + time(entry.changedAt()) + ":");
        entry.values().forEach((column, value) -> page.hanging(2, 6, column + ": " + value));
        if (!entry.history().isEmpty()) {
            page.heading("REPLACED VALUES");
            entry.history()
                    .forEach(old -> page.hanging(
                            2,
                            6,
                            time(old.at()) + " " + old.who() + ": " + old.column() + " was "
                                    + (old.was().isEmpty() ? "empty" : old.was()) + ", became "
                                    + (old.became().isEmpty() ? "empty" : old.became())
                                    + (old.takenBack() ? " (taken back)" : "")));
        }
        return page.toString();
    }

    static String entries(String table, List<ShownEntry> entries, int all) {
        Page page = new Page();
        if (entries.isEmpty()) {
            page.paragraph(0, "There is no such entry yet. Write one down with nestyear enter " + table + ".");
            return page.toString();
        }
        page.paragraph(
                0,
                (all == entries.size()
                                ? all + (all == 1 ? " entry" : " entries")
                                : entries.size() + " of " + all + " entries")
                        + " under " + entries.get(0).title() + ", the newest first.");
        page.blank();
        entries.forEach(
                entry -> page.hanging(0, 4, shortId(entry.id()) + "  " + values(entry) + " (" + entry.who() + ")"));
        return page.toString();
    }

    static String done(List<DoneAct> acts) {
        Page page = new Page();
        if (acts.isEmpty()) {
            page.paragraph(0, "Nothing has been written down yet.");
        }
        acts.forEach(act -> page.hanging(
                0,
                4,
                shortId(act.id()) + "  " + time(act.at()) + "  " + act.who() + " " + act.words() + " ("
                        + act.entries() + (act.entries() == 1 ? " entry" : " entries") + ")"
                        + (act.takenBack() ? ", taken back" : "")));
        return page.toString();
    }

    private static String values(ShownEntry entry) {
        return entry.values().entrySet().stream().map(EntryPrint::value).collect(Collectors.joining(", "));
    }

    private static String value(Map.Entry<String, String> value) {
        return value.getKey() + " " + value.getValue().replaceAll("\\s+", " ");
    }

    private static String shortId(String id) {
        return id.substring(0, ID_SHOWN);
    }

    private static String time(Instant at) {
        return TIME.format(at.atZone(ZoneId.systemDefault()));
    }
}
