package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which way should a front look?
 *
 * @param file the season file with the site and its weather
 * @param clock the day it is, for a file that names none
 * @param dates days to look at; every week of the bees' flight if none
 * @param bees the kind of bee, or null for that of the season's first batch
 * @param excessC how much warmer than the air a tunnel gets for each 100 W/m² on the front, °C, or null for the
 *     catalogue's
 */
public record FacingQuestion(
        Path file,
        LocalDate clock,
        List<LocalDate> dates,
        @Nullable Bees bees,
        @Nullable Double excessC) {
    public FacingQuestion {
        dates = List.copyOf(dates);
    }

    /** The two kinds of bee, by how they live. */
    public enum Bees {
        MASON("mason"),
        LEAFCUTTER("leafcutter");

        private final String word;

        Bees(String word) {
            this.word = word;
        }

        /** As it is written on the command line. */
        public String word() {
            return word;
        }
    }
}
