package org.nestyear.app.book;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.species.Species;
import org.nestyear.data.exchange.Blur;
import org.nestyear.data.exchange.Coordinates;
import org.nestyear.data.exchange.DarwinCoreArchive;
import org.nestyear.data.exchange.Disclosure;
import org.nestyear.data.exchange.GeoJson;
import org.nestyear.data.exchange.Licence;
import org.nestyear.data.exchange.NestOccurrence;
import org.nestyear.data.exchange.NestOccurrence.Found;
import org.nestyear.data.exchange.NestTaxon;
import org.nestyear.data.exchange.PlacedPlant;
import org.nestyear.data.exchange.PlacedSite;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** The records in the open forms of others: places as GeoJSON, bees in nests as Darwin Core. Places are blurred unless asked. */
public final class OpenFiles {
    private static final String ALIVE = "alive";

    private final BookDesk desk;

    public OpenFiles(RecordsDesk records) {
        this.desk = records.desk();
    }

    /** How much may be given away, by the word a keeper says. */
    public static Disclosure disclosure(String blur) {
        return switch (blur) {
            case "exact" -> Disclosure.all();
            case "1km" -> new Disclosure(Blur.ONE_KM, false, false);
            case "10km", "" -> Disclosure.careful();
            case "100km" -> new Disclosure(Blur.HUNDRED_KM, false, false);
            default ->
                throw Refusal.usage("--places is \"" + blur + "\"; expected one of exact, 1km, 10km, 100km.", "");
        };
    }

    /**
     * Sites and plants as GeoJSON.
     *
     * @param places {@code exact}, {@code 1km}, {@code 10km} or {@code 100km}
     */
    public String geoJson(String places) {
        Map<String, PlacedSite> sites = sites();
        List<PlacedPlant> plants = new ArrayList<>();
        for (Entry plant : desk.list(Search.of(Sheets.get("plant")))) {
            plants.add(plant(plant, sites));
        }
        return GeoJson.write(List.copyOf(sites.values()), plants, disclosure(places));
    }

    /**
     * Writes that as a file.
     *
     * @throws Refusal if something of that name is there, or it cannot be written
     */
    public void writeGeoJson(Path file, String places) {
        byte[] text = geoJson(places).getBytes(StandardCharsets.UTF_8);
        RecordsDesk.toFile(file, out -> {
            out.write(text);
            return text.length;
        });
    }

    /**
     * Opened nests and plugged tunnels as a Darwin Core Archive.
     *
     * @param places {@code exact}, {@code 1km}, {@code 10km} or {@code 100km}
     * @param today day of writing
     * @return how many occurrences
     */
    public int darwinCore(String places, LocalDate today, OutputStream to) throws IOException {
        Disclosure disclosure = disclosure(places);
        Map<String, PlacedSite> sites = sites();
        List<NestOccurrence> seen = new ArrayList<>(opened(sites));
        seen.addAll(plugged(sites));
        DarwinCoreArchive.write(
                seen,
                new DarwinCoreArchive.Dataset(
                        NestOccurrence.idOf("dataset", desk.owner()).toString(),
                        "Cavity-nesting bees in kept nests",
                        "Bees found in nests of managed stock that were opened, and tunnels plugged, as a keeper counted"
                                + " them.",
                        null,
                        today,
                        Licence.CC_BY),
                disclosure,
                to);
        return seen.size();
    }

    /**
     * Writes that as a file.
     *
     * @throws Refusal if something of that name is there, or it cannot be written
     */
    public int writeDarwinCore(Path file, String places, LocalDate today) {
        disclosure(places);
        return RecordsDesk.toFile(file, out -> darwinCore(places, today, out));
    }

    private Map<String, PlacedSite> sites() {
        Map<String, Double> faces = new HashMap<>();
        for (Entry house : desk.list(Search.of(Sheets.get("house")))) {
            house.number("faces_deg").ifPresent(deg -> faces.putIfAbsent(house.text("site"), deg));
        }
        Map<String, PlacedSite> sites = new LinkedHashMap<>();
        for (Entry site : desk.list(Search.of(Sheets.get("site")))) {
            sites.put(
                    site.id(),
                    new PlacedSite(
                            site.id(),
                            site.text(Sheet.NAME),
                            new Coordinates(
                                    site.number("latitude_deg").orElseThrow(),
                                    site.number("longitude_deg").orElseThrow()),
                            null,
                            boxed(site, "elevation_m"),
                            faces.get(site.id())));
        }
        return sites;
    }

    private PlacedPlant plant(Entry plant, Map<String, PlacedSite> sites) {
        TreeMap<Integer, Map<String, LocalDate>> years = new TreeMap<>();
        for (Entry bloom : desk.list(Search.of(Sheets.get("bloom")).where("plant", plant.id()))) {
            LocalDate day = bloom.date("on_date").orElseThrow();
            years.computeIfAbsent(day.getYear(), year -> new HashMap<>()).put(bloom.text("stage"), day);
        }
        List<PlacedPlant.SeenBloom> blooms = new ArrayList<>();
        years.values()
                .forEach(days ->
                        blooms.add(new PlacedPlant.SeenBloom(days.get("first"), days.get("full"), days.get("last"))));
        return new PlacedPlant(
                plant.id(),
                Objects.requireNonNull(sites.get(plant.text("site"))),
                plant.text(Sheet.NAME),
                null,
                boxed(plant, "cover_m2"),
                plant.text("target").equals("yes"),
                boxed(plant, "distance_m"),
                null,
                blooms);
    }

    // One occurrence for each nest, block or house of an opening.
    private List<NestOccurrence> opened(Map<String, PlacedSite> sites) {
        Names names = desk.names();
        List<NestOccurrence> all = new ArrayList<>();
        for (Entry opening : desk.list(Search.of(Sheets.get("opening")))) {
            Map<String, Counted> nests = new LinkedHashMap<>();
            desk.book()
                    .each(
                            desk.owner(),
                            Search.of(Sheets.get("tally")).where("opening", opening.id()),
                            tally -> nests.computeIfAbsent(
                                            tally.text("house") + "\n" + tally.text("nest") + "\n"
                                                    + tally.text("tunnel"),
                                            key -> new Counted(tally))
                                    .take(tally));
            nests.forEach((key, counted) -> all.add(new NestOccurrence(
                    NestOccurrence.idOf(opening.id(), key),
                    Objects.requireNonNull(sites.get(opening.text("site"))),
                    counted.house.isEmpty() ? null : names.name("house", counted.house),
                    counted.nest.isEmpty() ? null : names.name("nest", counted.nest),
                    taxon(opening.text("species")),
                    opening.date("on_date").orElseThrow(),
                    opening.date("on_date").orElseThrow(),
                    NestOccurrence.Stock.MANAGED,
                    NestOccurrence.NativeHere.NOT_TOLD,
                    null,
                    new Found(null, counted.cells, null, null, counted.alive, counted.losses),
                    width(counted.nest),
                    opening.who(),
                    opening.changedAt())));
        }
        return all;
    }

    /** What was found in one nest. */
    private static final class Counted {
        private final String house;
        private final String nest;
        private int cells;
        private int alive;
        private final Map<Cause, Integer> losses = new EnumMap<>(Cause.class);

        Counted(Entry first) {
            this.house = first.text("house");
            this.nest = first.text("nest");
        }

        void take(Entry tally) {
            int number = tally.whole("cells").orElse(0);
            cells += number;
            if (tally.text("found").equals(ALIVE)) {
                alive += number;
            }
            for (Cause cause : Cause.values()) {
                if (cause.word().equals(tally.text("found"))) {
                    losses.merge(cause, number, Integer::sum);
                }
            }
        }
    }

    private List<NestOccurrence> plugged(Map<String, PlacedSite> sites) {
        Names names = desk.names();
        List<NestOccurrence> all = new ArrayList<>();
        for (Entry visit : desk.list(Search.of(Sheets.get("visit")))) {
            if (visit.text("species").isEmpty() || visit.whole("more_plugged").isEmpty()) {
                continue;
            }
            String house = visit.text("house");
            LocalDate day = visit.date("on_date").orElseThrow();
            all.add(new NestOccurrence(
                    UUID.fromString(visit.id()),
                    Objects.requireNonNull(sites.get(visit.text("site"))),
                    house.isEmpty() ? null : names.name("house", house),
                    null,
                    taxon(visit.text("species")),
                    day,
                    day,
                    NestOccurrence.Stock.MANAGED,
                    NestOccurrence.NativeHere.NOT_TOLD,
                    null,
                    Found.plugged(visit.whole("more_plugged").orElse(0)),
                    null,
                    visit.who(),
                    visit.changedAt()));
        }
        return all;
    }

    private static NestTaxon taxon(String latinName) {
        Species bee = EitherBee.named(latinName);
        return NestTaxon.bee(bee.latinName(), bee.commonName());
    }

    private @Nullable Double width(String nest) {
        return nest.isEmpty()
                ? null
                : desk.find(Sheets.get("nest"), nest)
                        .map(entry -> boxed(entry, "hole_width_mm"))
                        .orElse(null);
    }

    private static @Nullable Double boxed(Entry entry, String column) {
        return entry.number(column).isPresent()
                ? Double.valueOf(entry.number(column).orElseThrow())
                : null;
    }
}
