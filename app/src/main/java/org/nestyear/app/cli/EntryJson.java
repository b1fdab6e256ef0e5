package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.ShownEntry;
import org.nestyear.app.book.TableWords;
import org.nestyear.app.service.Version;

/** Answers about records as JSON of the schemas {@code tables}, {@code entry}, {@code entries} and {@code done}. */
final class EntryJson {
    private EntryJson() {}

    static String tables(List<TableWords> tables) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.objects("tables", tables, EntryJson::table);
        });
    }

    static String table(TableWords table) {
        return tables(List.of(table));
    }

    private static void table(JsonText json, TableWords table) {
        json.text("name", table.name());
        json.text("title", table.title());
        json.text("what", table.what());
        json.objects("columns", table.columns(), (to, column) -> {
            to.text("name", column.name());
            to.text("label", column.label());
            to.flag("required", column.required());
            to.text("expected", column.expected());
        });
    }

    static String written(ShownEntry entry) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.object("entry", to -> entry(to, entry));
            json.objects("history", entry.history(), (to, old) -> {
                to.text("at", old.at().toString());
                to.text("who", old.who());
                to.text("column", old.column());
                to.text("was", old.was().isEmpty() ? null : old.was());
                to.text("became", old.became().isEmpty() ? null : old.became());
                to.flag("taken_back", old.takenBack());
            });
        });
    }

    static String entries(List<ShownEntry> entries, int all) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.whole("all", all);
            json.objects("entries", entries, EntryJson::entry);
        });
    }

    private static void entry(JsonText json, ShownEntry entry) {
        json.text("table", entry.table());
        json.text("id", entry.id());
        json.whole("revision", entry.revision());
        json.text("who", entry.who());
        json.text("changed_at", entry.changedAt().toString());
        json.flag("taken_out", entry.removed());
        json.object("values", to -> entry.values().forEach(to::text));
    }

    static String done(List<DoneAct> acts) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.objects("acts", acts, (to, act) -> {
                to.text("id", act.id());
                to.text("at", act.at().toString());
                to.text("who", act.who());
                to.text("what", act.words());
                to.whole("entries", act.entries());
                to.flag("taken_back", act.takenBack());
            });
        });
    }
}
