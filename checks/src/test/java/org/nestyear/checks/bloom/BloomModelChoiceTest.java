package org.nestyear.checks.bloom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.SharedData;
import org.nestyear.core.bloom.fit.BloomBand;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.bloom.fit.BloomModel;
import org.nestyear.core.bloom.fit.BloomModelChoice;
import org.nestyear.core.bloom.fit.BloomYear;
import org.nestyear.core.bloom.fit.ModelScore;
import org.nestyear.core.bloom.fit.ThermalTimeModel;
import org.nestyear.data.CatalogueFiles;

/** Fitted bloom models against observed bloom, always on years they have not seen. */
class BloomModelChoiceTest {
    private final BloomModelChoice choice = new BloomModelChoice(CatalogueFiles.bloomModels());

    /** Fitted to 1970–2000, asked for 2001–2012: at most 4.2 d, where the mean date of 1970–2000 is 5.1 d off. */
    @Test
    void washingtonTrainedOnThirtyOneYearsForecastsTheNextTwelve() {
        List<BloomYear> all = BloomRecords.washington();
        assertThat(all).hasSize(43);
        List<BloomYear> before = all.stream().filter(y -> y.year() <= 2000).toList();
        List<BloomYear> after = all.stream().filter(y -> y.year() > 2000).toList();
        BloomChoice chosen = choice.choose(before);
        print("Washington 1970-2000", before, chosen);
        double mean = before.stream().mapToInt(BloomYear::day).average().orElseThrow();
        double rival = Math.sqrt(after.stream()
                .mapToDouble(y -> Math.pow(mean - y.day(), 2))
                .average()
                .orElseThrow());
        double model = rmse(chosen.model(), after);
        int inside = 0;
        for (BloomYear year : after) {
            BloomBand band = chosen.forecast(year.course()).orElseThrow();
            inside += year.day() >= Math.floor(band.early()) && year.day() <= Math.ceil(band.late()) ? 1 : 0;
            assertThat(band.early()).isLessThan(band.late());
        }
        System.out.printf(
                Locale.ROOT,
                "Washington 2001-2012: model %.2f d, mean date %.2f d, %d of 12 inside the band%n",
                model,
                rival,
                inside);
        assertThat(after).hasSize(12);
        assertThat(rival).isCloseTo(5.1, within(0.1));
        assertThat(model).isLessThanOrEqualTo(4.2);
        // Eight in ten are expected; with twelve years fewer than seven would be a sign of a band too narrow.
        assertThat(inside).isGreaterThanOrEqualTo(7);
        assertThat(chosen.reason()).isEqualTo(BloomChoice.Reason.SMALLEST_ERROR);
    }

    /**
     * degree-days/bloom_bars.csv, Washington over 52 years (this record holds 43 of them): mean date 6.8 d, degree-days
     * with base and start chosen inside each fold 4.2 d. Ours may be half a day worse on the shorter record.
     */
    @Test
    void washingtonLeaveOneOutReachesTheBar() {
        List<BloomYear> years = BloomRecords.washington();
        BloomChoice chosen = choice.choose(years);
        print("Washington", years, chosen);
        assertThat(score(chosen, BloomKind.THERMAL_TIME).rmse())
                .isLessThanOrEqualTo(bar("washington-dc", "cherry peak bloom") + 0.5);
        assertThat(chosen.errorDays())
                .isLessThan(score(chosen, BloomKind.MEAN_DATE).rmse());
    }

    /**
     * bloom_bars.csv, Urbana: mean date 7.85 d, degree-days 7.46 d over the same twelve years; lilac first bloom. One
     * spring (1966) is some twenty days off under every model, and more starts are tried here than there: .6 d allowed.
     */
    @Test
    void urbanaLilacBesideItsRivals() {
        List<BloomYear> years = BloomRecords.urbana("first_bloom_doy");
        BloomChoice chosen = choice.choose(years);
        print("Urbana lilac bloom", years, chosen);
        assertThat(years).hasSize(12);
        assertThat(score(chosen, BloomKind.MEAN_DATE).rmse()).isCloseTo(7.85, within(0.01));
        assertThat(score(chosen, BloomKind.THERMAL_TIME).rmse())
                .isLessThanOrEqualTo(bar("urbana", "lilac first bloom") + 0.6);
        assertThat(chosen.errorDays())
                .isLessThanOrEqualTo(score(chosen, BloomKind.MEAN_DATE).rmse());
        print(
                "Urbana lilac leaf",
                BloomRecords.urbana("first_leaf_doy"),
                choice.choose(BloomRecords.urbana("first_leaf_doy")));
    }

    /** A sweet cherry with eleven springs of weather: far better than its mean date. No bar is published for it. */
    @Test
    void kleinAltendorfCherryBesideItsRivals() {
        List<BloomYear> years = BloomRecords.kleinAltendorf();
        BloomChoice chosen = choice.choose(years);
        print("Klein-Altendorf sweet cherry", years, chosen);
        assertThat(years.size()).isGreaterThanOrEqualTo(10);
        assertThat(chosen.errorDays())
                .isLessThan(score(chosen, BloomKind.MEAN_DATE).rmse());
    }

    @Test
    void fewDatesAreNotFitted() {
        List<BloomYear> years = BloomRecords.washington().subList(0, 3);
        BloomChoice chosen = choice.choose(years);
        assertThat(chosen.reason()).isEqualTo(BloomChoice.Reason.TOO_FEW_DATES);
        assertThat(chosen.model()).isEqualTo(new ThermalTimeModel(32, 0, 424));
        BloomBand band = chosen.forecast(years.get(0).course()).orElseThrow();
        assertThat(band.middle() - band.early()).isCloseTo(7 * 1.2816, within(0.01));
        assertThat(band.late() - band.middle()).isCloseTo(7 * 1.2816, within(0.01));
        assertThat(choice.choose(List.of()).reason()).isEqualTo(BloomChoice.Reason.TOO_FEW_DATES);
    }

    /** Washington's days mirrored about their mean, so that warm years bloom late: no model of warmth can follow. */
    @Test
    void whereNothingBeatsTheMeanDateItIsUsedAndSaidSo() {
        List<BloomYear> mirrored = BloomRecords.washington().stream()
                .limit(15)
                .map(y -> new BloomYear(y.year(), 2 * 93 - y.day(), y.course()))
                .toList();
        BloomChoice chosen = choice.choose(mirrored);
        print("mirrored dates", mirrored, chosen);
        assertThat(chosen.reason()).isEqualTo(BloomChoice.Reason.NONE_BEATS_THE_MEAN_DATE);
        assertThat(chosen.model().kind()).isEqualTo(BloomKind.MEAN_DATE);
        assertThat(chosen.earlyDays()).isNegative();
        assertThat(chosen.lateDays()).isPositive();
    }

    private static double rmse(BloomModel model, List<BloomYear> years) {
        return Math.sqrt(years.stream()
                .mapToDouble(y -> Math.pow(model.day(y.course()).orElseThrow() - y.day(), 2))
                .average()
                .orElseThrow());
    }

    private static ModelScore score(BloomChoice chosen, BloomKind kind) {
        return chosen.scores().stream()
                .filter(score -> score.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static double bar(String site, String event) {
        return SharedData.rows("reference/degree-days/bloom_bars.csv").stream()
                .filter(row -> row.getField("site").equals(site)
                        && row.getField("event").equals(event))
                .mapToDouble(row -> SharedData.number(row, "nested_gdd_rmse"))
                .findFirst()
                .orElseThrow();
    }

    private static void print(String name, List<BloomYear> years, BloomChoice chosen) {
        System.out.printf(
                Locale.ROOT,
                "%s: %d years, %s, %s, band %+.1f to %+.1f d%n",
                name,
                years.size(),
                chosen.reason(),
                chosen.model(),
                chosen.earlyDays(),
                chosen.lateDays());
        for (ModelScore score : chosen.scores()) {
            System.out.printf(
                    Locale.ROOT,
                    "  %-17s %2d years, RMSE %5.2f d, mean absolute %5.2f d, bias %+5.2f d%n",
                    score.kind().word(),
                    score.years(),
                    score.rmse(),
                    score.meanAbsolute(),
                    score.bias());
        }
    }
}
