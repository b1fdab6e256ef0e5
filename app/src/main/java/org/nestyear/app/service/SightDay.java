package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonInputs;

/** A season as it stands on a day after the cocoons were put out. */
final class SightDay {
    /** Longest time between release and the day asked about; numerical. */
    private static final long MOST_DAYS = 74;

    private SightDay() {}

    /**
     * The season with another today. Days of chill are counted on as if the bees were still cold, which is how a release
     * before today is reckoned back from.
     *
     * @throws Refusal if the cocoons were put out after the day asked about or in another season
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
        Batch batch = Batch.together(inputs.batches());
        Double chillDays = batch.chillDays();
        if (chillDays == null) {
            return inputs.withToday(on).withBatches(List.of(batch));
        }
        double chillOn = Math.max(0, chillDays + ChronoUnit.DAYS.between(inputs.today(), on));
        return inputs.withToday(on).withBatches(List.of(batch.withChillDays(chillOn)));
    }
}
