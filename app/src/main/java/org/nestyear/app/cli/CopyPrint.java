package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.nestyear.app.service.RecordsCopy;
import org.nestyear.app.service.Version;

/** A copy of the records as text, and as JSON of the schemas {@code backup} and {@code restore}. */
final class CopyPrint {
    private static final double KILOBYTE = 1000;

    private CopyPrint() {}

    static String json(RecordsCopy copy, boolean putBack) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("records", copy.records());
            json.text("file", copy.file().toString());
            if (putBack) {
                json.text("replaced", copy.replaced().map(Object::toString).orElse(null));
            }
            json.whole("size_bytes", copy.bytes());
            json.whole("tables_version", copy.tables());
            json.whole("entries", copy.entries());
            json.objects("tables", new ArrayList<>(new TreeMap<>(copy.rows()).entrySet()), CopyPrint::table);
        });
    }

    private static void table(JsonText json, Map.Entry<String, Long> table) {
        json.text("table", table.getKey());
        json.whole("rows", table.getValue());
    }

    static String made(RecordsCopy copy) {
        Page page = new Page();
        page.paragraph(0, "The records in");
        page.line("  " + copy.records());
        page.paragraph(0, "are copied to");
        page.line("  " + copy.file());
        page.paragraph(0, contents(copy) + ", read through and whole.");
        page.paragraph(
                0, "Keep a copy on another disk too. It comes back with nestyear restore and the name of the file.");
        return page.toString();
    }

    static String putBack(RecordsCopy copy) {
        Page page = new Page();
        page.paragraph(0, "The records in");
        page.line("  " + copy.records());
        page.paragraph(0, "are now those of");
        page.line("  " + copy.file());
        page.paragraph(0, contents(copy) + ", read through and whole.");
        copy.replaced().ifPresent(aside -> {
            page.paragraph(0, "Those that were there before are kept in");
            page.line("  " + aside);
        });
        return page.toString();
    }

    private static String contents(RecordsCopy copy) {
        String size = String.format(Locale.ROOT, "%,.0f kB", Math.ceil(copy.bytes() / KILOBYTE));
        return copy.entries() == 1 ? "1 entry, " + size : copy.entries() + " entries, " + size;
    }
}
