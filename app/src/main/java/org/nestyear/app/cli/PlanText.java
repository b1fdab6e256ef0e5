package org.nestyear.app.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.ReleaseWords;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.DateRange;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.Goal;
import org.nestyear.core.source.Parameter;

/** A plan as a page of text: the answer first, then what stands behind it, then what to do. */
final class PlanText {
    private static final int INDENT = 4;
    /** Rows of the curve's table, its window and best date apart. */
    private static final int ROWS = 12;

    private final PlanAnswer answer;
    private final Plan plan;
    private final Wording words;
    private final Page page = new Page();

    private PlanText(PlanAnswer answer, Wording words) {
        this.answer = answer;
        this.plan = answer.plan();
        this.words = words;
    }

    /** The whole page. */
    static String of(PlanAnswer answer, Wording words) {
        PlanText text = new PlanText(answer, words);
        text.head();
        text.jobs();
        text.curve();
        text.outlook();
        text.findings();
        text.sources();
        return text.page.toString();
    }

    /** One job with the numbers behind it. */
    static String why(PlanAnswer answer, Job job, Wording words) {
        PlanText text = new PlanText(answer, words);
        text.job(job);
        text.page.heading("WHY");
        job.why().forEach(line -> text.page.hanging(0, INDENT, words.phrase(line)));
        text.page.heading("NUMBERS READ FOR IT");
        for (Parameter parameter : job.basis()) {
            text.page.hanging(0, INDENT, BasisWords.line(parameter));
        }
        return text.page.toString();
    }

    private void head() {
        page.paragraph(0, words.headline(plan.headline()));
        page.blank();
        page.paragraph(
                0,
                answer.inputs().site().name() + ": " + plan.species().commonName() + " ("
                        + plan.species().latinName() + "), planned for " + words.date(plan.today()) + ".");
        page.paragraph(0, BasisWords.years(plan));
        String borrowed = BasisWords.borrowed(plan.basis(), plan.species().latinName());
        if (!borrowed.isEmpty()) {
            page.paragraph(0, borrowed);
        }
        page.paragraph(0, BasisWords.weakness(plan.basis()));
    }

    private void jobs() {
        page.heading("JOBS");
        boolean first = true;
        for (Job job : plan.jobs()) {
            if (!first) {
                page.blank();
            }
            job(job);
            first = false;
        }
    }

    private void job(Job job) {
        page.hanging(
                0,
                INDENT,
                words.range(job.from(), job.to()) + ": " + words.phrase(job.title()) + " [" + job.id() + "]");
        page.paragraph(INDENT, words.phrase(job.number()));
        page.paragraph(INDENT, words.phrase(job.reason()));
        if (job.caution() != null) {
            page.paragraph(INDENT, "Caution: " + words.phrase(job.caution()));
        }
    }

    private void curve() {
        ReleasePlan release = plan.release();
        page.heading("WHAT OTHER DATES COST");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("put out", ">costs", ">daughters", ">low", ">high", ""));
        for (CurvePoint point : shown(release)) {
            rows.add(List.of(
                    words.date(point.date()),
                    Wording.share(point.cost(), 0),
                    Wording.number(point.daughters(), 0),
                    Wording.share(point.p10(), 0),
                    Wording.share(point.p90(), 0),
                    remark(point, release)));
        }
        page.table(0, rows);
        page.paragraph(
                0,
                "Costs are shares of what the best date gives on average, by the aim \""
                        + release.goal().word() + "\"; one season in ten gives less than \"low\" of it and one in ten"
                        + " more than \"high\". All this comes from the model; no release trial has tested it.");
        page.blank();
        ReleaseWords.alternatives(release, words).forEach(line -> page.hanging(0, INDENT, line));
        for (Goal goal : Goal.values()) {
            page.hanging(0, INDENT, ReleaseWords.window(release, goal, words));
        }
        ReleaseWords.sensitivities(release).forEach(line -> page.hanging(0, INDENT, line));
        page.hanging(0, INDENT, ReleaseWords.agreement(release, words));
    }

    private static String remark(CurvePoint point, ReleasePlan release) {
        if (point.cost() == 0) {
            return "best";
        }
        return within(point.date(), release.window())
                ? "in the window"
                : within(point.date(), release.notRuledOut()) ? "not ruled out" : "";
    }

    private static boolean within(LocalDate date, ReleaseWindow window) {
        return !date.isBefore(window.from()) && !date.isAfter(window.to());
    }

    private static List<CurvePoint> shown(ReleasePlan release) {
        List<CurvePoint> curve = release.curve();
        int step = Math.max(1, (curve.size() + ROWS - 1) / ROWS);
        SortedSet<Integer> rows = new TreeSet<>();
        for (int i = 0; i < curve.size(); i++) {
            LocalDate date = curve.get(i).date();
            boolean edge = date.equals(release.window().from())
                    || date.equals(release.window().to());
            if (i % step == 0 || i == curve.size() - 1 || edge || curve.get(i).cost() == 0) {
                rows.add(i);
            }
        }
        return rows.stream().map(curve::get).toList();
    }

    private void outlook() {
        Outlook outlook = plan.outlook();
        page.heading("WHAT TO EXPECT");
        page.paragraph(0, "If all go out on " + words.date(plan.release().bestDate()) + ":");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "early", "middle", "late"));
        rows.add(row("first males out", outlook.firstMales()));
        rows.add(row("half the males out", outlook.halfMales()));
        rows.add(row("first females out", outlook.firstFemales()));
        rows.add(row("half the females out", outlook.halfFemales()));
        rows.add(row("most females out", outlook.mostFemales()));
        rows.add(row("middle of target bloom", outlook.targetBloom()));
        rows.add(row("nesting all but over", outlook.lastNesting()));
        page.table(0, rows);
        page.paragraph(0, "Early and late: one year in ten is earlier, one in ten later.");
        page.paragraph(0, ReleaseWords.brood(outlook));
    }

    private List<String> row(String what, DateRange range) {
        return List.of(what, words.date(range.early()), words.date(range.middle()), words.date(range.late()));
    }

    private void findings() {
        if (plan.findings().isEmpty()) {
            return;
        }
        page.heading("FINDINGS");
        for (Finding finding : plan.findings()) {
            FindingPrint.text(page, finding, words);
        }
    }

    private void sources() {
        SourceList.write(page, plan.basis());
        page.blank();
        page.paragraph(0, "Fingerprint of inputs, catalogue and version: " + answer.fingerprint());
    }
}
