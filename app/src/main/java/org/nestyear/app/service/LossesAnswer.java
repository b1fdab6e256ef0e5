package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.opening.OpeningCase;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.CellShare;
import org.nestyear.core.losses.Comparison;
import org.nestyear.core.losses.KillValues;
import org.nestyear.core.losses.LossTable;
import org.nestyear.core.losses.OpenedNest;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.OpenedNests;
import org.nestyear.data.OpenedNestsCsv;
import org.nestyear.data.TextSource;

/**
 * What opened nests show.
 *
 * @param table losses by cause
 * @param groups shares lost by house, kind of nest and year, where more than one is told
 * @param comparisons of these groups
 * @param rates what each cause would take alone, with its k; empty when not asked for
 * @param killInAll k of all losses; null when not asked for, and when nothing lives
 * @param findings what to do, most pressing first
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the tally, the catalogue or the version
 */
public record LossesAnswer(
        LossesQuestion question,
        LossTable table,
        List<Group> groups,
        List<Compared> comparisons,
        List<Rate> rates,
        @Nullable Double killInAll,
        List<Finding> findings,
        List<Parameter> basis,
        String fingerprint) {

    public LossesAnswer {
        groups = List.copyOf(groups);
        comparisons = List.copyOf(comparisons);
        rates = List.copyOf(rates);
        findings = List.copyOf(findings);
        basis = List.copyOf(basis);
    }

    /** The share lost in one house, kind of nest or year. */
    public record Group(By by, String name, CellShare share) {}

    /** Two groups held against each other. */
    public record Compared(By by, Comparison comparison) {}

    /**
     * A cause on scales on which causes add up.
     *
     * @param alone share of cells it would take alone
     * @param kill its k; null when nothing lives
     */
    public record Rate(Cause cause, double alone, @Nullable Double kill) {}

    /** By what nests are grouped. */
    public enum By {
        HOUSE("house"),
        KIND("nest_kind"),
        YEAR("year");

        private final String word;

        By(String word) {
            this.word = word;
        }

        /** The group of a nest, empty when it is not told. */
        String group(OpenedNest nest) {
            return switch (this) {
                case HOUSE -> nest.house();
                case KIND -> nest.kind();
                case YEAR -> nest.year() == null ? "" : nest.year().toString();
            };
        }

        /** Name of the column. */
        public String word() {
            return word;
        }
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if the tally is wrong, or the cause to compare by has no column
     */
    public static LossesAnswer of(LossesQuestion question) {
        return of(question, TextSource.ofFile(question.file()));
    }

    /**
     * Answers the question by this tally, whatever file the question names.
     *
     * @throws Refusal if the tally is wrong, or the cause to compare by has no column
     */
    public static LossesAnswer of(LossesQuestion question, TextSource tally) {
        OpenedNests opened;
        try {
            opened = OpenedNestsCsv.read(tally);
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        Cause cause = question.cause();
        if (cause != null && !opened.looked().contains(cause)) {
            throw Refusal.usage(
                    "--cause is " + cause.word() + ", which has no column in the tally; expected one of "
                            + String.join(
                                    ", ",
                                    opened.looked().stream().map(Cause::word).toList())
                            + ".",
                    "");
        }
        LossTable table = LossTable.of(opened.nests(), opened.looked(), question.level());
        ToIntFunction<OpenedNest> found = cause == null ? OpenedNest::lostInAll : nest -> nest.lostTo(cause);
        List<Group> groups = new ArrayList<>();
        List<Compared> comparisons = new ArrayList<>();
        for (By by : By.values()) {
            Map<String, CellShare> shares = table.byGroup(by::group, found);
            if (shares.size() > 1) {
                shares.forEach((name, share) -> groups.add(new Group(by, name, share)));
                Comparison.of(opened.nests(), by::group, found, question.level())
                        .forEach(comparison -> comparisons.add(new Compared(by, comparison)));
            }
        }
        List<Finding> findings = new OpeningCase(catalogue(), question.bees(), table, question.bought()).findings();
        Map<String, Parameter> basis = new LinkedHashMap<>();
        findings.forEach(finding -> finding.basis().forEach(row -> basis.put(row.id(), row)));
        Fingerprint print = new Fingerprint("");
        print.add(List.of(
                question.bees(),
                question.bought(),
                question.level(),
                String.valueOf(cause),
                String.valueOf(question.rates())));
        print.add(opened);
        print.add(List.copyOf(basis.values()));
        return new LossesAnswer(
                question,
                table,
                groups,
                comparisons,
                rates(table, question),
                killInAll(table, question),
                findings,
                List.copyOf(basis.values()),
                print.digits());
    }

    /** The numbers the rules are held against. */
    static ParameterTable catalogue() {
        return CatalogueFiles.sums("losses")
                .completedBy(CatalogueFiles.sums("counting"))
                .completedBy(CatalogueFiles.sums("hygiene"))
                .completedBy(CatalogueFiles.sums("mason_bees"));
    }

    private static @Nullable Double killInAll(LossTable table, LossesQuestion question) {
        KillValues.Base base = question.rates();
        return base == null || table.alive() == 0 ? null : KillValues.between(table.cells(), table.alive(), base);
    }

    private static List<Rate> rates(LossTable table, LossesQuestion question) {
        if (question.rates() == null) {
            return List.of();
        }
        Double all = killInAll(table, question);
        double lost = table.lost().total().found();
        List<Rate> rates = new ArrayList<>();
        for (LossTable.Line line : table.lines()) {
            double share = line.share().share();
            Double kill = all == null
                    ? null
                    : lost == 0
                            ? Double.valueOf(0)
                            : Double.valueOf(all * line.share().total().found() / lost);
            rates.add(
                    new Rate(line.cause(), KillValues.alone(share, table.lost().share()), kill));
        }
        return rates;
    }
}
