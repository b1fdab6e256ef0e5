package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonInputs;

/** A season as it stands on a day after the cocoons were put out. */
final class SightDay {
    private SightDay() {}

    /**
     * The season with another today. Days of chill are counted on as if the bees were still cold, which is how a release
     * before today is reckoned back from.
     *
     * @throws Refusal if the cocoons were put out after the day asked about or in another season, or the batches are unlike
     */
    static SeasonInputs of(SeasonInputs inputs, LocalDate released, LocalDate on) {
        if (released.isAfter(on)) {
            throw Refusal.usage(
                    "--released is " + released + ", after the day asked about, " + on + "; expected an earlier day.",
                    "Maybe --on is missing.");
        }
        if (ChronoUnit.DAYS.between(released, on) > MOST_DAYS) {
            throw Refusal.usage(
                    "--released is " + released + ", more than " + MOST_DAYS + " days before " + on
                            + "; expected the release of this season.",
                    "");
        }
        Batch first = inputs.batches().get(0);
        int females = inputs.batches().stream().mapToInt(Batch::females).sum();
        int males = inputs.batches().stream().mapToInt(Batch::males).sum();
        Batch all = new Batch(
                first.species(),
                first.origin(),
                females,
                males,
                first.wintered(),
                chillOn(first.chillDays(), inputs.today(), on),
                first.chillC());
        return new SeasonInputs(
                inputs.site(),
                inputs.weather(),
                inputs.forecast(),
                List.of(all),
                inputs.nests(),
                inputs.plants(),
                inputs.community(),
                inputs.goal(),
                on);
    }

    /** Longest time between release and the day asked about; numerical. */
    private static final long MOST_DAYS = 74;

    private static @Nullable Double chillOn(@Nullable Double chillDays, LocalDate counted, LocalDate on) {
        return chillDays == null
                ? null
                : Double.valueOf(Math.max(0, Objects.requireNonNull(chillDays) + ChronoUnit.DAYS.between(counted, on)));
    }
}
