package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.book.EntryDesk;
import org.nestyear.app.book.EntryForm;

/** Tables as sheets and as files, by the forms of the running server. */
class SheetPagesTest {
    @TempDir
    Path home;

    private WebServer.Running server;
    private Caller ada;

    @BeforeEach
    void startServer() throws Exception {
        server = OwnServer.start(home);
        ada = new Caller(server);
        ada.site("Tansy Lane");
    }

    @AfterEach
    void stopServer() {
        server.close();
    }

    @Test
    void everyTableHasItsSheetItsListItsFormAndItsFile() throws Exception {
        int seen = 0;
        for (EntryForm form : EntryDesk.forms()) {
            for (String kind : new String[] {"sheet", "table", "new", "file"}) {
                HttpResponse<String> page = ada.get("/records/" + kind + "/" + form.name());
                assertThat(page.statusCode()).as(kind + " " + form.name()).isEqualTo(200);
                assertThat(page.body()).contains(form.title());
            }
            seen++;
        }
        assertThat(seen).isEqualTo(23);
    }

    @Test
    void rowsAreSavedTogetherOnceAndCorrectedInPlace() throws Exception {
        Map<String, String> form = new HashMap<>(sheet());
        row(form, 1, "Tansy Lane", "2015-03-01", "5");
        row(form, 2, "Tansy Lane", "2015-03-02", "6");
        row(form, 3, "", "", "");
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> saved = ada.post("/records/sheet/visit", form);
            assertThat(Caller.text(saved.body())).contains("Saved: 2 rows.");
        }
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("2 entries.");
        form.put("act", UUID.randomUUID().toString());
        form.put("r1-revision", "1");
        form.put("r2-revision", "1");
        form.put("r1-more_plugged", "7");
        assertThat(Caller.text(ada.post("/records/sheet/visit", form).body())).contains("Saved: 1 row.");

        form.put("act", UUID.randomUUID().toString());
        form.put("r1-more_plugged", "8");
        form.put("r2-more_plugged", "9");
        HttpResponse<String> stale = ada.post("/records/sheet/visit", form);
        assertThat(stale.statusCode()).isEqualTo(422);
        assertThat(Caller.text(stale.body()))
                .contains("Ada changed this entry in the meantime.", "Stands there now: 7");
        assertThat(stale.body()).contains("name=\"r1-more_plugged\" value=\"8\"", "name=\"r1-revision\" value=\"2\"");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).doesNotContain(" 9 ");
    }

    @Test
    void eachFaultStandsAtItsCellAndNothingIsWritten() throws Exception {
        Map<String, String> form = new HashMap<>(sheet());
        row(form, 1, "Tansy Lane", "2015-03-01", "5");
        row(form, 2, "Tansy Lane", "2015-13-01", "many");
        row(form, 3, "Nowhere", "2015-03-02", "2");
        HttpResponse<String> bad = ada.post("/records/sheet/visit", form);
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(bad.body())
                .contains("id=\"r2-on_date-problem\"", "id=\"r2-more_plugged-problem\"", "id=\"r3-site-problem\"");
        assertThat(bad.body()).doesNotContain("id=\"r1-on_date-problem\"").contains("value=\"many\"");
        assertThat(Caller.text(bad.body())).contains("Nothing was written: 3 cells cannot stand");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("No entry.");

        Map<String, String> twice =
                new HashMap<>(Map.of("act", UUID.randomUUID().toString(), "who", "Ada"));
        for (int i = 1; i <= 2; i++) {
            twice.put("r" + i + "-id", UUID.randomUUID().toString());
            twice.put("r" + i + "-site", "Tansy Lane");
            twice.put("r" + i + "-name", "Long reeds 2");
        }
        assertThat(Caller.text(ada.post("/records/sheet/house", twice).body()))
                .contains("This tells of the same thing as row 1; expected each thing once.");
    }

    @Test
    void aFileIsToldLineByLineThenWrittenOnceAndComesBackTheSame() throws Exception {
        String csv = "site,on_date,more_plugged,note\nTansy Lane,2015-03-01,5,\"a, b\"\nTansy Lane,2015-03-02,6,\n";
        HttpResponse<String> looked = file(csv);
        assertThat(Caller.text(looked.body()))
                .contains("visits.csv: 2 new, 0 corrects, 0 already there.", "more_plugged: 5");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("No entry.");
        String ready = Caller.hidden(looked.body(), "ready");
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> written = ada.post("/records/file/visit/write", Map.of("ready", ready, "who", "Ada"));
            assertThat(Caller.text(written.body())).contains("Written: read visits.csv into Visits, 2 entries.");
        }
        HttpResponse<String> out = ada.get("/records/file/visit.csv");
        assertThat(out.headers().firstValue("Content-Disposition").orElse("")).contains("visit.csv");
        assertThat(out.body()).contains("\"a, b\"");
        assertThat(Caller.text(file(out.body()).body())).contains("0 new, 0 corrects, 2 already there.");
        String changed = out.body().replace(",2015-03-02,6,", ",2015-03-02,9,");
        assertThat(changed).isNotEqualTo(out.body());
        assertThat(Caller.text(file(changed).body())).contains("1 corrects, 1 already there.", "6 becomes 9");
    }

    @Test
    void aFileThatCannotStandIsToldByItsLineAndTooLargeAFileIsRefused() throws Exception {
        HttpResponse<String> bad =
                file("site,on_date,more_plugged\nTansy Lane,2015-03-01,5\nTansy Lane,2015-02-30,5\n");
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(Caller.text(bad.body())).contains("visits.csv:3:", "2015-02-30", "NY-TABLE-VALUE");
        assertThat(ada.post("/records/file/visit/write", Map.of("ready", "gone"))
                        .statusCode())
                .isEqualTo(422);
        HttpResponse<String> large =
                ada.upload("/records/file/visit", Map.of(), "large.csv", new byte[21 * 1024 * 1024]);
        assertThat(large.statusCode()).isEqualTo(413);
    }

    private HttpResponse<String> file(String csv) throws Exception {
        return ada.upload(
                "/records/file/visit", Map.of("who", "Ada"), "visits.csv", csv.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, String> sheet() {
        return Map.of("act", UUID.randomUUID().toString(), "page", "1", "who", "Ada");
    }

    private static void row(Map<String, String> form, int number, String site, String day, String more) {
        String prefix = "r" + number + "-";
        form.put(prefix + "id", UUID.randomUUID().toString());
        form.put(prefix + "revision", "0");
        form.put(prefix + "site", site);
        form.put(prefix + "on_date", day);
        form.put(prefix + "more_plugged", more);
    }
}
