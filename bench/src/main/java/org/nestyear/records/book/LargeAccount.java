package org.nestyear.records.book;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.nestyear.records.Database;

/**
 * Writes an invented account of 200 sites, ten years and 200 000 entries, the same at every run but for the ids, and
 * beside it a file of 100 000 readings to import and a list of the pages to ask for. Nothing in it was ever seen or
 * counted.
 */
public final class LargeAccount {
    private static final int SITES = 200;
    private static final int HOUSES = 2;
    private static final int NESTS = 4;
    private static final int FIRST_YEAR = 2014;
    private static final int YEARS = 10;
    private static final int VISITS = 25;
    private static final int ENTRIES = 200_000;
    private static final int IMPORTED = 100_000;
    private static final int PAGES = 100;
    private static final String BEE = "Osmia lignaria";
    private static final By KEEPER = new By("keeper", "Invented Keeper");

    private final RecordBook book;
    private final Random random = new Random(20_140_301);
    private final List<Change> waiting = new ArrayList<>();
    private final List<String> siteIds = new ArrayList<>();
    private final Map<String, List<String>> ids = new HashMap<>();
    private int written;

    private LargeAccount(RecordBook book) {
        this.book = book;
    }

    /**
     * Makes the account.
     *
     * @param arguments the folder of the records, the CSV file, the list of pages
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        RecordBook book = new RecordBook(Database.open(folder), InstantSource.system(), new EntryCheck(Set.of(BEE)));
        LargeAccount account = new LargeAccount(book);
        for (int site = 0; site < SITES; site++) {
            account.writeSite(site);
        }
        account.fillWithReadings();
        Files.writeString(Path.of(arguments[1]), readings());
        Files.write(Path.of(arguments[2]), account.pages());
        System.out.println(account.written + " entries");
    }

    private static String siteName(int site) {
        return String.format(Locale.ROOT, "Meadow %03d", site + 1);
    }

    private String add(String table, Map<String, String> values) {
        String id = RecordBook.newId();
        waiting.add(new Change.Add(Sheets.get(table), id, values));
        ids.computeIfAbsent(table, name -> new ArrayList<>()).add(id);
        return id;
    }

    private void write(String words) {
        // The writer puts rows of one table in together.
        List<String> order = Sheets.list().stream().map(Sheet::name).toList();
        waiting.sort((a, b) ->
                order.indexOf(a.sheet().name()) - order.indexOf(b.sheet().name()));
        written += book.write(KEEPER, words, waiting).orElseThrow().entries();
        waiting.clear();
    }

    private String number(int below) {
        return Integer.toString(random.nextInt(below));
    }

    private String day(int year, int dayOfYear) {
        return LocalDate.ofYearDay(year, dayOfYear).toString();
    }

    private void writeSite(int number) {
        String site = add(
                "site",
                Map.of(
                        "name", siteName(number),
                        "latitude_deg", Double.toString(42 + number / 100.0),
                        "longitude_deg", Double.toString(-120 + number / 50.0),
                        "zone", "UTC"));
        siteIds.add(site);
        List<String> houses = new ArrayList<>();
        List<String> nests = new ArrayList<>();
        for (int h = 0; h < HOUSES; h++) {
            String house = add("house", Map.of("site", site, "name", "House " + (h + 1)));
            houses.add(house);
            for (int n = 0; n < NESTS; n++) {
                nests.add(add(
                        "nest",
                        Map.of(
                                "house", house,
                                "name", "Block " + (n + 1),
                                "kind", "tray",
                                "openable", "yes",
                                "hole_width_mm", "8",
                                "tunnels", "48")));
            }
        }
        List<String> plants = new ArrayList<>();
        for (String plant : List.of("Apple", "Plum")) {
            plants.add(add("plant", Map.of("site", site, "name", plant, "cover_m2", "200")));
        }
        for (int year = FIRST_YEAR; year < FIRST_YEAR + YEARS; year++) {
            writeYear(number, site, houses, nests, plants, year);
        }
        write("wrote the years of " + siteName(number));
        // A season as it is written in the field: an act for each visit.
        for (int visit = 0; visit < VISITS; visit++) {
            addVisit(site, houses.get(visit % HOUSES), FIRST_YEAR + YEARS - 1, visit);
            write("visit to " + siteName(number));
        }
    }

    private void writeYear(
            int number, String site, List<String> houses, List<String> nests, List<String> plants, int year) {
        String batch = add(
                "batch",
                Map.of(
                        "site",
                        site,
                        "name",
                        siteName(number) + " " + year,
                        "species",
                        BEE,
                        "year",
                        Integer.toString(year),
                        "origin",
                        "local",
                        "came_by",
                        "own nests",
                        "females",
                        "400",
                        "males",
                        "600"));
        add("release", Map.of("batch", batch, "site", site, "on_date", day(year, 90), "cocoons", "1000"));
        add(
                "unemerged",
                Map.of("batch", batch, "on_date", day(year, 150), "put_out", "1000", "left_closed", number(90)));
        add(
                "sexing",
                Map.of("batch", batch, "on_date", day(year, 20), "method", "width", "females", "40", "males", "60"));
        for (int i = 0; i < 10; i++) {
            add("measurement", Map.of("batch", batch, "on_date", day(year, 21), "weight_mg", "1" + number(90) + ".5"));
        }
        String opening = add(
                "opening",
                Map.of("site", site, "species", BEE, "on_date", day(year, 300), "year", Integer.toString(year)));
        for (int i = 0; i < 12; i++) {
            add(
                    "tally",
                    Map.of(
                            "opening",
                            opening,
                            "house",
                            houses.get(i / 6),
                            "nest",
                            nests.get(i / 6 * NESTS + i % NESTS),
                            "tunnel",
                            "Row " + i,
                            "found",
                            "alive",
                            "cells",
                            number(60)));
        }
        for (String plant : plants) {
            add("bloom", Map.of("plant", plant, "on_date", day(year, 95), "stage", "first"));
            add("bloom", Map.of("plant", plant, "on_date", day(year, 103), "stage", "full"));
        }
        for (int i = 0; i < 4; i++) {
            add("sighting", Map.of("site", site, "on_date", day(year, 92 + 7 * i), "what", "bird"));
        }
        add("note", Map.of("site", site, "on_date", day(year, 60), "note", "Invented: straightened the post."));
        if (year < FIRST_YEAR + YEARS - 1) {
            for (int visit = 0; visit < VISITS; visit++) {
                addVisit(site, houses.get(visit % HOUSES), year, visit);
            }
        }
    }

    private void addVisit(String site, String house, int year, int visit) {
        add(
                "visit",
                Map.of(
                        "site",
                        site,
                        "house",
                        house,
                        "species",
                        BEE,
                        "on_date",
                        day(year, 92 + 2 * visit),
                        "more_plugged",
                        number(30),
                        "mud",
                        "damp"));
    }

    private void fillWithReadings() {
        int missing = ENTRIES - written;
        for (int i = 0; i < missing; i++) {
            LocalDateTime at = LocalDateTime.of(FIRST_YEAR, 1, 1, 7, 0).plusDays(i / SITES * 9L);
            add(
                    "reading",
                    Map.of(
                            "site", siteIds.get(i % SITES),
                            "place", "shed",
                            "read_at", at.toString(),
                            "temperature_c", number(25)));
            if (waiting.size() == 5000 || i == missing - 1) {
                write("read the thermometers");
            }
        }
    }

    /** Ten loggers, one at each of ten sites, every quarter of an hour. */
    private static String readings() {
        StringBuilder csv = new StringBuilder("site,place,read_at,temperature_c,humidity_percent,logger\r\n");
        for (int i = 0; i < IMPORTED; i++) {
            LocalDateTime at = LocalDateTime.of(2015, 1, 1, 0, 0).plusMinutes(i / 10 * 15L);
            csv.append(siteName(i % 10 * 20)).append(",tunnel,").append(at).append(',');
            csv.append(String.format(Locale.ROOT, "%.1f", 10 + 8 * Math.sin(i * Math.PI / 480)));
            csv.append(",")
                    .append(55 + i % 30)
                    .append(",Logger ")
                    .append(i % 10)
                    .append("\r\n");
        }
        return csv.toString();
    }

    /** A name of a kind of page and an address each. */
    private List<String> pages() {
        List<String> pages = new ArrayList<>();
        for (int i = 0; i < PAGES; i++) {
            String site = URLEncoder.encode(siteName(i * 37 % SITES), StandardCharsets.UTF_8);
            pages.add("records /records?from=" + i % 10 * 20);
            pages.add("visit /records/visit?site=" + site);
            pages.add("share /records/share");
            for (String table : List.of("visit", "reading", "tally", "site", "nest", "measurement")) {
                pages.add("table-" + table + " /records/table/" + table + (i % 4 == 0 ? "" : "?page=" + i % 4 * 5));
                List<String> of = ids.getOrDefault(table, List.of());
                pages.add("entry-" + table + " /records/entry/" + table + "/" + of.get(i * 997 % of.size()));
            }
            pages.add("visits-of-site /records/table/visit?in=" + site);
            pages.add("visits-of-year /records/table/visit?year=" + (FIRST_YEAR + i % YEARS));
            pages.add("new-visit /records/new/visit");
            pages.add("new-tally /records/new/tally");
        }
        return pages;
    }
}
