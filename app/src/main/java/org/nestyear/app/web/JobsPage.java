package org.nestyear.app.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.OpenSeason;
import org.nestyear.app.web.JobsView.FindingCard;
import org.nestyear.app.web.JobsView.JobCard;
import org.nestyear.app.web.JobsView.Sight;
import org.nestyear.app.web.JobsView.Yield;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.DateRange;
import org.nestyear.core.release.Outlook;

/** Puts a plan into the words of the page Jobs now. */
final class JobsPage {
    private final PageWords words;

    private JobsPage(PageWords words) {
        this.words = words;
    }

    static JobsView view(PageHead head, OpenSeason season) {
        return new JobsPage(PageWords.of(season.answer().plan())).page(head, season);
    }

    private JobsView page(PageHead head, OpenSeason season) {
        Plan plan = season.answer().plan();
        return new JobsView(
                head,
                words.season(season),
                words.headline(plan),
                PageWords.founded(plan),
                plan.jobs().stream().map(job -> card(job, plan.today())).toList(),
                plan.findings().stream().map(this::card).toList(),
                sights(plan.outlook()),
                yields(plan.outlook()));
    }

    private JobCard card(Job job, LocalDate today) {
        return new JobCard(
                job.id(),
                words.span(job.from(), job.to()),
                state(job, today),
                words.say(job.title()),
                words.say(job.number()),
                words.say(job.reason()),
                sayOr(job.caution()),
                job.why().stream().map(words::say).toList(),
                PageWords.basis(job.basis()));
    }

    private static String state(Job job, LocalDate today) {
        if (job.to().isBefore(today)) {
            return "past";
        }
        if (job.from().isAfter(today)) {
            return "to come";
        }
        return "now";
    }

    private FindingCard card(Finding finding) {
        List<String> measure = new ArrayList<>();
        if (finding.observed() != null) {
            measure.add("Found: " + words.say(finding.observed()));
        }
        if (finding.limit() != null) {
            measure.add("Held against: " + words.say(finding.limit()));
        }
        return new FindingCard(
                finding.id(),
                finding.level().word(),
                words.say(finding.what()),
                String.join(" · ", measure),
                words.say(finding.action()),
                sayOr(finding.caution()),
                PageWords.basis(finding.basis()));
    }

    private String sayOr(@Nullable Phrase phrase) {
        return phrase == null ? "" : words.say(phrase);
    }

    private List<Sight> sights(Outlook outlook) {
        return List.of(
                sight("A tenth of the males are out", outlook.firstMales()),
                sight("Half the males are out", outlook.halfMales()),
                sight("A tenth of the females are out", outlook.firstFemales()),
                sight("Half the females are out", outlook.halfFemales()),
                sight("Nine tenths of the females are out", outlook.mostFemales()),
                sight("Middle of the bloom you aim for", outlook.targetBloom()),
                sight("Nesting is all but over", outlook.lastNesting()));
    }

    private Sight sight(String name, DateRange range) {
        return new Sight(
                name,
                PageWords.shortDay(range.early()),
                PageWords.shortDay(range.middle()),
                PageWords.shortDay(range.late()));
    }

    private List<Yield> yields(Outlook outlook) {
        return List.of(
                new Yield("Nest cells", PageWords.number(outlook.cells(), 0)),
                new Yield(
                        "Surviving daughters",
                        PageWords.number(outlook.daughters(), 0) + " (8 cases in 10: "
                                + PageWords.numberSpan(outlook.daughtersLow(), outlook.daughtersHigh()) + ")"),
                new Yield("Surviving sons", PageWords.number(outlook.sons(), 0)),
                new Yield("Tunnels begun", PageWords.number(outlook.tunnelsUsed(), 0)),
                new Yield("Chance that not one female settles", PageWords.percent(outlook.noFemaleSettles())));
    }
}
