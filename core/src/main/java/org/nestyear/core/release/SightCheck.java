package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.stats.DrawnParameters;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Holds a sighting against what is to be expected: draws of the uncertain numbers, each run through this spring's weather so
 * far and, beyond today, springs of the past.
 */
public final class SightCheck {
    /** Draws of the uncertain numbers; numerical. */
    private static final int DRAWS = 100;
    /** Members run under each; numerical. */
    private static final int MEMBERS = 3;
    /** Days after the release that are looked at; numerical. */
    private static final int DAYS = 75;
    /** Chance that marks the early end of the band; numerical. */
    private static final double EARLY = 0.9;

    private static final double HALF = 0.5;
    /** Chance under which a sighting is unusual; numerical. */
    private static final double UNUSUAL = 0.05;
    /** The clock early, right, and late by its error; numerical. */
    private static final int THREE = 3;
    /** Share of them that a keeper who looks once a day notices; numerical. */
    private static final double NOTICED = 0.1;
    /** Days over which flight is looked back at; numerical. */
    private static final int WEEK = 7;

    private SightCheck() {}

    /**
     * Checks a sighting.
     *
     * @param inputs the season, with the day asked about as its today and days of chill counted on that day as if the bees
     *     were still in the cold
     * @param known weather up to that day, its gaps filled
     * @param released day on which they were put out, not after that day
     * @throws NoAnswerException if no past year covers the rest of the season, or it is over
     */
    public static Sighting of(
            SeasonInputs inputs,
            WeatherRecord known,
            ParameterTable table,
            ParameterReader parameters,
            LocalDate released,
            Seen seen) {
        SeasonSetup setup = new SeasonSetup(inputs, known, parameters, ModelSettings.of(parameters, inputs.nests()));
        double[] chance = new double[DAYS];
        int off = (int) Math.max(1, Math.round(parameters.value("sight_error_days")));
        double settlers = 0;
        int runs = 0;
        List<MemberModel> last = new ArrayList<>();
        for (int draw = 1; draw <= DRAWS; draw++) {
            ModelSettings settings = ModelSettings.of(new DrawnParameters(table, draw), inputs.nests());
            last = setup.someMembers(settings, MEMBERS, draw);
            for (MemberModel member : last) {
                int release = member.weather().index(released);
                member.release(release);
                double all = expected(member, member.weather().days(), seen);
                for (int d = 0; d < DAYS; d++) {
                    for (int late = -off; late <= off; late += off) {
                        chance[d] += fewer(noticed(all), expected(member, release + d - late, seen));
                    }
                }
                settlers += THREE * member.settled(0);
                runs += THREE;
            }
        }
        for (int d = 0; d < DAYS; d++) {
            chance[d] /= runs;
        }
        int today = (int) Math.min(DAYS - 1L, inputs.today().toEpochDay() - released.toEpochDay());
        MemberModel any = last.get(0);
        int now = any.weather().index(inputs.today());
        return new Sighting(
                seen,
                released,
                inputs.today(),
                chance[today],
                below(chance, EARLY, released),
                below(chance, HALF, released),
                below(chance, UNUSUAL, released),
                any.flightlessDays(now - WEEK + 1, now + 1),
                settlers / runs);
    }

    /** Bees or nests that a keeper notices: a tenth of all, and one at least. */
    private static int noticed(double all) {
        return Math.max(1, (int) Math.ceil(NOTICED * all));
    }

    /** Chance of fewer than {@code count} where {@code expected} are, by Poisson's law. */
    private static double fewer(int count, double expected) {
        double term = Math.exp(-expected);
        double sum = 0;
        for (int n = 0; n < count; n++) {
            sum += term;
            term *= expected / (n + 1);
        }
        return Math.min(1, sum);
    }

    private static double expected(MemberModel member, int day, Seen seen) {
        return switch (seen) {
            case NOTHING -> member.femalesBy(day) + member.malesBy(day);
            case MALES -> member.femalesBy(day);
            case FEMALES -> member.settledBy(0, day);
        };
    }

    private static @Nullable LocalDate below(double[] chance, double limit, LocalDate released) {
        for (int d = 0; d < chance.length; d++) {
            if (chance[d] < limit) {
                return released.plusDays(d);
            }
        }
        return null;
    }
}
