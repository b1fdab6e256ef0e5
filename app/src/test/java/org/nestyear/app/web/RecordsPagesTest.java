package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Writing down, correcting and taking back by the forms of the running server. */
class RecordsPagesTest {
    @TempDir
    Path home;

    private WebServer.Running server;
    private Caller ada;

    @BeforeEach
    void startServer() throws Exception {
        server = OwnServer.start(home);
        ada = new Caller(server);
    }

    @AfterEach
    void stopServer() {
        server.close();
    }

    @Test
    void anEmptyBookTeachesWhereToBegin() throws Exception {
        String page = Caller.text(ada.get("/records").body());
        assertThat(page).contains("Begin with the place where your bees are.", "Write down a site");
        assertThat(ada.get("/records/visit").uri().getPath()).isEqualTo("/records");
        String form = ada.get("/records/new/site").body();
        // Tests run where the computer's zone is this one.
        assertThat(form).contains("value=\"Pacific/Kiritimati\"");
    }

    @Test
    void aVisitIsSavedOnceHoweverOftenItIsSentAndSaysTheRunningTotal() throws Exception {
        ada.site("Tansy Lane");
        visit(Map.of("more", "45"), 200);
        Map<String, String> form =
                new HashMap<>(Map.of("more", "12", "mud", "dry", "seen", "first male||first female"));
        form.put("act", UUID.randomUUID().toString());
        String saved = visit(form, 200);
        assertThat(Caller.text(saved))
                .contains("12 more plugged, 57 in all this season, mud dry (Tansy Lane / Long reeds");
        assertThat(visit(form, 200)).contains("57 in all this season");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("2 entries.");
        assertThat(Caller.text(ada.get("/records/table/sighting").body())).contains("2 entries.");

        String undone = ada.post(
                        "/records/undo",
                        Map.of(
                                "act",
                                Caller.hidden(saved.substring(saved.indexOf("receipt")), "act"),
                                "back",
                                "/records/visit"))
                .body();
        assertThat(Caller.text(undone))
                .contains("Took back: visit to Tansy Lane / Long reeds: 12 more plugged, mud dry");
        assertThat(Caller.text(ada.get("/records/table/sighting").body())).contains("No entry.");
        String home = ada.get("/records").body();
        assertThat(Caller.text(home)).contains("taken back", "Redo");
        assertThat(Caller.text(home)).contains("45 more plugged (Ada).");
        ada.post("/records/undo", Map.of("act", Caller.hidden(home.substring(home.indexOf("class=\"done\"")), "act")));
        assertThat(Caller.text(ada.get("/records/table/sighting").body())).contains("2 entries.");
    }

    @Test
    void aCountOfAllStandsForWhatWasCountedBefore() throws Exception {
        ada.site("Tansy Lane");
        visit(Map.of("more", "9", "day", "2015-03-01"), 200);
        visit(Map.of("all", "40", "day", "2015-03-02"), 200);
        visit(Map.of("more", "5", "day", "2014-03-02"), 200);
        assertThat(visit(Map.of("more", "2", "day", "2015-03-03"), 200)).contains("42 in all this season");
    }

    @Test
    void theButtonsCountWithoutAnyScript() throws Exception {
        ada.site("Tansy Lane");
        assertThat(visit(Map.of("more", "7", "go", "add:5", "note", "kept"), 200))
                .contains("name=\"more\" value=\"12\"", "kept</textarea>");
        assertThat(visit(Map.of("more", "", "go", "add:-1"), 200)).contains("name=\"more\" value=\"0\"");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("No entry.");
    }

    @Test
    void aLineIsSaidBackBeforeItIsSavedAndNoWordIsLost() throws Exception {
        ada.site("Tansy Lane");
        String read = visit(
                Map.of(
                        "line",
                        "Twelve more plugged, torch 9; mud dry, first female, ladybirds on the roof",
                        "go",
                        "save"),
                200);
        assertThat(Caller.text(read))
                .contains(
                        "Understood: 12 more plugged since the last visit; 9 tunnels with a bee by torch; mud: dry; seen: first female.")
                .contains("Kept as the note: ladybirds on the roof");
        assertThat(read)
                .contains(
                        "name=\"more\" value=\"12\"",
                        "value=\"first female\" checked",
                        "ladybirds on the roof</textarea>");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("No entry.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            more   | many       | This is "many"; expected a whole number from 0 to 1000000.
            more   | -3         | This is "-3"; expected a whole number from 0 to 1000000.
            day    | 2015-02-30 | This is "2015-02-30"; expected a day such as 2015-04-20.
            day    | 2015-03-20 | a day that has come already.
            species| Apis mellifica | expected the Latin name of a bee in the catalogue
            house  | No such / house | which is not in the records
            """)
    void whatCannotStandIsToldAtItsFieldAndNothingIsWritten(String field, String value, String sentence)
            throws Exception {
        ada.site("Tansy Lane");
        Map<String, String> form = new HashMap<>(Map.of("more", "4", "note", "a note that stays"));
        form.put(field, value);
        String page = visit(form, 422);
        assertThat(Caller.text(page)).contains(sentence, "a note that stays");
        assertThat(Caller.text(ada.get("/records/table/visit").body())).contains("No entry.");
        assertThat(visit(Map.of(), 422)).contains("expected a count, the mud, something seen or a note");
    }

    @Test
    void somebodyElsesChangeIsShownBesideWhatWasTyped() throws Exception {
        String address = ada.site("Tansy Lane");
        Caller ben = new Caller(server);
        String page = ada.get(address).body();
        assertThat(ben.post(address, site("1", "Tansy Field", "Ben")).statusCode())
                .isEqualTo(200);
        HttpResponse<String> late = ada.post(address, site(Caller.hidden(page, "revision"), "Tansy Meadow", "Ada"));
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(Caller.text(late.body()))
                .contains("Ben changed this entry in the meantime.", "Stands there now: Tansy Field");
        assertThat(late.body()).contains("value=\"Tansy Meadow\"");
        HttpResponse<String> again =
                ada.post(address, site(Caller.hidden(late.body(), "revision"), "Tansy Meadow", "Ada"));
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(Caller.text(again.body()))
                .contains(
                        "Saved.", "Ben Name Tansy Lane Tansy Field", "Ada Name Tansy Field Tansy Meadow", "version 3");
    }

    @Test
    void aNameThatIsTakenAndAWrongNumberAreToldAtTheirFields() throws Exception {
        ada.site("Tansy Lane");
        Map<String, String> form = site("0", "Tansy Lane", "Ada");
        HttpResponse<String> twice = ada.post("/records/entry/site/" + UUID.randomUUID(), form);
        assertThat(twice.statusCode()).isEqualTo(422);
        assertThat(Caller.text(twice.body())).contains("\"Tansy Lane\" is taken already; expected a name of its own.");
        form.put("f-latitude_deg", "95");
        form.put("f-longitude_deg", "east");
        String page = Caller.text(
                ada.post("/records/entry/site/" + UUID.randomUUID(), form).body());
        assertThat(page)
                .contains("This is \"95\"; expected a number from -90 to 90.", "This is \"east\"; expected a number");
    }

    @Test
    void anEntryIsTakenOutUnlessOthersBelongToIt() throws Exception {
        String address = ada.site("Tansy Lane");
        HttpResponse<String> used = ada.post(address + "/remove", Map.of("revision", "1"));
        assertThat(used.statusCode()).isEqualTo(422);
        assertThat(Caller.text(used.body())).contains("this entry is still used by 1 under Houses");
        visit(Map.of("more", "3"), 200);
        String table = ada.get("/records/table/visit").body();
        String visit = table.replaceFirst("(?s).*href=\"(/records/entry/visit/[^\"]+)\".*", "$1");
        HttpResponse<String> out = ada.post(visit + "/remove", Map.of("revision", "1"));
        assertThat(Caller.text(out.body())).contains("The entry was taken out.", "No entry.");
        assertThat(Caller.text(ada.get(visit).body())).contains("This entry was taken out.");
        assertThat(ada.get("/records/entry/visit/none").statusCode()).isEqualTo(404);
        assertThat(ada.get("/records/table/hives").statusCode()).isEqualTo(422);
    }

    @Test
    void aTableIsLookedThroughByFiftiesAndByYear() throws Exception {
        ada.site("Tansy Lane");
        for (int i = 1; i <= 51; i++) {
            visit(Map.of("more", Integer.toString(i), "day", i == 1 ? "2014-05-01" : "2015-03-01"), 200);
        }
        assertThat(Caller.text(ada.get("/records/table/visit").body()))
                .contains("Entries 1 to 50 of 51, newest first.", "Older entries");
        assertThat(Caller.text(ada.get("/records/table/visit?page=2").body()))
                .contains("Entries 51 to 51 of 51", "Newer entries");
        assertThat(Caller.text(
                        ada.get("/records/table/visit?in=Tansy+Lane&year=2014").body()))
                .contains("1 entry.", "2014-05-01");
    }

    @Test
    void aFormWithoutItsProofIsRefused() throws Exception {
        assertThat(ada.postRaw("/records/visit", "site=x&act=1&more=2").statusCode())
                .isEqualTo(403);
        assertThat(ada.postRaw("/records/undo", "act=1").statusCode()).isEqualTo(403);
        HttpResponse<String> nothing =
                ada.post("/records/undo", Map.of("act", "none", "back", "https://evil.example/"));
        assertThat(nothing.statusCode()).isEqualTo(422);
        assertThat(Caller.text(nothing.body())).contains("Nothing was taken back.");
    }

    private static Map<String, String> site(String revision, String name, String who) {
        return new HashMap<>(Map.of(
                "revision",
                revision,
                "act",
                UUID.randomUUID().toString(),
                "who",
                who,
                "f-name",
                name,
                "f-latitude_deg",
                "50.1",
                "f-longitude_deg",
                "8.2",
                "f-zone",
                "UTC"));
    }

    private String visit(Map<String, String> told, int status) throws Exception {
        Map<String, String> form = new HashMap<>(Map.of(
                "site",
                "Tansy Lane",
                "house",
                "Tansy Lane / Long reeds",
                "day",
                "2015-03-10",
                "who",
                "Ada",
                "go",
                "save",
                "act",
                UUID.randomUUID().toString()));
        form.putAll(told);
        HttpResponse<String> answer = ada.post("/records/visit", form);
        assertThat(answer.statusCode()).as(Caller.text(answer.body())).isEqualTo(status);
        return answer.body();
    }
}
