package org.nestyear.app.service;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.count.ContainerSamples;
import org.nestyear.core.count.Freedom;
import org.nestyear.core.count.ShareSample;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/**
 * How many to look at, and whether they may be opened.
 *
 * @param n how many to look at
 * @param exact the smallest number by exact odds, or null when the aim has none
 * @param ill how many are ill at the prevalence asked for, or null
 * @param chance chance to see an ill one with the smallest number by exact odds, or null when the aim has none
 * @param lookAtAll true when there are so few nests that all are looked at whatever the sum says
 * @param opening whether cocoons may be opened for it
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record SampleAnswer(
        SampleQuestion question,
        int n,
        @Nullable Integer exact,
        @Nullable Integer ill,
        @Nullable Double chance,
        boolean lookAtAll,
        Opening opening,
        List<Parameter> basis,
        String fingerprint) {

    private static final double ROUNDING = 1e-9;

    public SampleAnswer {
        basis = List.copyOf(basis);
    }

    /** Answers the question. */
    public static SampleAnswer of(SampleQuestion question) {
        ReadLog read = new ReadLog(CatalogueFiles.sums("counting").completedBy(CatalogueFiles.sums("mason_bees")));
        OptionalInt population = question.population();
        int n;
        Integer exact = null;
        Integer ill = null;
        Double chance = null;
        Freedom freedom = null;
        if (question.aim() instanceof SampleQuestion.See see) {
            if (population.isPresent()) {
                freedom = new Freedom(population.getAsInt(), see.prevalence(), see.confidence(), see.sensitivity());
                exact = freedom.exactSampleSize();
                ill = freedom.ill();
                chance = freedom.chanceToSee(exact);
            }
            n = freedom == null
                    ? Freedom.ofVeryMany(see.prevalence(), see.confidence(), see.sensitivity())
                    : freedom.sampleSize();
        } else if (question.aim() instanceof SampleQuestion.Know know) {
            n = new ShareSample(know.expected(), know.margin(), know.confidence()).sampleSize(population);
        } else {
            n = ContainerSamples.of(population.orElseThrow(), read);
        }
        boolean all = false;
        Opening opening = new Opening(false, 0, null, false);
        if (question.things() == SampleQuestion.Things.COCOONS) {
            opening = opening(read, population, n, freedom);
        } else if (question.things() == SampleQuestion.Things.NESTS) {
            all = population.isPresent() && population.getAsInt() < read.value("nests_look_all");
            read.value("nests_first_share");
            read.value("nests_open_all_share");
            n = all ? population.getAsInt() : n;
        }
        Fingerprint print = new Fingerprint("");
        print.add(question);
        print.add(read.read());
        return new SampleAnswer(question, n, exact, ill, chance, all, opening, read.read(), print.digits());
    }

    /** False when even looking at all of them leaves the confidence asked for out of reach. */
    public boolean isReached() {
        Double best = chance;
        return best == null
                || !(question.aim() instanceof SampleQuestion.See see)
                || best >= see.confidence() - ROUNDING;
    }

    private static Opening opening(ReadLog read, OptionalInt population, int n, @Nullable Freedom freedom) {
        double small = read.value("small_stock_check");
        double share = read.value("open_share_most");
        if (population.isEmpty()) {
            return new Opening(false, 0, null, false);
        }
        int all = population.getAsInt();
        if (all < small) {
            return new Opening(false, 0, null, true);
        }
        int most = (int) Math.floor(all * share);
        return new Opening(n <= most, most, freedom == null ? null : freedom.chanceToSee(most), false);
    }

    /**
     * Whether cocoons may be opened, which kills what is in them.
     *
     * @param allowed true when all {@code n} may be
     * @param most the most that may be opened
     * @param chanceWithMost the chance to see an ill one among those, or null when that was not asked
     * @param smallStock true when the stock is too small to open any
     */
    public record Opening(
            boolean allowed, int most, @Nullable Double chanceWithMost, boolean smallStock) {}
}
