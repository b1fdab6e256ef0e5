package org.nestyear.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.service.OpenSeason;
import org.nestyear.app.service.SeasonDesk;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.Edge;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.Source;

/** What the pages say, held against the plan they say it of. */
class PageWordsTest {
    private static final PageHead HEAD = new PageHead("Release", List.of(), "_csrf", "x");

    @TempDir
    static Path home;

    private static OpenSeason season;

    @BeforeAll
    static void planTheDemo() {
        SeasonDesk desk = SeasonDesk.at(home, OwnServer.CLOCK);
        desk.openDemo();
        season = desk.findCurrent().orElseThrow();
    }

    @Test
    void theReleasePageHoldsEveryValueOfTheCurve() {
        ReleaseView view = ReleasePage.view(HEAD, season, Optional.empty());
        List<CurvePoint> curve = plan().release().curve();
        assertThat(view.points()).hasSameSizeAs(curve).hasSizeGreaterThan(30);
        for (int i = 0; i < curve.size(); i++) {
            CurvePoint point = curve.get(i);
            ReleaseView.PointRow row = view.points().get(i);
            assertThat(row.mean()).isEqualTo(Long.toString(Math.round(point.mean() * 100)));
            assertThat(row.cost()).isEqualTo(Long.toString(Math.round(point.cost() * 100)));
            assertThat(row.tag().isEmpty()).isEqualTo(!point.inWindow());
        }
        assertThat(view.points().stream().filter(row -> row.tag().equals("best")))
                .hasSize(1);
        assertThat(view.typedCost()).isEmpty();
        assertThat(view.basis()).hasSameSizeAs(plan().basis());
        assertThat(view.aims()).extracting(ReleaseView.Aim::word).containsExactly("both", "brood", "bloom");
        assertThat(view.aims().stream().filter(ReleaseView.Aim::chosen)).hasSize(1);
        assertThat(view.widePicture()).contains("rule of thumb, ").contains("apple in bloom, 20\u00a0Apr–8\u00a0May");
    }

    @Test
    void theJobsPageHoldsEveryJobFindingAndBasis() {
        JobsView view = JobsPage.view(HEAD, season);
        assertThat(view.answer()).contains("2015");
        assertThat(view.jobs()).hasSameSizeAs(plan().jobs());
        assertThat(view.findings()).hasSameSizeAs(plan().findings());
        assertThat(view.founded()).startsWith("3 real weather years");
        for (int i = 0; i < view.jobs().size(); i++) {
            assertThat(view.jobs().get(i).basis())
                    .hasSameSizeAs(plan().jobs().get(i).basis());
            assertThat(view.jobs().get(i).caution().isEmpty())
                    .isEqualTo(plan().jobs().get(i).caution() == null);
        }
        assertThat(view.sights()).hasSize(7);
    }

    @Test
    void aTypedDateIsAnsweredFromItsOwnPointOfTheCurve() {
        CurvePoint late = plan().release().curve().get(plan().release().curve().size() - 1);
        String answer = cost(late.date().toString());
        assertThat(answer).contains("loses " + Math.round(late.cost() * 100) + " % on average");
        CurvePoint good = plan().release().curve().stream()
                .filter(CurvePoint::inWindow)
                .findFirst()
                .orElseThrow();
        assertThat(cost(" " + good.date() + " ")).contains("lies in the window");
        assertThat(cost(late.date().plusDays(1).toString())).contains("was not tried; the dates tried run from");
        assertThat(cost("next week")).contains("is no date; expected year-month-day, such as 20");
    }

    @Test
    void aBloomFromWarmthIsLaidAroundItsExpectedMiddle() {
        LocalDate middle = plan().outlook().targetBloom().middle();
        Plant plant = new Plant("plum", 10, true, new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 300, 11));
        BloomSpan span = BloomSpan.of(plant, plan().outlook());
        assertThat(span).isEqualTo(new BloomSpan(middle.minusDays(5), middle, middle.plusDays(5)));
        BloomSpan untold =
                BloomSpan.of(new Plant("pear", 10, true, new BloomDates.FromPastDates(null)), plan().outlook());
        assertThat(untold.middle()).isEqualTo(middle);
        assertThat(untold.from()).isBefore(middle);
        assertThat(untold.to()).isAfter(middle);
    }

    @Test
    void spansAndEdgesReadAsWritten() {
        PageWords words = PageWords.of(plan());
        LocalDate day = LocalDate.of(2015, 4, 30);
        assertThat(PageWords.shortSpan(day.minusDays(4), day)).isEqualTo("26–30\u00a0Apr");
        assertThat(PageWords.shortSpan(day, day.plusDays(1))).isEqualTo("30\u00a0Apr–1\u00a0May");
        assertThat(PageWords.shortSpan(day, day)).isEqualTo("30\u00a0Apr");
        assertThat(words.window(new ReleaseWindow(day, day, Edge.LATER))).isEqualTo("Thu 30 April, perhaps later");
        assertThat(PageWords.daysMoved(-1)).isEqualTo("1 day earlier");
        assertThat(PageWords.daysMoved(0)).isEqualTo("stays");
    }

    @Test
    void aParameterShowsValueRangeBasisAndSource() {
        Source source = new Source("k", "Somebody 2004", "");
        Parameter row = new Parameter(
                "death_rate", 0.04, "1/d", 0.02, 12000, Basis.ASSUMED, source, "table 2", "Osmia bicornis", "A note.");
        BasisLine line = PageWords.basis(List.of(row)).get(0);
        assertThat(line)
                .isEqualTo(new BasisLine(
                        "death rate",
                        "0.04 1/d",
                        "0.02 to 12,000",
                        "assumed, borrowed from Osmia bicornis",
                        "Somebody 2004, table 2. A note.",
                        "",
                        ""));
    }

    @Test
    void oneLotOrTwoIsToldInTheWordsOfItsFinding() {
        Finding finding = plan().findings().stream()
                .filter(f -> f.id().endsWith("-lot") || f.id().endsWith("-lots"))
                .findFirst()
                .orElseThrow();
        PageWords words = PageWords.of(plan());
        List<String> lines = words.portions(plan());
        int lots = plan().release().releases().size();
        assertThat(lines).hasSize(lots > 1 ? lots + 1 : 1);
        assertThat(lines.get(lines.size() - 1))
                .startsWith(words.say(finding.what()))
                .endsWith(words.say(finding.action()));
    }

    @Test
    void everythingThatCouldBeOtherwiseIsSaidInWords() {
        assertThat(plan().release().sensitivities())
                .hasSize(4)
                .allSatisfy(s -> assertThat(PageWords.sensitivity(s.id())).isNotEqualTo(s.id().replace('-', ' ')));
    }

    private static String cost(String typed) {
        return ReleasePage.view(HEAD, season, Optional.of(typed)).typedCost();
    }

    private static Plan plan() {
        return season.answer().plan();
    }
}
