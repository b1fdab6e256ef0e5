package org.nestyear.core.advice;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.brood.BroodClock;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.Portion;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.Gap;

/**
 * Everything a rule may look at.
 *
 * @param inputs what the keeper told
 * @param species the bees
 * @param release the computed releases
 * @param outlook what to expect after them
 * @param pastBlooms what the dates of past years give, for each plant that has some
 * @param brood when the last cells are spun and adult, or null where no past summer tells
 * @param forage flowers in reach against the cells, or null where they were not held against each other
 * @param realYears real weather years behind the answer
 * @param gaps runs of missing days that were filled
 */
public record Situation(
        SeasonInputs inputs,
        Species species,
        ReleasePlan release,
        Outlook outlook,
        List<PastBloom> pastBlooms,
        @Nullable BroodOutlook brood,
        @Nullable Forage forage,
        int realYears,
        List<Gap> gaps) {
    public Situation {
        pastBlooms = List.copyOf(pastBlooms);
        gaps = List.copyOf(gaps);
    }

    /** Reads, through a log, what the outlook on the brood was worked out from. */
    public void brood(ReadLog read) {
        BroodClock.both(read);
    }

    /** A fresh log to read parameters through, so that a rule lists exactly what it read. */
    public ReadLog read() {
        return new ReadLog(species.parameters());
    }

    public Batch batch() {
        return inputs.batches().get(0);
    }

    public LocalDate today() {
        return inputs.today();
    }

    /** Free tunnels of all kinds. */
    public int tunnels() {
        return inputs.nests().stream().mapToInt(Nests::count).sum();
    }

    /** The first portion put out. */
    public Portion first() {
        return release.releases().get(0);
    }

    /** True when the bees choose their own day: outdoors, or in nests that were not opened. */
    public boolean choosesItself() {
        return batch().wintered() == Wintered.OUTDOORS || batch().wintered() == Wintered.UNOPENED;
    }

    /** True when today lies inside the window and nothing is won by waiting until the question is asked again. */
    public boolean isNow() {
        return isOpen() && !release.bestDate().isAfter(today().plusDays(Math.round(read().value("ask_again_days"))));
    }

    /** True when today lies inside the window. */
    public boolean isOpen() {
        return !today().isBefore(release.window().from());
    }

    /** The later of a date and today: no job begins in the past. */
    public LocalDate notBeforeToday(LocalDate date) {
        return date.isBefore(today()) ? today() : date;
    }
}
