package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.nestyear.app.service.LossesAnswer;
import org.nestyear.app.service.LossesAnswer.By;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.losses.Comparison;
import org.nestyear.core.losses.LossTable;

/** Losses in words. */
final class LossesText {
    private static final int FEW_NESTS = 10;

    private final LossesAnswer answer;
    private final LossTable table;
    private final Page page = new Page();

    private LossesText(LossesAnswer answer) {
        this.answer = answer;
        this.table = answer.table();
    }

    /** The page. */
    static Page of(LossesAnswer answer, Wording words) {
        LossesText text = new LossesText(answer);
        text.headline();
        text.causes();
        text.spread();
        text.groups();
        text.rates();
        text.page.heading("WHAT IT MEANS AND WHAT TO DO");
        for (Finding finding : answer.findings()) {
            FindingPrint.text(text.page, finding, words);
        }
        Grounds.lines(text.known(), methods(answer), answer.basis()).forEach(line -> text.page.hanging(0, 4, line));
        return text.page;
    }

    private void headline() {
        CellShare lost = table.lost();
        String of = count(table.alive()) + " of " + counted(table.cells(), "cell") + " in "
                + counted(table.nests().size(), "nest");
        if (table.cells() == table.alive()) {
            page.paragraph(
                    0,
                    "Alive: all " + counted(table.cells(), "cell") + " in "
                            + counted(table.nests().size(), "nest") + ". " + none(lost, "Lost"));
            return;
        }
        page.paragraph(
                0,
                "Alive: " + of + ", " + Wording.share(1 - lost.share(), 0) + "; lost " + Wording.share(lost.share(), 0)
                        + " (" + between(lost) + ").");
        LossTable.Line worst = table.lines().get(0);
        page.paragraph(
                0,
                "Most went to " + worst.cause().label() + ": "
                        + count(worst.share().total().found())
                        + " cells, " + Wording.share(worst.share().share(), 0) + ". Disease or parasites sat in "
                        + count(table.nestsIll()) + " of "
                        + counted(table.nests().size(), "nest") + ".");
    }

    private void causes() {
        page.heading("LOST, BY CAUSE");
        String level = Wording.share(table.level(), 0);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("cause", ">cells", ">share", "between, at " + level, ">nests"));
        for (LossTable.Line line : table.lines()) {
            rows.add(row(line.cause().label(), line.share()));
        }
        rows.add(row("lost in all", table.lost()));
        page.table(0, rows);
        page.paragraph(0, "A cell counts under one cause, so the shares add up.");
    }

    private static List<String> row(String name, CellShare share) {
        boolean none = share.total().found() == 0;
        return List.of(
                name,
                count(share.total().found()),
                none ? "none" : Wording.share(share.share(), 0),
                none
                        ? "under " + upper(share.limits().high()) + " (" + upper(share.noneFoundUpperByNest()) + ")"
                        : between(share),
                count(share.nestsWith()));
    }

    /** How far cells of a nest go together. */
    private void spread() {
        page.blank();
        int nests = table.nests().size();
        boolean all = table.alive() == 0;
        boolean none =
                table.lines().stream().anyMatch(line -> line.share().total().found() == 0);
        if (nests == 1) {
            page.paragraph(
                    0,
                    "Only one nest: its cells share a mother, a day and a place, so the ranges, which take cells as"
                            + " independent, are too narrow, by how much one nest cannot tell.");
        } else if (table.lost().designEffect().isPresent()) {
            double effect = table.lost().designEffect().getAsDouble();
            page.paragraph(
                    0,
                    "Cells of a nest share a mother, so they say less than as many cells of as many nests: between"
                            + " nests the spread of losses is " + Wording.number(effect, 1)
                            + " times that of independent cells"
                            + (effect <= 1 ? ", which is counted as 1" : "") + ", and these "
                            + count(table.cells()) + " cells are worth "
                            + count(table.lost().worth().of()) + "."
                            + (nests < FEW_NESTS ? " With so few nests that spread is itself hardly known." : ""));
        }
        if (all && nests > 1) {
            page.paragraph(
                    0,
                    "All were lost, so nests show no spread: the ranges take cells as independent and are too narrow.");
        }
        if (none) {
            page.paragraph(
                    0,
                    "None found leaves room: the first number holds if cells are independent, the one in brackets if"
                            + " the cells of a nest always share their fate.");
        }
    }

    private void groups() {
        if (answer.groups().isEmpty()) {
            return;
        }
        String what = LossesJson.comparedBy(answer).equals("lost")
                ? "lost in all"
                : "lost to " + LossesJson.comparedBy(answer).replace('_', ' ');
        for (By by : By.values()) {
            List<List<String>> rows = new ArrayList<>();
            rows.add(List.of(by.word().replace('_', ' '), ">cells", ">share", "between", ">nests"));
            answer.groups().stream()
                    .filter(group -> group.by() == by)
                    .forEach(group -> rows.add(List.of(
                            group.name(),
                            count(group.share().total().of()),
                            Wording.share(group.share().share(), 0),
                            between(group.share()),
                            count(group.share().nests()))));
            if (rows.size() > 1) {
                page.heading("BY " + by.word().replace('_', ' ').toUpperCase(Locale.ROOT) + ", " + what);
                page.table(0, rows);
                answer.comparisons().stream()
                        .filter(compared -> compared.by() == by)
                        .forEach(compared -> page.paragraph(0, sentence(compared.comparison())));
            }
        }
        page.paragraph(
                0,
                "Groups differ in more than the name you gave them: weather, flowers and the hand that opened them.");
    }

    private static String sentence(Comparison comparison) {
        double points = comparison.found() * 100;
        String more = points >= 0 ? "more" : "less";
        return comparison.first() + " lost " + Wording.number(Math.abs(points), 0) + " points " + more + " than "
                + comparison.second() + ", between "
                + points(comparison.difference().low()) + " and "
                + points(comparison.difference().high()) + ": "
                + (comparison.isMoreThanChance()
                        ? "more than chance makes."
                        : "chance alone may have made that difference.");
    }

    private static String points(double difference) {
        return Wording.number(Math.abs(difference) * 100, 0) + (difference < 0 ? " less" : " more");
    }

    private void rates() {
        if (answer.rates().isEmpty()) {
            return;
        }
        String base = answer.question().rates() == null
                ? ""
                : answer.question().rates().word();
        page.heading("EACH CAUSE ALONE (k with logarithms to base " + base + ")");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("cause", ">alone", ">k"));
        answer.rates()
                .forEach(rate -> rows.add(List.of(
                        rate.cause().label(),
                        Wording.share(rate.alone(), 1),
                        rate.kill() == null ? "none" : Wording.number(rate.kill(), 4))));
        page.table(0, rows);
        page.paragraph(
                0,
                answer.killInAll() == null
                        ? "Nothing lives, so k has no value."
                        : "All together k is " + Wording.number(answer.killInAll(), 4)
                                + "; k of the causes add up to it, shares alone do not. This takes for granted that causes act"
                                + " side by side all the time.");
    }

    private String known() {
        return "the shares are counts. They stop being true where only nests that looked ill were opened, where causes were"
                + " told apart by guess, or where a nest on the list was opened before. Published levels are few, from other"
                + " places and other years.";
    }

    /** The published methods behind the numbers. */
    static List<String> methods(LossesAnswer answer) {
        List<String> methods = new ArrayList<>();
        methods.add(
                "Ranges: Wilson 1927, cells counted as fewer by the spread between nests (Rao & Scott 1992) and for few"
                        + " nests (Korn & Graubard 1998); none found: 1 − (1 − level)^(1/n)");
        if (!answer.comparisons().isEmpty()) {
            methods.add(
                    "Differences: Newcombe 1998, method 10, with the same spread; more than two groups: each against all"
                            + " the others, at a level raised for their number (Bonferroni)");
        }
        if (!answer.rates().isEmpty()) {
            methods.add("Alone: 1 − (1 − d)^(dᵢ/d), Elkinton et al. 1992 (from memory); k: Varley & Gradwell 1970");
        }
        return methods;
    }

    private static String between(CellShare share) {
        return Wording.share(share.limits().low(), 0) + " to "
                + Wording.share(share.limits().high(), 0);
    }

    private static String none(CellShare share, String what) {
        return what + ": under " + upper(share.limits().high()) + " if cells are independent, under "
                + upper(share.noneFoundUpperByNest()) + " if those of a nest share their fate.";
    }

    private static String upper(double share) {
        return Wording.share(share, share < 0.1 ? 1 : 0);
    }

    private static String counted(double number, String thing) {
        return count(number) + " " + thing + (number == 1 ? "" : "s");
    }

    private static String count(double number) {
        return Wording.number(number, 0);
    }
}
