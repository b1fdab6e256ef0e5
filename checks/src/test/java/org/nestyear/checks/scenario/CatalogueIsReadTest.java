package org.nestyear.checks.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.release.Draft;
import org.nestyear.core.advice.sight.SightCase;
import org.nestyear.core.advice.winter.StoreAir;
import org.nestyear.core.advice.winter.WinterCheck;
import org.nestyear.core.bloom.hourly.ChillingHours;
import org.nestyear.core.bloom.hourly.UtahUnits;
import org.nestyear.core.place.Site;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.Hindcast;
import org.nestyear.core.release.Seen;
import org.nestyear.core.release.SightCheck;
import org.nestyear.core.release.Sighting;
import org.nestyear.core.release.TorchCheck;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.core.winter.PreWinter;
import org.nestyear.data.CatalogueFiles;

/** No number of the shipped tables is dead: every row is read on the way to some answer. */
@Tag("regression")
class CatalogueIsReadTest {
    /** Read before any answer, to refuse bees outside their range, and therefore in no answer's list. */
    private static final Set<String> RANGE = Set.of(
            "range_lat_low",
            "range_lat_high",
            "range_lon_low",
            "range_lon_high",
            "range2_lat_low",
            "range2_lat_high",
            "range2_lon_low",
            "range2_lon_high");

    private static Set<String> readByHindcast() {
        Draft draft = Draft.washington();
        ReadLog read = new ReadLog(draft.bees().parameters());
        Map<Integer, LocalDate> blooms = new TreeMap<>(ReferenceWeather.cherryPeaks());
        blooms.keySet().removeIf(year -> year < 2010);
        new Hindcast(draft.inputs(), draft.weather, blooms, read, draft.bees().parameters()).run(MonthDay.of(3, 1));
        Set<String> ids = new TreeSet<>();
        read.read().forEach(row -> ids.add(row.id()));
        return ids;
    }

    /** Chill as growers count it: read by the small questions, not by a plan, whose models count portions. */
    private static Set<String> readByTheSumsOfChill() {
        ReadLog read = new ReadLog(CatalogueFiles.bloomModels());
        ChillingHours.of(read);
        UtahUnits.of(read);
        Set<String> ids = new TreeSet<>();
        read.read().forEach(row -> ids.add(row.id()));
        return ids;
    }

    /** Read by the question about a winter store, not by a plan. */
    private static Set<String> readByTheWinter() {
        Set<String> ids = new TreeSet<>();
        for (Species species : CatalogueFiles.load().species()) {
            double[] hourlyC = new double[24];
            Arrays.fill(hourlyC, 30);
            WinterCheck warm = WinterCheck.of(
                    species.parameters(),
                    Wintered.FRIDGE,
                    new WinterCheck.Before(400, 9),
                    hourlyC,
                    0,
                    new StoreAir(90, null));
            warm.basis().forEach(row -> ids.add(row.id()));
            warm.findings().forEach(finding -> finding.basis().forEach(row -> ids.add(row.id())));
            ReadLog read = new ReadLog(species.parameters());
            PreWinter.of(read);
            read.read().forEach(row -> ids.add(row.id()));
        }
        return ids;
    }

    /** Read by the question whether a sighting is normal. */
    private static Set<String> readByTheSighting() {
        Draft draft = Draft.washington();
        ReadLog read = new ReadLog(draft.bees().parameters());
        WeatherRecord known = GapFilling.fill(
                        draft.inputs().weather().upTo(draft.inputs().today()).orElseThrow())
                .weather();
        Sighting none = SightCheck.of(
                draft.inputs(),
                known,
                draft.bees().parameters(),
                read,
                draft.inputs().today().minusDays(3),
                Seen.FEMALES);
        TorchCheck.of(
                draft.inputs(),
                known,
                draft.bees().parameters(),
                read,
                draft.inputs().today().minusDays(3),
                List.of(0));
        Set<String> ids = new TreeSet<>();
        read.read().forEach(row -> ids.add(row.id()));
        Site site = draft.inputs().site();
        SeasonInputs turned = draft.inputs()
                .withSite(new Site(
                        site.name(),
                        site.latitudeDeg(),
                        site.longitudeDeg(),
                        site.elevationM(),
                        site.zone(),
                        0.0,
                        List.of()));
        new SightCase(turned, draft.bees(), none)
                .causes()
                .forEach(cause -> cause.basis().forEach(row -> ids.add(row.id())));
        return ids;
    }

    @Test
    void everyRowIsReadBySomeAnswer() {
        Map<String, Set<String>> read = new TreeMap<>();
        for (Plan plan : Situations.plans()) {
            Set<String> ids = read.computeIfAbsent(plan.species().latinName(), name -> new TreeSet<>());
            plan.basis().forEach(row -> ids.add(row.id()));
        }
        Set<String> byAny = new TreeSet<>(readByHindcast());
        byAny.addAll(readByTheSumsOfChill());
        byAny.addAll(readByTheWinter());
        byAny.addAll(readByTheSighting());
        read.values().forEach(byAny::addAll);
        List<Species> all = CatalogueFiles.load().species();
        assertThat(read.keySet()).hasSameSizeAs(all);
        int rows = 0;
        for (Species species : all) {
            for (Parameter row : species.parameters().rows()) {
                if (!RANGE.contains(row.id())) {
                    assertThat(byAny).as("rows read").contains(row.id());
                    rows++;
                }
            }
            // What a species has of its own is read for that species.
            assertThat(read.get(species.latinName()))
                    .contains(
                            "readiness_need_f",
                            "readiness_need_m",
                            "gate_base_f_c",
                            "gate_base_m_c",
                            "gate_need_f",
                            "gate_need_m",
                            "flight_air_c",
                            "hole_width_mm",
                            "hole_width_narrowest_mm",
                            "tunnel_length_mm");
        }
        System.out.println(rows + " rows of " + all.size() + " species are read");
        assertThat(rows).isGreaterThan(300);
    }

    /** Every answer's list holds rows of the catalogue as shipped, each once. */
    @Test
    void answersListShippedRowsOnce() {
        for (Plan plan : Situations.plans()) {
            List<Parameter> shipped =
                    new ArrayList<>(plan.species().parameters().rows());
            shipped.addAll(CatalogueFiles.flora().numbers().rows());
            assertThat(plan.basis()).doesNotHaveDuplicates().isSubsetOf(shipped);
            assertThat(plan.basis().size()).isGreaterThan(50);
        }
    }

    /** The season's frame begins with the autumn in which the first cold may be counted. */
    @Test
    void coldIsCountedWithinTheSeason() {
        for (Species species : CatalogueFiles.load().species()) {
            SeasonFrame frame = SeasonFrame.ofYear(2013);
            LocalDate start = frame.ofDayOfYear(species.parameters().value("cold_start_day"));
            assertThat(start).isEqualTo(LocalDate.of(2012, 12, 1));
            assertThat(frame.index(start)).isPositive();
        }
    }
}
