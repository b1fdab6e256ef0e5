package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings of a logger by the forms of the running server. */
class LoggerPagesTest {
    private static final String LOG =
            "time,temp_f\n2015-01-05 06:00,37.4\n2015-01-05 07:00,39.2\n2015-01-06 07:00,41\n2015-01-06 08:00,35.6\n";

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
    void aLogIsShownBeforeItIsSavedOnceAndNotTwice() throws Exception {
        HttpResponse<String> looked = look(LOG);
        assertThat(looked.statusCode()).isEqualTo(200);
        assertThat(Caller.text(looked.body()))
                .contains("4 readings, from 2015-01-05 06:00 to 2015-01-06 08:00.")
                .contains("Lowest 2.0 °C, highest 5.0 °C.")
                .contains("1 gap: 2015-01-05 07:00 to 2015-01-06 07:00.")
                .contains("Save 4 readings");
        assertThat(count()).contains("No entry.");
        String ready = Caller.hidden(looked.body(), "ready");
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> saved = ada.post("/records/logger/save", Map.of("ready", ready, "who", "Ada"));
            assertThat(Caller.text(saved.body())).contains("Saved: 4 readings, fridge, Tansy Lane.");
        }
        assertThat(count()).contains("4 entries.", "2015-01-05T06:00:00 3 ");

        String again = Caller.text(
                look(LOG.replace(",41\n", ",50\n") + "2015-01-06 09:00,35.6\n").body());
        assertThat(again)
                .contains("3 of them are in the records already")
                .contains("1 stand in the records with another temperature; what is in the records stays as it is.")
                .contains("Save 1 reading");
        assertThat(Caller.text(look(LOG).body())).contains("There is nothing new to save.");
    }

    @Test
    void everyFaultIsToldWithItsLineAndNothingIsKept() throws Exception {
        HttpResponse<String> bad = look(LOG.replace("39.2", "warm").replace("2015-01-06 08:00", "2015-02-30 08:00"));
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(Caller.text(bad.body()))
                .containsPattern("the readings:3:\\d+: .*\"warm\".*\\(NY-LOG-NUMBER\\)")
                .containsPattern("the readings:5:\\d+: .*2015-02-30 08:00.*\\(NY-LOG-TIME\\)");
        assertThat(bad.body()).doesNotContain("name=\"ready\"").contains("2015-01-05 07:00,warm");
        assertThat(Caller.text(look("hello").body())).contains("Nothing was written.");
        Map<String, String> form = new HashMap<>(Map.of("site", "Tansy Lane", "place", "attic", "text", LOG));
        assertThat(Caller.text(
                        ada.upload("/records/logger", form, "", new byte[0]).body()))
                .contains("place is \"attic\"; expected one of fridge");
        assertThat(ada.post("/records/logger/save", Map.of("ready", "gone")).body())
                .contains("NY-LOG-GONE");
    }

    @Test
    void aHundredThousandReadingsAndNoLargerFileThanTwentyMegabytes() throws Exception {
        StringBuilder log = new StringBuilder("time,temp_c\n");
        LocalDateTime at = LocalDateTime.parse("2013-01-01T00:00");
        int readings = 100_000;
        for (int i = 0; i < readings; i++) {
            log.append(at.plusMinutes(10L * i))
                    .append(',')
                    .append(i % 40 / 10.0)
                    .append('\n');
        }
        Map<String, String> form = Map.of("site", "Tansy Lane", "place", "fridge", "text", "");
        HttpResponse<String> looked =
                ada.upload("/records/logger", form, "fridge.csv", log.toString().getBytes(StandardCharsets.UTF_8));
        assertThat(Caller.text(looked.body())).contains("100000 readings", "Save 100000 readings");
        HttpResponse<String> saved =
                ada.post("/records/logger/save", Map.of("ready", Caller.hidden(looked.body(), "ready")));
        assertThat(Caller.text(saved.body())).contains("Saved: 100000 readings");
        assertThat(count()).contains("of 100000, newest first.");

        HttpResponse<String> large = ada.upload("/records/logger", form, "large.csv", new byte[21 * 1024 * 1024]);
        assertThat(large.statusCode()).isEqualTo(413);
        assertThat(large.body()).contains("NY-UPLOAD-SIZE");
    }

    private HttpResponse<String> look(String text) throws Exception {
        return ada.upload(
                "/records/logger",
                Map.of("site", "Tansy Lane", "place", "fridge", "text", text, "who", "Ada"),
                "",
                new byte[0]);
    }

    private String count() throws Exception {
        return Caller.text(ada.get("/records/table/reading").body());
    }
}
