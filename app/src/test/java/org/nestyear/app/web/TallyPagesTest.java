package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counting cells by the forms of the running server, as it works without a script. */
class TallyPagesTest {
    @TempDir
    Path home;

    private WebServer.Running server;
    private Caller ada;
    private String counter = "";

    @BeforeEach
    void beginAnOpening() throws Exception {
        server = OwnServer.start(home);
        ada = new Caller(server);
        ada.site("Tansy Lane");
        String entry = UUID.randomUUID().toString();
        HttpResponse<String> begun = ada.post("/records/tally", opening(entry, "2015"));
        assertThat(begun.uri().getPath()).isEqualTo("/records/tally/" + entry);
        counter = "/records/tally/" + entry;
    }

    @AfterEach
    void stopServer() {
        server.close();
    }

    @Test
    void everyTapCountsOnceAndTheShareLostIsShown() throws Exception {
        String tap = UUID.randomUUID().toString();
        tap(ada, "alive", tap);
        tap(ada, "alive", tap);
        tap(ada, "alive", UUID.randomUUID().toString());
        String page = tap(ada, "pollen_balls", tap);
        assertThat(Caller.text(page)).contains("3 cells in this opening: 2 alive, 1 lost (33.3 %).", "dust mask");
        assertThat(page).contains("data-count=\"alive\">2<", "data-count=\"pollen_balls\">1<");
    }

    @Test
    void undoTakesBackTheLastTapAndThenTheOneBefore() throws Exception {
        tap(ada, "alive", "1");
        tap(ada, "mites", "2");
        tap(ada, "mites", "3");
        assertThat(Caller.text(undo(ada, "u1"))).contains("2 cells in this opening: 1 alive, 1 lost");
        assertThat(Caller.text(undo(ada, "u1"))).contains("2 cells in this opening");
        assertThat(Caller.text(undo(ada, "u2"))).contains("1 cell in this opening: 1 alive, 0 lost");
        tap(ada, "mites", "4");
        assertThat(Caller.text(undo(ada, "u3"))).contains("1 cell in this opening");
        assertThat(Caller.text(undo(ada, "u4"))).contains("Nothing counted yet");
        assertThat(Caller.text(undo(ada, "u5"))).contains("Nothing counted yet");
    }

    @Test
    void undoLeavesALaterTapOfSomebodyElse() throws Exception {
        Caller ben = new Caller(server);
        tap(ada, "alive", "a1");
        tap(ben, "alive", "b1");
        tap(ben, "alive", "b2");
        assertThat(Caller.text(undo(ada, "u1"))).contains("2 cells in this opening: 2 alive");
        assertThat(Caller.text(undo(ada, "u2"))).contains("2 cells in this opening: 2 alive");
    }

    @Test
    void manyWhoTapAtOnceAllCount() throws Exception {
        int people = 4;
        int taps = 15;
        ExecutorService threads = Executors.newFixedThreadPool(people);
        List<Callable<Integer>> jobs = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            Caller caller = new Caller(server);
            jobs.add(() -> {
                int good = 0;
                for (int i = 0; i < taps; i++) {
                    good += Caller.text(tap(
                                            caller,
                                            i % 2 == 0 ? "alive" : "mites",
                                            UUID.randomUUID().toString()))
                                    .contains("in this opening")
                            ? 1
                            : 0;
                }
                return good;
            });
        }
        int good = 0;
        for (Future<Integer> done : threads.invokeAll(jobs)) {
            good += done.get();
        }
        threads.shutdown();
        assertThat(good).isEqualTo(people * taps);
        assertThat(Caller.text(ada.get(counter).body())).contains("60 cells in this opening: 32 alive, 28 lost");
        assertThat(Caller.text(ada.get("/records/table/tally").body())).contains("2 entries.");
    }

    @Test
    void aTunnelHasItsOwnCountAndTheOpeningTheSum() throws Exception {
        tap(ada, "alive", "1");
        Map<String, String> form = new HashMap<>(
                Map.of("found", "alive", "tap", "2", "who", "Ada", "house", "Tansy Lane / Long reeds", "tunnel", "7"));
        String page = ada.post(counter + "/tap", form).body();
        assertThat(page).contains("data-count=\"alive\">1<");
        assertThat(Caller.text(page)).contains("Tansy Lane / Long reeds, tunnel 7", "2 cells in this opening");
    }

    @Test
    void whatIsNoCauseNoHouseOrNoOpeningIsRefusedAndNotCounted() throws Exception {
        HttpResponse<String> cause = ada.post(counter + "/tap", Map.of("found", "luck", "tap", "1"));
        assertThat(cause.statusCode()).isEqualTo(422);
        assertThat(Caller.text(cause.body())).contains("found is \"luck\"; expected one of alive, chalkbrood");
        HttpResponse<String> house =
                ada.post(counter + "/tap", Map.of("found", "mites", "tap", "2", "house", "nowhere"));
        assertThat(house.statusCode()).isEqualTo(422);
        assertThat(Caller.text(house.body())).contains("which is not in the records", "Nothing counted yet");
        assertThat(ada.post("/records/tally/none/tap", Map.of("found", "mites", "tap", "3"))
                        .statusCode())
                .isEqualTo(404);
        assertThat(ada.postRaw(counter + "/tap", "found=mites&tap=4").statusCode())
                .isEqualTo(403);
    }

    @Test
    void anOpeningOfAnotherYearOrAnUnknownBeeIsToldAtItsField() throws Exception {
        HttpResponse<String> year =
                ada.post("/records/tally", opening(UUID.randomUUID().toString(), "2011"));
        assertThat(year.statusCode()).isEqualTo(422);
        assertThat(Caller.text(year.body())).contains("year is 2011; expected the year of “Day” or the one before.");
        Map<String, String> form = opening(UUID.randomUUID().toString(), "2014");
        form.put("f-species", "Bombus terrestris");
        assertThat(Caller.text(ada.post("/records/tally", form).body()))
                .contains("expected the Latin name of a bee in the catalogue");
    }

    private static Map<String, String> opening(String entry, String year) {
        return new HashMap<>(Map.of(
                "act",
                UUID.randomUUID().toString(),
                "entry",
                entry,
                "who",
                "Ada",
                "f-site",
                "Tansy Lane",
                "f-species",
                "Osmia lignaria",
                "f-on_date",
                "2015-03-01",
                "f-year",
                year));
    }

    private String tap(Caller who, String found, String tap) throws Exception {
        return who.post(counter + "/tap", Map.of("found", found, "tap", tap, "who", who == ada ? "Ada" : "Ben"))
                .body();
    }

    private String undo(Caller who, String tap) throws Exception {
        return who.post(counter + "/undo", Map.of("tap", tap, "who", who == ada ? "Ada" : "Ben"))
                .body();
    }
}
