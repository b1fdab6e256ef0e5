package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which daily copies are kept. */
class RotationTest {
    private static final LocalDate START = LocalDate.of(2023, 1, 1);

    @Test
    void oneCopyIsNeverCleared() {
        assertThat(Rotation.keep(List.of(START))).containsExactly(START);
        assertThat(Rotation.keep(List.of())).isEmpty();
    }

    // Worked out by hand: 2026-11-25 is a Wednesday, weeks begin on Monday.
    @Test
    void dailyUseForAYearKeepsSevenDaysFourWeeksAndTwelveMonths() {
        LocalDate last = LocalDate.of(2026, 11, 25);
        Set<LocalDate> everyDay = Stream.iterate(last.minusDays(400), day -> day.plusDays(1))
                .limit(401)
                .collect(Collectors.toSet());
        assertThat(Rotation.keep(everyDay))
                .containsExactlyElementsOf(Stream.of(
                                "2025-12-31 2026-01-31 2026-02-28 2026-03-31 2026-04-30 2026-05-31 2026-06-30"
                                        + " 2026-07-31 2026-08-31 2026-09-30 2026-10-31",
                                // The last days of the weeks before, as far as the seven days do not hold them.
                                "2026-11-08 2026-11-15",
                                "2026-11-19 2026-11-20 2026-11-21 2026-11-22 2026-11-23 2026-11-24 2026-11-25")
                        .flatMap(line -> Stream.of(line.split(" ", -1)))
                        .map(LocalDate::parse)
                        .toList());
    }

    @Test
    void whoStartsTheProgramOnceAMonthKeepsTwelveMonthsAndNoMore() {
        Set<LocalDate> monthly =
                Stream.iterate(START, day -> day.plusMonths(1)).limit(30).collect(Collectors.toSet());
        assertThat(Rotation.keep(monthly))
                .hasSize(12)
                .contains(START.plusMonths(29))
                .doesNotContain(START.plusMonths(17));
    }

    // Three years of use on some days, cleared after each: the copies that remain reach as far back as is promised.
    @Test
    void clearedDayByDayItKeepsWhatClearingAtTheEndWouldKeep() {
        long seed = 20261125L;
        SplittableRandom random = new SplittableRandom(seed);
        TreeSet<LocalDate> left = new TreeSet<>();
        TreeSet<LocalDate> all = new TreeSet<>();
        for (int day = 0; day < 3 * 365; day++) {
            if (random.nextDouble() < 0.4) {
                continue;
            }
            LocalDate today = START.plusDays(day);
            left.add(today);
            all.add(today);
            left.retainAll(Rotation.keep(left));

            assertThat(left).contains(today).hasSizeLessThanOrEqualTo(7 + 4 + 12);
            assertThat(left).as("seed " + seed + ", " + today).isEqualTo(Rotation.keep(all));
        }
        assertThat(left).hasSizeGreaterThan(15);
        assertThat(left.first()).isBefore(START.plusDays(3 * 365 - 330));
    }
}
