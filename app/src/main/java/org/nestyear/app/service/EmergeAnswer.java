package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Parameter;

/**
 * When bees leave their cocoons.
 *
 * @param lastDay last day of the weather read, or null under one temperature
 * @param filledDays days of missing temperatures that were filled
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the weather, the catalogue or the version
 */
public record EmergeAnswer(
        EmergeQuestion question,
        OneSex female,
        OneSex male,
        @Nullable LocalDate lastDay,
        long filledDays,
        List<Parameter> basis,
        String fingerprint) {
    public EmergeAnswer {
        basis = List.copyOf(basis);
    }

    /** True when every asked number could be given. */
    public boolean isComplete() {
        return female.isComplete() && male.isComplete();
    }

    /**
     * One sex. Days count from the day the cocoons are put out, over the bees that come out after it; null when the
     * weather ends before.
     *
     * @param p10Days a tenth of them out
     * @param p50Days half of them out
     * @param p90Days nine tenths of them out
     * @param meanDays their mean
     * @param notEmergingShare share of cocoons that never open, 0 to 1
     * @param leftInStoreShare share of bees that leave their cocoons in the store, 0 to 1
     */
    public record OneSex(
            @Nullable Double p10Days,
            @Nullable Double p50Days,
            @Nullable Double p90Days,
            @Nullable Double meanDays,
            double notEmergingShare,
            double leftInStoreShare) {
        /** True when no number is missing. */
        public boolean isComplete() {
            return p10Days != null && p50Days != null && p90Days != null && meanDays != null;
        }
    }
}
