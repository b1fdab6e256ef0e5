package org.nestyear.app.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nestyear.app.book.AccountArchive;
import org.nestyear.app.book.DoneAct;
import org.nestyear.app.book.ImportPlan;
import org.nestyear.app.service.Version;

/** Answers of import and export as text, and as JSON of the schemas {@code import} and {@code export}. */
final class ExchangePrint {
    private static final int LINES_SHOWN = 200;

    private ExchangePrint() {}

    static String imported(ImportPlan plan, Optional<DoneAct> act, boolean dryRun) {
        Page page = new Page();
        int added = plan.count(ImportPlan.Kind.ADDED);
        int corrected = plan.count(ImportPlan.Kind.CORRECTED);
        String counts =
                added + " new, " + corrected + " corrected, " + plan.count(ImportPlan.Kind.SAME) + " already there";
        if (dryRun) {
            page.paragraph(0, "Nothing was written. Reading " + plan.name() + " would make: " + counts + ".");
        } else if (act.isPresent()) {
            page.paragraph(0, "Read " + plan.name() + ": " + counts + ". Take it all back with nestyear undo.");
        } else {
            page.paragraph(0, plan.name() + " holds nothing new: " + counts + ".");
        }
        if (dryRun) {
            page.blank();
            plan.lines().stream()
                    .limit(LINES_SHOWN)
                    .forEach(line -> page.hanging(
                            0, 4, "line " + line.line() + ": " + line.kind().word() + told(line)));
            if (plan.lines().size() > LINES_SHOWN) {
                page.paragraph(
                        0, "and " + (plan.lines().size() - LINES_SHOWN) + " lines more; --json tells all of them.");
            }
        }
        return page.toString();
    }

    private static String told(ImportPlan.Line line) {
        return line.told().isEmpty()
                ? ""
                : ": "
                        + line.told().entrySet().stream()
                                .map(ExchangePrint::value)
                                .collect(Collectors.joining(", "));
    }

    private static String value(Map.Entry<String, String> value) {
        return value.getKey() + " " + value.getValue().replaceAll("\\s+", " ");
    }

    static String importJson(ImportPlan plan, Optional<DoneAct> act, boolean dryRun) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("file", plan.name());
            json.flag("dry_run", dryRun);
            json.whole("new", plan.count(ImportPlan.Kind.ADDED));
            json.whole("corrected", plan.count(ImportPlan.Kind.CORRECTED));
            json.whole("already_there", plan.count(ImportPlan.Kind.SAME));
            json.text("act", act.map(DoneAct::id).orElse(null));
            json.objects("lines", plan.lines(), (to, line) -> {
                to.whole("line", line.line());
                to.text("what", line.kind().word());
                to.object("values", values -> line.told().forEach(values::text));
            });
        });
    }

    static String archiveRead(Path file, AccountArchive.Contents contents, boolean written) {
        Page page = new Page();
        if (written) {
            page.paragraph(
                    0,
                    "Read " + file + ": " + contents.all() + " rows, checked one by one; " + contents.added()
                            + " were new here.");
        } else {
            page.paragraph(
                    0,
                    "Nothing was written. " + file + " is whole and holds " + contents.all() + " rows; "
                            + contents.added() + " would be new here.");
        }
        return page.toString();
    }

    static String archiveJson(Path file, AccountArchive.Contents contents, boolean written) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("file", file.toString());
            json.flag("dry_run", !written);
            json.whole("rows", contents.all());
            json.whole("new", contents.added());
        });
    }

    static String archiveWritten(Path file, int rows) {
        Page page = new Page();
        page.paragraph(0, "Wrote the whole account, " + rows + " rows with their history, to " + file + ".");
        page.paragraph(
                0,
                "It holds places and names of people in full. Keep it as you keep letters; nestyear import reads it back.");
        return page.toString();
    }

    static String tableWritten(Path file, String table, int rows) {
        Page page = new Page();
        page.paragraph(
                0,
                "Wrote " + rows + (rows == 1 ? " entry" : " entries") + " of the table " + table + " to " + file
                        + ". Change it and read it back with nestyear import; --dry-run first says what would change.");
        return page.toString();
    }

    static String darwinCoreWritten(Path file, int seen, String places) {
        return written(
                "Wrote " + seen + " occurrences with their measurements to " + file
                        + ", a Darwin Core Archive. Kept stock is marked as managed.",
                places);
    }

    static String geoJsonWritten(Path file, int sites, String places) {
        return written(
                "Wrote " + sites + (sites == 1 ? " site" : " sites") + " and their plants to " + file + ".", places);
    }

    private static String written(String what, String places) {
        Page page = new Page();
        page.paragraph(0, what);
        page.paragraph(
                0,
                places.equals("exact")
                        ? "Places, names and people stand in it as you told them: think before you pass it on."
                        : "Places are blurred to cells of about " + places.replace("km", " km")
                                + ", names and people are left out; --places exact writes them in full.");
        return page.toString();
    }

    static String calendarWritten(Path file, int jobs) {
        Page page = new Page();
        page.paragraph(
                0,
                "Wrote " + jobs + (jobs == 1 ? " job" : " jobs") + " to " + file
                        + ", for any calendar. Reading a newer one in moves the days, since a job keeps its mark.");
        return page.toString();
    }

    static String exportJson(Path file, String what, int rows) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("file", file.toString());
            json.text("as", what);
            json.whole("rows", rows);
        });
    }
}
