package org.nestyear.app.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.nestyear.app.service.OpenSeason;
import org.nestyear.app.service.ReleaseWords;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.Portion;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.Goal;
import org.nestyear.core.source.Parameter;

/** What the pages say beyond the words of the plan: dates in narrow columns, aims, causes. Safe for many threads. */
final class PageWords {
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("d\u00a0MMM", Locale.ENGLISH);
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("d\u00a0MMMM\u00a0uuuu, HH:mm", Locale.ENGLISH);
    private static final Set<String> LOTS = Set.of("one-lot", "two-lots");
    private static final int MOST_DECIMALS = 4;
    private static final double WHOLE = 100;

    private final Wording wording;

    private PageWords(Wording wording) {
        this.wording = wording;
    }

    /** The words for a plan, which leave out the year that it is made for. */
    static PageWords of(Plan plan) {
        return new PageWords(new Wording(UnitSystem.METRIC, plan.today().getYear()));
    }

    /** A sentence of the plan. */
    String say(Phrase phrase) {
        return wording.phrase(phrase);
    }

    /** The plan's answer in one sentence. */
    String headline(Plan plan) {
        return wording.headline(plan.headline());
    }

    /** How many draws of the uncertain numbers agree with the window. */
    String agreement(ReleasePlan release) {
        return ReleaseWords.agreement(release, wording);
    }

    /** A date with its day of the week. */
    String day(LocalDate date) {
        return wording.date(date);
    }

    /** A run of dates, both ends included. */
    String span(LocalDate from, LocalDate to) {
        return wording.range(from, to);
    }

    /** A date for narrow columns and pictures. */
    static String shortDay(LocalDate date) {
        return SHORT_DAY.format(date);
    }

    /** A run of dates for narrow columns and pictures. */
    static String shortSpan(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return shortDay(from);
        }
        boolean sameMonth = from.getMonth() == to.getMonth() && from.getYear() == to.getYear();
        return (sameMonth ? String.valueOf(from.getDayOfMonth()) : shortDay(from)) + "–" + shortDay(to);
    }

    /** A moment by the clock of this computer. */
    static String stamp(Instant moment) {
        return STAMP.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** A release window, with the direction in which better dates may lie beyond it. */
    String window(ReleaseWindow window) {
        String span = span(window.from(), window.to());
        return switch (window.edge()) {
            case NONE -> span;
            case EARLIER -> span + ", perhaps earlier";
            case LATER -> span + ", perhaps later";
        };
    }

    /** A number with this many decimals. */
    static String number(double value, int decimals) {
        return Wording.number(value, decimals);
    }

    /** Two whole numbers, low to high. */
    static String numberSpan(double low, double high) {
        return number(low, 0) + "–" + number(high, 0);
    }

    /** A share of one as per cent. */
    static String percent(double share) {
        return Wording.share(share, 0);
    }

    /** Two shares of one as per cent, low to high. */
    static String percentSpan(double low, double high) {
        return bareSpan(low, high) + " %";
    }

    /** A share of one in per cent, for a column whose heading has the sign. */
    static String barePercent(double share) {
        return number(share * WHOLE, 0);
    }

    /** Two shares of one in per cent, low to high, for a column whose heading has the sign. */
    static String bareSpan(double low, double high) {
        return barePercent(low) + "–" + barePercent(high);
    }

    /** Which season is shown, for which bees and which day. */
    String season(OpenSeason season) {
        Plan plan = season.answer().plan();
        return season.answer().inputs().site().name() + (season.demo() ? " (invented)" : "") + " · "
                + plan.species().commonName() + " (" + plan.species().latinName() + ") · as of "
                + wording.dateWithYear(plan.today());
    }

    /** How much weather stands behind a plan. */
    static String founded(Plan plan) {
        String years = plan.realYears() == 1
                ? "One real weather year stands behind this"
                : number(plan.realYears(), 0) + " real weather years stand behind this";
        return years + ", run as " + number(plan.members(), 0) + " possible seasons.";
    }

    /** What to put out when where there are two lots, and what the rules found on one lot or two. */
    List<String> portions(Plan plan) {
        List<String> lines = new ArrayList<>();
        List<Portion> portions = plan.release().releases();
        if (portions.size() > 1) {
            for (Portion portion : portions) {
                lines.add(number(portion.females(), 0) + " females and " + number(portion.males(), 0) + " males: about "
                        + day(portion.date()) + ".");
            }
        }
        plan.findings().stream()
                .filter(finding -> LOTS.contains(finding.id()))
                .map(this::told)
                .forEach(lines::add);
        return lines;
    }

    private String told(Finding finding) {
        Phrase observed = finding.observed();
        String measure = observed == null ? "" : sentence(say(observed)) + " ";
        return say(finding.what()) + " " + measure + say(finding.action());
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** The name of an aim. */
    static String aim(Goal goal) {
        return switch (goal) {
            case BOTH -> "Both";
            case BROOD -> "Brood";
            case BLOOM -> "Bloom";
        };
    }

    /** What an aim counts. */
    static String aimMeaning(Goal goal) {
        return switch (goal) {
            case BOTH -> "Half for brood, half for bees in the target bloom.";
            case BROOD -> "Most surviving daughters.";
            case BLOOM -> "Most days that females fly in the target bloom.";
        };
    }

    /** What is otherwise than taken. */
    static String sensitivity(String id) {
        return switch (id) {
            case "poorer-neighbourhood" -> "there is half the other bloom in reach";
            case "richer-neighbourhood" -> "there is half as much again";
            case "food-blind-settling" -> "females settle whatever is in bloom";
            case "food-bound-settling" -> "females settle only as far as there is bloom";
            default -> id.replace('-', ' ');
        };
    }

    /** How far a date moves. */
    static String daysMoved(int days) {
        if (days == 0) {
            return "stays";
        }
        int many = Math.abs(days);
        return many + (many == 1 ? " day " : " days ") + (days > 0 ? "later" : "earlier");
    }

    /** Parameters as a table shows them. */
    static List<BasisLine> basis(List<Parameter> parameters) {
        return parameters.stream().map(PageWords::basis).toList();
    }

    /** A parameter as a table shows it. */
    static BasisLine basis(Parameter row) {
        String unit = row.unit().equals("1") ? "" : " " + row.unit();
        String borrowed = row.isBorrowed() ? ", borrowed from " + row.borrowedFrom() : "";
        String note = row.note().isEmpty() ? "" : " " + row.note();
        return new BasisLine(
                row.id().replace('_', ' '),
                plain(row.value()) + unit,
                row.low() == row.high() ? "as used" : plain(row.low()) + " to " + plain(row.high()),
                row.basis().word() + borrowed,
                row.source().citation() + ", " + row.locator() + "." + note,
                "",
                "");
    }

    // As many decimals as the number has, up to four.
    private static String plain(double value) {
        int decimals = 0;
        double scaled = value;
        while (decimals < MOST_DECIMALS
                && Math.abs(scaled - Math.rint(scaled)) > 1e-9 * Math.max(1, Math.abs(scaled))) {
            scaled *= 10;
            decimals++;
        }
        return number(value, decimals);
    }
}
