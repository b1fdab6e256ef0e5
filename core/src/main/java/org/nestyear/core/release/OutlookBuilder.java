package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.species.Sex;
import org.nestyear.core.stats.Quantiles;

/** Collects what is to be seen after a release over all possible seasons. */
final class OutlookBuilder {
    /** Share of bees out that counts as the first, and lower end of a band; numerical. */
    private static final double TENTH = 0.1;

    private static final double HALF = 0.5;
    /** Share of bees out that counts as most, and upper end of a band; numerical. */
    private static final double NINE_TENTHS = 0.9;
    /** Share of all cells built when nesting counts as over; numerical. */
    private static final double MOST_CELLS = 0.95;

    private final int spellDays;
    private final int spellWithinDays;
    private final List<Double> firstMales = new ArrayList<>();
    private final List<Double> halfMales = new ArrayList<>();
    private final List<Double> firstFemales = new ArrayList<>();
    private final List<Double> halfFemales = new ArrayList<>();
    private final List<Double> mostFemales = new ArrayList<>();
    private final List<Double> bloom = new ArrayList<>();
    private final List<Double> bloomEnd = new ArrayList<>();
    private final List<Double> lastNesting = new ArrayList<>();
    private final List<Double> cells = new ArrayList<>();
    private final List<Double> daughters = new ArrayList<>();
    private final List<Double> sons = new ArrayList<>();
    private final List<Double> tunnels = new ArrayList<>();
    private final List<Double> noneSettles = new ArrayList<>();
    private final List<Double> unmated = new ArrayList<>();
    private final List<Double> inStore = new ArrayList<>();
    private final List<Double> malesInStore = new ArrayList<>();
    private final List<Double> coldSpells = new ArrayList<>();
    private final List<Double> missed = new ArrayList<>();

    /**
     * Begins an outlook.
     *
     * @param spellDays flightless days in a row that make a cold spell
     * @param spellWithinDays days after release in which a cold spell is looked for
     */
    OutlookBuilder(int spellDays, int spellWithinDays) {
        this.spellDays = spellDays;
        this.spellWithinDays = spellWithinDays;
    }

    /** Adds every course of a member, released on {@code date}. */
    void add(MemberModel member, LocalDate date) {
        SeasonWeather weather = member.weather();
        int release = weather.index(date);
        inStore.add(shareInStore(member.times(Sex.FEMALE, release)));
        malesInStore.add(shareInStore(member.times(Sex.MALE, release)));
        double firstOut =
                addTimes(weather, member.times(Sex.MALE, release), firstMales, halfMales, new ArrayList<>())[0];
        double half = addTimes(weather, member.times(Sex.FEMALE, release), firstFemales, halfFemales, mostFemales)[1];
        // Only a spell that meets bees on the wing or about to be is one to sit tight through.
        int spell = member.longestFlightless(Math.max(release, (int) firstOut), release + spellWithinDays);
        coldSpells.add(spell >= spellDays ? 1.0 : 0.0);
        member.release(release);
        for (int k = 0; k < member.courses(); k++) {
            double middle = member.food(k).targetMiddle();
            bloom.add(middle + weather.date(0).toEpochDay());
            bloomEnd.add(member.bloomEnd(k) + weather.date(0).toEpochDay());
            missed.add(half > member.bloomEnd(k) ? 1.0 : 0.0);
            NestingResult run = member.nest(k);
            unmated.add(member.unmated());
            cells.add(run.cells());
            daughters.add(run.daughters());
            sons.add(run.sons());
            tunnels.add(run.tunnelsUsed());
            lastNesting.add(Math.max(release, run.dayOfShare(MOST_CELLS))
                    + (double) weather.date(0).toEpochDay());
        }
        addOdds(member);
    }

    private void addOdds(MemberModel member) {
        int females = member.stock().batch().females();
        boolean room = member.hasTunnels();
        for (int k = 0; k < member.courses(); k++) {
            double each = females == 0 || !room ? 0 : Math.min(1, member.settled(k) / females);
            noneSettles.add(Math.pow(1 - each, females));
        }
    }

    /** Notes when a tenth, half and nine tenths of the bees are out; returns the first two, in days of the member. */
    private static double[] addTimes(
            SeasonWeather weather, double[] times, List<Double> first, List<Double> half, List<Double> most) {
        double[] out = Arrays.stream(times)
                .filter(t -> t != EmergenceClock.IN_STORE && t != EmergenceClock.NOT_YET)
                .toArray();
        if (out.length == 0) {
            return new double[] {weather.days(), weather.days()};
        }
        double zero = weather.date(0).toEpochDay();
        double early = Quantiles.of(out, TENTH);
        first.add(zero + early);
        double middle = Quantiles.of(out, HALF);
        half.add(zero + middle);
        most.add(zero + Quantiles.of(out, NINE_TENTHS));
        return new double[] {early, middle};
    }

    private static double shareInStore(double[] times) {
        return Arrays.stream(times)
                .map(t -> t == EmergenceClock.IN_STORE ? 1 : 0)
                .average()
                .orElse(0);
    }

    /** Share of seasons in which target bloom is over before half the females are out. */
    double missedBloom() {
        return mean(missed);
    }

    /**
     * The outlook over everything added.
     *
     * @param odds what was counted bee by bee, where it was
     * @throws NoAnswerException if in no season a female or male comes out after the release
     */
    Outlook build(@Nullable WholeBeeOdds odds) {
        if ((halfFemales.isEmpty() || halfMales.isEmpty()) && mean(inStore) + mean(malesInStore) > HALF) {
            throw new NoAnswerException(
                    "NY-PLAN-OUT-IN-STORE",
                    "In a store this warm for this long most males or females leave their cocoons before they are put"
                            + " out; look into the box today, and put out what is alive if anything is in bloom.");
        }
        if (halfFemales.isEmpty() || halfMales.isEmpty()) {
            throw new NoAnswerException(
                    "NY-PLAN-NOT-OUT",
                    "On no weather year do these bees come out before the end of August: they have had too little"
                            + " cold, or the days are too cool.");
        }
        return new Outlook(
                range(firstMales),
                range(halfMales),
                range(firstFemales),
                range(halfFemales),
                range(mostFemales),
                range(bloom),
                range(bloomEnd),
                range(lastNesting),
                mean(cells),
                mean(daughters),
                Quantiles.of(array(daughters), TENTH),
                Quantiles.of(array(daughters), NINE_TENTHS),
                mean(sons),
                mean(tunnels),
                mean(unmated),
                mean(inStore),
                mean(malesInStore),
                mean(coldSpells),
                odds == null ? mean(noneSettles) : odds.noneSettles());
    }

    private static DateRange range(List<Double> epochDays) {
        double[] days = array(epochDays);
        return new DateRange(
                LocalDate.ofEpochDay((long) Math.floor(Quantiles.of(days, TENTH))),
                LocalDate.ofEpochDay((long) Math.floor(Quantiles.of(days, HALF))),
                LocalDate.ofEpochDay((long) Math.floor(Quantiles.of(days, NINE_TENTHS))));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
