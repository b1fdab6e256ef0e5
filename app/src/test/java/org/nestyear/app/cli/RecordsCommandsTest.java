package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;

/** The commands of the records, one after the other as a keeper would type them. */
class RecordsCommandsTest {
    private static final Pattern ID = Pattern.compile("\"id\":\"([0-9a-f-]{36})\"");

    @TempDir
    Path folder;

    @Test
    void anEntryIsWrittenCorrectedTakenOutAndBroughtBack() {
        ok("enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        Run visit = json(
                "entry.schema.json",
                "enter",
                "visit",
                "site=orchard",
                "on_date=2015-05-01",
                "more_plugged=12",
                "species=blue orchard bee",
                "--who",
                "Ada");
        assertThat(visit.out()).contains("\"Osmia lignaria\"", "\"who\":\"Ada\"", "\"site\":\"Orchard\"");
        String id = id(visit);
        ok("correct", "visit", id.substring(0, 8), "more_plugged=21", "--who", "Ben");
        Run shown = json("entry.schema.json", "entries", "visit", id);
        assertThat(shown.out()).contains("\"was\":\"12\"", "\"became\":\"21\"", "\"who\":\"Ben\"");
        ok("take-out", "visit", id);
        assertThat(json("entries.schema.json", "entries", "visit").out()).contains("\"all\":0");
        ok("undo");
        assertThat(json("entries.schema.json", "entries", "visit", "--site", "Orchard", "--year", "2015")
                        .out())
                .contains("\"all\":1", "\"21\"");
        assertThat(json("done.schema.json", "done").out()).contains("took back", "taken_back\":true");
    }

    @Test
    void tablesTellWhatTheyHold() {
        assertThat(Run.of("tables").out()).contains("visit", "What was counted at a site");
        JsonSchemas.assertValid("tables.schema.json", Run.of("tables", "--json").out());
        assertThat(Run.of("tables", "visit").out()).contains("more_plugged", "wet, damp, dry, none");
        assertThat(Run.of("tables", "visits").err()).contains("\"visits\" is no table", "Maybe \"visit\"");
    }

    @Test
    void whatCannotStandIsRefusedInOneSentence() {
        ok("enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        refused(
                "site is \"Orchid\", which is not in the records",
                "enter",
                "visit",
                "site=Orchid",
                "on_date=2015-05-01");
        refused("on_date is \"2015-05-32\"; expected a day", "enter", "visit", "site=Orchard", "on_date=2015-05-32");
        refused(
                "expected a day that has come already",
                "enter",
                "note",
                "site=Orchard",
                "on_date=2017-05-01",
                "note=x");
        refused("\"more_plugged\" is no value of an entry", "enter", "visit", "more_plugged");
        refused("told twice", "enter", "visit", "mud=wet", "mud=dry");
        refused(
                "species is \"Apis mellifera\"",
                "enter",
                "batch",
                "site=Orchard",
                "name=b",
                "species=Apis mellifera",
                "year=2015",
                "origin=local",
                "came_by=gift",
                "cocoons=3");
        refused(
                "the name \"Orchard\" is taken",
                "enter",
                "site",
                "name=Orchard",
                "latitude_deg=1",
                "longitude_deg=1",
                "zone=UTC");
        refused("no entry under Visits has an id", "correct", "visit", "abcdef", "mud=wet");
        Run nothing = run("undo", "abcd");
        assertThat(nothing.exit()).isEqualTo(2);
        assertThat(run("undo").exit()).isZero();
        assertThat(run("undo").exit()).isEqualTo(3);
    }

    @Test
    void aTableGoesOutAndComesBackWithADryRunLineByLine() throws IOException {
        ok("enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        Path file = folder.resolve("visit.csv");
        Files.writeString(file, """
                site,on_date,species,more_plugged,note
                Orchard,2015-05-01,Osmia lignaria,4,=SUM(A1)
                Orchard,2015-05-02,Osmia lignaria,5,
                """);
        Run dry = json("import.schema.json", "import", file.toString(), "--dry-run");
        assertThat(dry.out()).contains("\"new\":2", "\"act\":null", "\"site\":\"Orchard\"");
        assertThat(json("entries.schema.json", "entries", "visit").out()).contains("\"all\":0");
        ok("import", file.toString());
        assertThat(json("import.schema.json", "import", file.toString()).out()).contains("\"already_there\":2");

        Path out = folder.resolve("out.csv");
        json("export.schema.json", "export", out.toString(), "--as", "visit");
        assertThat(Files.readString(out)).contains("'=SUM(A1)", "\r\n");
        Files.writeString(out, Files.readString(out).replace(",5,", ",6,"));
        Run corrected = run("import", out.toString(), "--into", "visit", "--dry-run");
        assertThat(flat(corrected)).contains("1 corrected", "more_plugged 5 becomes 6");
        ok("import", out.toString(), "--into", "visit");
        assertThat(flat(run("entries", "visit"))).contains("more_plugged 6", "note =SUM(A1)");
        ok("undo");
        assertThat(flat(run("entries", "visit"))).contains("more_plugged 5");
        refused("something of that name is there", "export", out.toString(), "--as", "visit");
    }

    @Test
    void aWrongTableIsRefusedWholeWithItsLine() throws IOException {
        ok("enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        Path file = folder.resolve("horizon.csv");
        String head = "site,azimuth_deg,height_deg\nOrchard,60,12\n";
        for (String[] wrong : new String[][] {
            {"Orchard,x,5", "horizon.csv:3:9: azimuth_deg is \"x\"; expected a number from 0 to 360"},
            {"Orchard,60,5", "horizon.csv:3:1: the line tells of the same thing as line 2"},
            {"Orchid,90,5", "horizon.csv:3:1: site is \"Orchid\""},
            {"Orchard,90", "the line has 2 cells; expected 3"},
            {"Orchard,,5", "need the column azimuth_deg"},
        }) {
            Files.writeString(file, head + wrong[0] + "\n");
            refused(wrong[1], "import", file.toString());
        }
        Files.writeString(file, "site,azimut_deg,height_deg\nOrchard,60,12\n");
        refused("the column \"azimut_deg\" is none", "import", file.toString());
        refused("not named after a table", "import", folder.resolve("x.csv").toString());
        assertThat(run("entries", "horizon").out()).contains("no such entry yet");
    }

    @Test
    void theInventedAccountAnswersForItsYearsAndGoesOutWithOneUndo() throws IOException {
        ok("demo", "--records");
        Run spring = json("spring.schema.json", "spring", "--site", "Tansy Lane orchard", "--year", "2014");
        assertThat(spring.out()).contains("\"what\":\"first female\"", "\"happened\":\"2014-04-28\"");
        assertThat(flat(run("spring", "--site", "Tansy Lane orchard", "--year", "2014")))
                .contains("FORECAST AND WHAT HAPPENED", "on average of 3 springs");
        refused("no release of Osmia lignaria in 2012", "spring", "--site", "Number Nine", "--year", "2012");
        refused(
                "is a leafcutter bee",
                "spring",
                "--site",
                "Tansy Lane orchard",
                "--year",
                "2014",
                "--species",
                "Megachile rotundata");

        Run next = json("next-year.schema.json", "next-year", "--site", "Bramble End", "--year", "2014", "--dry-run");
        assertThat(next.out())
                .contains("\"batch\":\"Bramble End 2015 mason\"", "\"written\":false", "Bramble End 2014 mason");
        refused("is taken under Batches", "next-year", "--site", "Bramble End", "--year", "2014");
        refused("no opened nest", "next-year", "--site", "Bramble End", "--year", "2012");

        assertThat(flat(run("years", "--site", "Bramble End"))).contains("Your own years: 2013");
        assertThat(run("losses", "--site", "Number Nine", "--year", "2015").out())
                .contains("Alive:");
        Run plan = run("plan", "--site", "Number Nine", "--today", "2015-03-20");
        assertThat(plan.exit()).as(plan.err()).isZero();
        assertThat(flat(plan)).contains("Put ", "YOUR SPRINGS AND THE MODEL", "springs (from ");
        refused("a file and --site are both given", "plan", "x.toml", "--site", "Number Nine");

        ok("undo");
        assertThat(run("entries", "site").out()).contains("no such entry yet");
    }

    @Test
    void aRollOverMakesTheNextBatchOnce() {
        ok("enter", "site", "name=Yard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        ok(
                "enter",
                "batch",
                "site=Yard",
                "name=first",
                "species=Osmia lignaria",
                "year=2015",
                "origin=local",
                "came_by=gift",
                "females=10",
                "males=15");
        ok("enter", "release", "batch=first", "site=Yard", "on_date=2015-04-17", "females=10", "males=15");
        ok("enter", "opening", "site=Yard", "species=Osmia lignaria", "on_date=2015-10-20", "year=2015");
        ok("enter", "tally", "opening=Yard / 2015-10-20 Osmia lignaria", "found=alive", "cells=40");
        ok("enter", "tally", "opening=Yard / 2015-10-20 Osmia lignaria", "found=chalkbrood", "cells=10");
        Run made = json(
                "next-year.schema.json",
                "next-year",
                "--site",
                "Yard",
                "--year",
                "2015",
                "--females",
                "16",
                "--wintered",
                "shed");
        assertThat(made.out())
                .contains("\"written\":true", "\"females\":16", "\"sexes_from\":\"counted by you\"")
                .contains("\"growth\":1.6", "\"chalkbrood\":10", "\"parents\":[\"first\"]");
        assertThat(flat(run("entries", "batch", "--site", "Yard"))).contains("Yard 2016 mason", "wintered shed");
        assertThat(flat(run("entries", "parent"))).contains("batch Yard 2016 mason, from_batch first");
        refused("is taken under Batches", "next-year", "--site", "Yard", "--year", "2015");
        refused("but", "next-year", "--site", "Yard", "--year", "2015", "--females", "99999");
    }

    @Test
    void theAccountAndItsOpenFormsAreWritten() throws IOException {
        ok("demo", "--records");
        Path archive = folder.resolve("all.zip");
        json("export.schema.json", "export", archive.toString());
        Run read = Run.later(
                "import", archive.toString(), "--data", folder.resolve("other").toString(), "--json");
        JsonSchemas.assertValid("import.schema.json", read.out());
        Path again = folder.resolve("again.zip");
        assertThat(Run.later(
                                "export",
                                again.toString(),
                                "--data",
                                folder.resolve("other").toString())
                        .exit())
                .isZero();
        assertThat(Files.readAllBytes(again)).isEqualTo(Files.readAllBytes(archive));

        Path places = folder.resolve("places.geojson");
        json("export.schema.json", "export", places.toString(), "--as", "geojson");
        assertThat(Files.readString(places)).contains("coordinate_grid_m").doesNotContain("Tansy Lane", "40.78");
        Path seen = folder.resolve("seen.zip");
        json("export.schema.json", "export", seen.toString(), "--as", "darwin-core", "--places", "1km");
        Path jobs = folder.resolve("jobs.ics");
        json("export.schema.json", "export", jobs.toString(), "--as", "calendar", "--today", "2015-03-20");
        assertThat(Files.readString(jobs)).contains("BEGIN:VEVENT", "Number Nine");
        refused(
                "--places is \"near\"",
                "export",
                folder.resolve("y").toString(),
                "--as",
                "geojson",
                "--places",
                "near");
    }

    @Test
    void aPictureIsKeptWithItsBytes() throws IOException {
        ok("enter", "site", "name=Orchard", "latitude_deg=40.78", "longitude_deg=-73.97", "zone=America/New_York");
        Path picture = Files.write(folder.resolve("house.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 1, 2});
        Run kept = json("entry.schema.json", "photo", picture.toString(), "site=Orchard", "on_date=2015-05-01");
        assertThat(kept.out()).contains("image/png", "house.png");
        Path text = Files.writeString(folder.resolve("house.txt"), "no picture");
        refused("no picture", "photo", text.toString(), "site=Orchard", "on_date=2015-05-01");
    }

    private void ok(String... words) {
        Run run = run(words);
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).isNotBlank();
    }

    private void refused(String message, String... words) {
        Run run = run(words);
        assertThat(run.exit()).as(run.out()).isIn(2, 3);
        assertThat(run.err()).contains(message).contains("expected", "[NY-");
    }

    private Run json(String schema, String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.add("--json");
        Run run = run(all.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid(schema, run.out());
        return run;
    }

    private Run run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--data", folder.resolve("records").toString()));
        return Run.later(all.toArray(String[]::new));
    }

    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static String id(Run run) {
        return ids(run).get(0);
    }

    private static List<String> ids(Run run) {
        List<String> ids = new ArrayList<>();
        Matcher matcher = ID.matcher(run.out());
        while (matcher.find()) {
            ids.add(matcher.group(1));
        }
        return ids;
    }
}
