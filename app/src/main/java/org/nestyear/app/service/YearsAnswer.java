package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.outlook.GrowthBelief;
import org.nestyear.core.outlook.StockProjection;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.stocking.Settlers;
import org.nestyear.core.stocking.Spread;
import org.nestyear.core.stocking.TunnelNeed;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.KeptYear;
import org.nestyear.data.KeptYearsCsv;
import org.nestyear.data.TextSource;

/**
 * How a stock may go on: springs to come, the chance of a target, what it wants and what can be spared.
 *
 * @param own growth of the keeper's own years
 * @param growth what is believed of growth from these and the published one
 * @param first female cocoons for the first spring to come
 * @param springs the springs to come
 * @param target female cocoons wanted in the last of them
 * @param reach chance to have so many or more then
 * @param tunnels tunnels for the largest middle stock on the way
 * @param spare females that can be given away now
 * @param missing females to add now, so that the target is likely enough; −1 when no number does
 * @param cost money for the missing females and tunnels; null without prices
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the table, the catalogue or the version
 */
public record YearsAnswer(
        YearsQuestion question,
        List<OwnYear> own,
        GrowthBelief growth,
        long first,
        List<Spring> springs,
        long target,
        double reach,
        long tunnels,
        long spare,
        long missing,
        @Nullable Double cost,
        List<Parameter> basis,
        String fingerprint) {
    private static final int AHEAD = 5;
    private static final int FARTHEST = 30;
    /** What a year without daughters counts, so that one failure is a bad year and not the end of all chances. */
    private static final double NONE_COUNTS = 0.5;

    private static final double LOW = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double HIGH = 0.9;

    /**
     * Growth of one year of one's own.
     *
     * @param growth daughters for each female cocoon put out, wild females counted as cocoons that would bring as many
     * @param from the column the daughters come from
     */
    public record OwnYear(int year, double growth, String from) {}

    /** Female cocoons for one spring: nine courses in ten are above p10, half above p50, one in ten above p90. */
    public record Spring(int year, double p10, double p50, double p90, long tunnels) {}

    public YearsAnswer {
        own = List.copyOf(own);
        springs = List.copyOf(springs);
        basis = List.copyOf(basis);
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if the table is wrong, the year lies outside what is answered, or no bee is left
     */
    public static YearsAnswer of(YearsQuestion question) {
        return of(question, TextSource.ofFile(question.file()));
    }

    /**
     * Answers the question by this table, whatever file the question names.
     *
     * @throws Refusal if the table is wrong, the year lies outside what is answered, or no bee is left
     */
    public static YearsAnswer of(YearsQuestion question, TextSource table) {
        SortedMap<Integer, KeptYear> kept;
        try {
            kept = KeptYearsCsv.read(table);
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        ReadLog read = new ReadLog(CatalogueFiles.sums("outlook")
                .completedBy(question.species().parameters())
                .completedBy(CatalogueFiles.sums("stocking")));
        read.row("far_stock_survival");
        read.row("local_stock_survival");
        Settlers settlers = Settlers.of(read);
        double settling = settlers.out() * settlers.staying().value();
        List<OwnYear> own = new ArrayList<>();
        double joined = 0;
        for (KeptYear year : kept.values()) {
            joined += year.joined() / kept.size();
            own.addAll(grown(year, kept.get(year.year() + 1), settling, read));
        }
        List<KeptYear> years = List.copyOf(kept.values());
        KeptYear last = years.get(years.size() - 1);
        Daughters now = daughters(last, null, read);
        int begins = now == null ? last.year() : last.year() + 1;
        long first = Math.round(now == null ? last.femalesOut() : now.number());
        if (first == 0 && question.buy() == 0 && joined == 0) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-YEARS-NOTHING",
                    table.name(),
                    "no female is left for the spring of " + begins + ", none is to be bought and none joins.",
                    "Maybe say with --buy how many are bought each year.");
        }
        int by = by(question, begins, last.year());
        GrowthBelief growth = GrowthBelief.of(
                own.stream().mapToDouble(y -> Math.log(y.growth())).toArray(), read);
        Need need = new Need(question, settlers, read);
        StockProjection projection = new StockProjection(
                growth, settling, question.buy(), question.give(), joined, need.nestsMost(), by - begins + 1);
        long target = question.target() == null ? Math.max(1, first) : question.target();
        double[][] courses = projection.run(first);
        List<Spring> springs = new ArrayList<>();
        long tunnels = 0;
        for (int i = 0; i < courses.length; i++) {
            double middle = StockProjection.quantile(courses[i], MIDDLE);
            long wanted = need.tunnels(middle);
            tunnels = Math.max(tunnels, wanted);
            springs.add(new Spring(
                    begins + i,
                    StockProjection.quantile(courses[i], LOW),
                    middle,
                    StockProjection.quantile(courses[i], HIGH),
                    wanted));
        }
        double chance = read.value("spare_chance");
        long missing = projection.missing(first, target, chance);
        Fingerprint print = new Fingerprint("");
        print.add(question.species().latinName());
        print.add(kept);
        print.add(List.of(target, by, question.buy(), question.give(), String.valueOf(question.tunnels())));
        print.add(String.valueOf(question.femalePrice()) + " " + question.tunnelPrice());
        print.add(read.read());
        return new YearsAnswer(
                question,
                own,
                growth,
                first,
                springs,
                target,
                projection.reach(first, target),
                tunnels,
                projection.spare(first, target, chance),
                missing,
                cost(question, missing, tunnels),
                read.read(),
                print.digits());
    }

    private static int by(YearsQuestion question, int begins, int last) {
        int by = question.by() == null ? last + AHEAD : question.by();
        if (by <= begins || by > last + FARTHEST) {
            throw Refusal.usage(
                    "--by is " + by + "; expected a spring from " + (begins + 1) + " to " + (last + FARTHEST) + ".",
                    "");
        }
        return by;
    }

    private static @Nullable Double cost(YearsQuestion question, long missing, long tunnels) {
        Double female = question.femalePrice();
        Double tunnel = question.tunnelPrice();
        if ((female == null && tunnel == null) || missing < 0) {
            return null;
        }
        Integer have = question.tunnels();
        long hang = Math.max(0, tunnels - (have == null ? 0 : have));
        return (female == null ? 0 : female * missing) + (tunnel == null ? 0 : tunnel * hang);
    }

    private static List<OwnYear> grown(KeptYear year, @Nullable KeptYear next, double settling, ReadLog read) {
        double mothers = year.femalesOut() + year.joined() / settling;
        Daughters daughters = daughters(year, next, read);
        return mothers == 0 || daughters == null
                ? List.of()
                : List.of(new OwnYear(
                        year.year(), Math.max(NONE_COUNTS, daughters.number()) / mothers, daughters.from()));
    }

    /** Daughters of a year by the surest of what was written down, or null. */
    private static @Nullable Daughters daughters(KeptYear year, @Nullable KeptYear next, ReadLog read) {
        Double daughters = year.daughters();
        Double cocoons = year.cocoons();
        Double cells = year.cells();
        if (daughters != null) {
            return new Daughters(daughters, "daughters");
        }
        if (next != null) {
            return new Daughters(Math.max(0, next.femalesOut() - next.bought() + next.given()), "females_out");
        }
        double share = 1 / (1 + read.value("males_per_female"));
        if (cocoons != null) {
            return new Daughters(cocoons * share, "cocoons");
        }
        return cells == null ? null : new Daughters(cells * read.value("cell_survival") * share, "cells");
    }

    private record Daughters(double number, String from) {}

    /** Tunnels for a stock, as the command {@code tunnels} counts them. */
    private record Need(YearsQuestion question, Settlers settlers, ReadLog read) {
        long tunnels(double females) {
            Spread nesting = settlers.nesting(females);
            return Math.round(TunnelNeed.of(nesting.value(), nesting.high(), cells(), read)
                    .needed());
        }

        /** Females for whom there are tunnels to fill. */
        double nestsMost() {
            Integer have = question.tunnels();
            double each = TunnelNeed.of(0, 0, cells(), read).cellsEach();
            return have == null ? Double.POSITIVE_INFINITY : have * each / read.value(cells());
        }

        private String cells() {
            return TunnelsAnswer.cellsRow(question.species());
        }
    }
}
