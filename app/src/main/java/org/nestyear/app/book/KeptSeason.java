package org.nestyear.app.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** The season of one kind of bee at one site in one year as the records tell it, written as a season file. */
public final class KeptSeason {
    private static final String FULL = "full";

    private final BookDesk desk;
    private final Path folder;
    private final Entry site;
    private final String species;
    private final int year;

    private KeptSeason(BookDesk desk, Path folder, Entry site, String species, int year) {
        this.desk = desk;
        this.folder = folder;
        this.site = site;
        this.species = species;
        this.year = year;
    }

    /**
     * A season.
     *
     * @param folder the folder of the records, from which a site's weather table is found
     * @param siteName name of the site
     * @param species Latin name
     * @param year year in which the bees fly
     * @throws Refusal if there is no such site or bee
     */
    public static KeptSeason of(RecordsDesk records, Path folder, String siteName, String species, int year) {
        BookDesk desk = records.desk();
        return new KeptSeason(
                desk, folder, site(desk, siteName), EitherBee.named(species).latinName(), year);
    }

    /** The site called so. */
    static Entry site(BookDesk desk, String called) {
        Sheet sites = Sheets.get("site");
        String id = BookDesk.guarded(() -> Typed.values(Sheets.get("note"), Map.of("site", called), desk.names()))
                .getOrDefault("site", "");
        return desk.find(sites, id).orElseThrow();
    }

    Entry site() {
        return site;
    }

    String species() {
        return species;
    }

    int year() {
        return year;
    }

    /**
     * The season file as it could have been written on a day.
     *
     * @param today the day of the plan; what was written down of later days is left out
     * @param withLaterWeather whether the weather after that day is given as a forecast that came true
     * @throws Refusal if something a plan needs is not in the records
     */
    public TextSource asOf(LocalDate today, boolean withLaterWeather) {
        String text = text(today, withLaterWeather);
        return new Kept("records of " + site.text(Sheet.NAME) + ", " + year, text, folder);
    }

    /** The text of the season file. */
    public String text(LocalDate today, boolean withLaterWeather) {
        StringBuilder toml = new StringBuilder();
        toml.append("# From the records of ")
                .append(site.text(Sheet.NAME))
                .append(", as of ")
                .append(today)
                .append(".\n");
        toml.append("format = 1\n\n[site]\n");
        line(toml, "name", quoted(site.text(Sheet.NAME)));
        line(toml, "latitude", site.text("latitude_deg"));
        line(toml, "longitude", site.text("longitude_deg"));
        line(toml, "elevation_m", site.text("elevation_m").isEmpty() ? "0" : site.text("elevation_m"));
        line(toml, "zone", quoted(site.text("zone")));
        if (!site.text("region").isEmpty()) {
            line(toml, "region", quoted(site.text("region")));
        }
        house(toml);
        weather(toml, withLaterWeather);
        batches(toml, today);
        nests(toml, today);
        plants(toml, today);
        sprays(toml, today);
        toml.append("\n[aim]\n");
        line(toml, "today", today.toString());
        return toml.toString();
    }

    private void house(StringBuilder toml) {
        List<Entry> houses = desk.list(Search.of(Sheets.get("house")).where("site", site.id()));
        for (Entry house : houses) {
            if (!house.text("faces_deg").isEmpty()) {
                line(toml, "faces_deg", house.text("faces_deg"));
                if (!house.text("roof_out_cm").isEmpty()
                        && !house.text("roof_above_cm").isEmpty()) {
                    line(toml, "roof_out_cm", house.text("roof_out_cm"));
                    line(toml, "roof_above_cm", house.text("roof_above_cm"));
                }
                break;
            }
        }
        List<String> points = desk.list(Search.of(Sheets.get("horizon")).where("site", site.id())).stream()
                .sorted(Comparator.comparingDouble(p -> p.number("azimuth_deg").orElse(0)))
                .map(p -> "[" + p.text("azimuth_deg") + ", " + p.text("height_deg") + "]")
                .toList();
        if (!points.isEmpty()) {
            line(toml, "horizon", "[" + String.join(", ", points) + "]");
        }
    }

    private void weather(StringBuilder toml, boolean withLaterWeather) {
        String file = site.text("weather_file");
        if (file.isEmpty()) {
            throw missing("no weather table is told for this site", "its weather_file", "correct site");
        }
        toml.append("\n[weather]\n");
        line(toml, "files", "[" + quoted(file) + "]");
        if (withLaterWeather) {
            line(toml, "forecast", quoted(file));
        }
    }

    private void batches(StringBuilder toml, LocalDate today) {
        List<Entry> batches = desk.list(Search.of(Sheets.get("batch"))
                .where("site", site.id())
                .where("species", species)
                .where("year", Integer.toString(year)));
        if (batches.isEmpty()) {
            throw missing(
                    "no batch of " + species + " is written down for " + year, "one batch at least", "enter batch");
        }
        for (Entry batch : batches) {
            Sexes sexes = Sexes.of(desk, batch);
            toml.append("\n# ")
                    .append(batch.text(Sheet.NAME))
                    .append(": ")
                    .append(sexes.from())
                    .append("\n[[batch]]\n");
            line(toml, "species", quoted(species));
            line(toml, "origin", quoted(batch.text("origin")));
            line(toml, "females", Integer.toString(sexes.females()));
            line(toml, "males", Integer.toString(sexes.males()));
            String wintered = batch.text("wintered");
            if (wintered.isEmpty()) {
                throw missing(
                        "the batch " + batch.text(Sheet.NAME) + " does not tell where it winters",
                        "fridge, shed, outdoors or unopened",
                        "correct batch");
            }
            line(toml, "wintered", quoted(wintered));
            if (wintered.equals("fridge")) {
                LocalDate from = batch.date("cold_from").orElse(null);
                if (from == null || batch.text("cold_c").isEmpty()) {
                    throw missing(
                            "the batch " + batch.text(Sheet.NAME) + " is in the fridge without the day or the cold",
                            "cold_from and cold_c",
                            "correct batch");
                }
                line(toml, "chill_days", Long.toString(Math.max(0, ChronoUnit.DAYS.between(from, today))));
                line(toml, "chill_c", batch.text("cold_c"));
            }
        }
    }

    private void nests(StringBuilder toml, LocalDate today) {
        boolean any = false;
        for (Entry house : desk.list(Search.of(Sheets.get("house")).where("site", site.id()))) {
            for (Entry nest : desk.list(Search.of(Sheets.get("nest")).where("house", house.id()))) {
                boolean there =
                        nest.date("retired_on").map(day -> day.isAfter(today)).orElse(true)
                                && nest.whole("first_year").orElse(year) <= year;
                if (there && !nest.text("length_mm").isEmpty()) {
                    any = true;
                    toml.append("\n# ")
                            .append(house.text(Sheet.NAME))
                            .append(", ")
                            .append(nest.text(Sheet.NAME));
                    toml.append("\n[[nests]]\n");
                    line(toml, "kind", quoted(nest.text("kind")));
                    line(toml, "openable", nest.text("openable").equals("yes") ? "true" : "false");
                    line(toml, "hole_width_mm", nest.text("hole_width_mm"));
                    line(toml, "length_mm", nest.text("length_mm"));
                    line(toml, "count", nest.text("tunnels"));
                }
            }
        }
        if (!any) {
            throw missing("no nest of a known length is written down", "nests with their length", "enter nest");
        }
    }

    private void plants(StringBuilder toml, LocalDate today) {
        for (Entry plant : desk.list(Search.of(Sheets.get("plant")).where("site", site.id()))) {
            boolean target = plant.text("target").equals("yes");
            TreeMap<Integer, LocalDate> full = new TreeMap<>();
            LocalDate first = null;
            LocalDate last = null;
            for (Entry bloom : desk.list(Search.of(Sheets.get("bloom")).where("plant", plant.id()))) {
                LocalDate day = bloom.date("on_date").orElseThrow();
                if (day.isAfter(today)) {
                    continue;
                }
                if (day.getYear() < year && bloom.text("stage").equals(FULL)) {
                    full.put(day.getYear(), day);
                } else if (day.getYear() == year && bloom.text("stage").equals("first")) {
                    first = day;
                } else if (day.getYear() == year && bloom.text("stage").equals("last")) {
                    last = day;
                }
            }
            if (target && full.isEmpty() && (first == null || last == null)) {
                throw missing(
                        "no bloom of " + plant.text(Sheet.NAME) + ", the target, is written down before " + today,
                        "the day of full bloom of a past year",
                        "enter bloom");
            }
            toml.append("\n# bloom seen in ").append(full.size()).append(" past years\n[[plant]]\n");
            line(toml, "name", quoted(plant.text(Sheet.NAME)));
            line(toml, "cover_m2", plant.text("cover_m2"));
            line(toml, "target", target ? "true" : "false");
            if (!plant.text("distance_m").isEmpty()) {
                line(toml, "distance_m", plant.text("distance_m"));
            }
            bloom(toml, full, first, last);
        }
    }

    private static void bloom(
            StringBuilder toml, Map<Integer, LocalDate> full, @Nullable LocalDate first, @Nullable LocalDate last) {
        if (first != null && last != null && !last.isBefore(first)) {
            line(toml, "first_bloom", first.toString());
            line(toml, "last_bloom", last.toString());
        }
        if (!full.isEmpty()) {
            line(toml, "past_bloom", full.values().toString());
        }
    }

    private void sprays(StringBuilder toml, LocalDate today) {
        for (Entry spray : desk.list(
                Search.of(Sheets.get("spray")).where("site", site.id()).between(year + "-01-01", year + "-12-31"))) {
            // One that is known of on the day of the plan lies ahead; what is past changes no plan.
            LocalDate on = spray.date("on_date").orElseThrow();
            if (!on.isBefore(today)
                    && spray.addedAt().toString().substring(0, 10).compareTo(today.toString()) <= 0) {
                toml.append("\n[[spray]]\n");
                line(toml, "date", on.toString());
                line(toml, "what", quoted(spray.text("what").isEmpty() ? "a spray" : spray.text("what")));
            }
        }
    }

    private Refusal missing(String found, String expected, String command) {
        return new Refusal(
                Refusal.Kind.BAD_INPUT,
                "NY-RECORDS-LACK",
                site.text(Sheet.NAME),
                found + "; expected " + expected + ".",
                "Maybe write it down with nestyear " + command + ".");
    }

    private static void line(StringBuilder toml, String key, String value) {
        toml.append(key).append(" = ").append(value).append('\n');
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"', '\\' -> quoted.append('\\').append(c);
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default -> quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    /** A season file that stands in the records, with its weather table on disk. */
    private record Kept(String name, String text, Path folder) implements TextSource {
        @Override
        public boolean exists() {
            return true;
        }

        @Override
        public byte[] bytes() throws IOException {
            return text.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public TextSource beside(String relative) {
            return TextSource.ofFile(folder.resolve(relative));
        }
    }

    /** Lists of a few words as a file name part. */
    static String slug(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** The years in which bees of this kind flew at the site, by what was put out, in order. */
    static List<Integer> yearsFlown(BookDesk desk, Entry site, String species) {
        List<Integer> years = new ArrayList<>();
        for (Entry batch : desk.list(
                Search.of(Sheets.get("batch")).where("site", site.id()).where("species", species))) {
            int year = batch.whole("year").orElseThrow();
            boolean flew = desk.count(Search.of(Sheets.get("release")).where("batch", batch.id())) > 0;
            if (flew && !years.contains(year)) {
                years.add(year);
            }
        }
        years.sort(Comparator.naturalOrder());
        return years;
    }
}
