package org.nestyear.checks.forage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.nestyear.core.forage.Breeding;
import org.nestyear.core.forage.EvenLine;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.forage.ForageGap;
import org.nestyear.core.forage.ForageWeek;
import org.nestyear.core.forage.Standing;
import org.nestyear.core.forage.Suggestion;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.PlantStand;
import org.nestyear.data.CatalogueFiles;

/** What must hold of flowers and cells whatever their numbers; invented gardens from fixed seeds. */
class ForagePropertiesTest {
    private static final Flora FLORA = CatalogueFiles.flora();
    private static final LocalDate FROM = LocalDate.of(2015, 4, 20);
    private static final LocalDate TO = LocalDate.of(2015, 6, 14);
    private static final int GARDENS = 200;

    private static Site site(double latitude, double longitude, @Nullable Region region) {
        return new Site("Invented", latitude, longitude, 0, ZoneOffset.UTC, null, List.of(), null, region);
    }

    private static Site east() {
        return site(41, -74, null);
    }

    private static List<Plant> garden(Random random) {
        List<Plant> plants = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            LocalDate first = FROM.plusDays(random.nextInt(50) - 15L);
            plants.add(plant(
                    FLORA.plants().get(random.nextInt(FLORA.plants().size())).name(),
                    random.nextDouble() * 200,
                    first,
                    first.plusDays(5 + random.nextInt(30)),
                    random.nextBoolean() ? null : random.nextDouble() * 350));
        }
        return plants;
    }

    private static Plant plant(String name, double cover, LocalDate first, LocalDate last, @Nullable Double distance) {
        return new Plant(
                name,
                cover,
                true,
                new BloomDates.Dated(first, last),
                List.of(),
                new PlantStand(null, distance, null, false));
    }

    private static Plant withCover(Plant plant, double cover) {
        return new Plant(plant.name(), cover, true, plant.bloom(), List.of(), plant.stand());
    }

    private static Forage forage(List<Plant> plants, double cells) {
        return forage(plants, cells, null);
    }

    private static Forage forage(List<Plant> plants, double cells, @Nullable CommunityBloom other) {
        return Forage.of(plants, east(), FLORA, false, EvenLine.of(plants, other, FROM, TO, cells));
    }

    private static double[] middles(Forage forage) {
        return forage.weeks().stream().mapToDouble(w -> w.ratio().middle()).toArray();
    }

    @Test
    void moreCoverNeverOpensAGap() {
        Random random = new Random(20_260_101);
        int gaps = 0;
        for (int i = 0; i < GARDENS; i++) {
            List<Plant> small = garden(random);
            double more = 1 + random.nextDouble() * 5;
            List<Plant> large =
                    small.stream().map(p -> withCover(p, p.coverM2() * more)).toList();
            double cells = 0.1 + random.nextDouble() * 30;
            List<ForageWeek> before = forage(small, cells).weeks();
            List<ForageWeek> after = forage(large, cells).weeks();
            assertThat(after).hasSameSizeAs(before).hasSize(8);
            for (int w = 0; w < before.size(); w++) {
                assertThat(after.get(w).fed()).isLessThanOrEqualTo(before.get(w).fed());
                gaps += before.get(w).fed().isGap() ? 1 : 0;
            }
        }
        assertThat(gaps).isGreaterThan(GARDENS);
    }

    @Test
    void noBeesWantNothing() {
        Random random = new Random(7);
        for (int i = 0; i < GARDENS; i++) {
            Forage none = forage(garden(random), 0);
            assertThat(none.weeks()).isEmpty();
            assertThat(none.gaps()).isEmpty();
        }
    }

    @Test
    void twiceTheBeesAndTwiceTheFlowersAreTheSameRatio() {
        Random random = new Random(11);
        double sum = 0;
        for (int i = 0; i < GARDENS; i++) {
            List<Plant> one = garden(random);
            List<Plant> two =
                    one.stream().map(p -> withCover(p, 2 * p.coverM2())).toList();
            double[] single = middles(forage(one, 5));
            double[] twice = middles(forage(two, 10));
            double[] hungry = middles(forage(one, 10));
            for (int w = 0; w < single.length; w++) {
                assertThat(twice[w]).isCloseTo(single[w], within(1e-9 * (1 + single[w])));
                assertThat(hungry[w]).isCloseTo(single[w] / 2, within(1e-9 * (1 + single[w])));
                sum += single[w];
            }
        }
        assertThat(sum).isPositive();
    }

    @Test
    void fartherPlantsCountLess() {
        Random random = new Random(3);
        for (int i = 0; i < GARDENS; i++) {
            double cover = 1 + random.nextDouble() * 100;
            double[] at = new double[4];
            double[] metres = {0, 150, 300, 301};
            for (int k = 0; k < at.length; k++) {
                at[k] = forage(List.of(plant("apple", cover, FROM, TO, metres[k])), 5)
                        .weeks()
                        .get(3)
                        .fromPlants()
                        .middle();
            }
            assertThat(at[0]).isPositive().isEqualTo(at[1]);
            assertThat(at[2]).isCloseTo(at[0] / 2, within(1e-9 * at[0]));
            assertThat(at[3]).isZero();
        }
    }

    @Test
    void otherBloomFeedsItsShare() {
        CommunityBloom half = new CommunityBloom(FROM.minusDays(60), FROM.plusDays(20), TO.plusDays(90), 0.5);
        Forage alone = forage(List.of(plant("apple", 0.001, FROM, TO, null)), 5);
        Forage with = forage(List.of(plant("apple", 0.001, FROM, TO, null)), 5, half);
        for (int w = 0; w < alone.weeks().size(); w++) {
            double other = with.weeks().get(w).fromOther();
            assertThat(other / with.weeks().get(w).cells()).isBetween(0.2, 0.5);
            assertThat(with.weeks().get(w).ratio().middle())
                    .isGreaterThan(alone.weeks().get(w).ratio().middle());
        }
    }

    /** Native plants come first, no hybrid or double is suggested, none that runs wild, and the area named closes the gap. */
    @Test
    void whatIsSuggestedClosesTheGap() {
        int suggestions = 0;
        for (Site site : List.of(
                east(),
                site(45, -122, null),
                site(52, 0, null),
                site(49, 9, null),
                site(40, 0, Region.CENTRAL_EUROPE))) {
            for (boolean leafcutter : List.of(false, true)) {
                LocalDate from = leafcutter ? LocalDate.of(2015, 7, 1) : FROM;
                List<Plant> plants = List.of(plant("Nonesuch", 0.001, from, from.plusDays(9), null));
                Forage forage = Forage.of(
                        plants, site, FLORA, leafcutter, EvenLine.of(plants, null, from, from.plusDays(30), 4));
                assertThat(forage.gaps()).hasSize(1);
                ForageGap gap = forage.gaps().get(0);
                assertThat(gap.suggestions()).as(site + " " + leafcutter).isNotEmpty();
                for (int i = 0; i < gap.suggestions().size(); i++) {
                    Suggestion each = gap.suggestions().get(i);
                    assertThat(each.plant().breeding()).isEqualTo(Breeding.PLAIN);
                    assertThat(each.standing()).isLessThan(Standing.WILD);
                    assertThat(
                                    leafcutter
                                            ? each.plant().leafcutter()
                                            : each.plant().mason())
                            .isTrue();
                    if (i > 0) {
                        assertThat(each.standing())
                                .isGreaterThanOrEqualTo(
                                        gap.suggestions().get(i - 1).standing());
                    }
                    assertThat(closed(each, site, plants, leafcutter, from))
                            .as(each.toString())
                            .isGreaterThanOrEqualTo(each.weeks());
                    suggestions++;
                }
            }
        }
        assertThat(suggestions).isGreaterThan(30);
    }

    private static long closed(Suggestion each, Site site, List<Plant> plants, boolean leafcutter, LocalDate from) {
        double area = Objects.requireNonNull(each.areaM2()).middle();
        List<Plant> more = new ArrayList<>(plants);
        // The list's bloom has its peak where it likes; told dates have it in the middle, so the bloom is told
        // symmetrical.
        more.add(plant(each.plant().name(), 0, from, from, null));
        Forage bare = Forage.of(more, site, FLORA, leafcutter, EvenLine.of(more, null, from, from.plusDays(30), 4));
        long closed = 0;
        for (ForageWeek week : bare.weeks()) {
            double days = 0;
            for (int d = 0; d < 7; d++) {
                days += each.bloom().height(week.from().plusDays(d));
            }
            double fed = days * area * bare.plants().get(1).yield().cellsM2().middle()
                    + week.supply().middle();
            closed += fed >= week.cells() * (1 - 1e-9) ? 1 : 0;
        }
        return closed;
    }

    @Test
    void leavesAreNamedWhereNoneAreTold() {
        LocalDate july = LocalDate.of(2015, 7, 1);
        List<Plant> none = List.of(plant("apple", 10, july, july.plusDays(9), null));
        List<Plant> rose = List.of(plant("dog rose", 10, july, july.plusDays(9), 20.0));
        Forage without = Forage.of(none, east(), FLORA, true, EvenLine.of(none, null, july, july.plusDays(20), 2));
        Forage with = Forage.of(rose, east(), FLORA, true, EvenLine.of(rose, null, july, july.plusDays(20), 2));
        assertThat(without.leafPlants()).isEmpty();
        assertThat(without.leafSuggestions())
                .isNotEmpty()
                .allMatch(s -> s.plant().leaf());
        assertThat(with.leafPlants()).hasSize(1);
        assertThat(with.leafSuggestions()).isEmpty();
    }

    @Test
    void aPlaceFarFromAllRegionsGetsNoNames() {
        List<Plant> plants = List.of(plant("apple", 0.01, FROM, TO, null));
        Forage far = Forage.of(plants, site(-40, 175, null), FLORA, false, EvenLine.of(plants, null, FROM, TO, 4));
        assertThat(far.region()).isNull();
        assertThat(far.gaps()).isNotEmpty().allMatch(gap -> gap.suggestions().isEmpty());
    }
}
