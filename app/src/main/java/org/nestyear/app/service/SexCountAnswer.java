package org.nestyear.app.service;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.sexing.Group;
import org.nestyear.core.sexing.GroupFit;
import org.nestyear.core.sexing.KnownSexes;
import org.nestyear.core.sexing.SexCount;
import org.nestyear.core.sexing.Sized;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.CocoonSizes;
import org.nestyear.data.CocoonSizes.Measure;
import org.nestyear.data.CocoonSizesCsv;
import org.nestyear.data.DataFault;
import org.nestyear.data.TextSource;

/**
 * How many cocoons of a lot are female.
 *
 * @param measure what was measured: weight, width or sieve
 * @param cocoons how many
 * @param count the sexes
 * @param oneGroupBic how well one group describes the lot, lower is better; null when there is too little to tell
 * @param twoGroupBic how well two do, the better of one and of two spreads; null with the other
 * @param byGroups true when the lot's own groups were used, false when the species' known sizes were
 * @param why why that way
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the sizes, the catalogue or the version
 */
public record SexCountAnswer(
        Species species,
        String measure,
        int cocoons,
        SexCount count,
        @Nullable Double oneGroupBic,
        @Nullable Double twoGroupBic,
        boolean byGroups,
        String why,
        List<Parameter> basis,
        String fingerprint) {
    /** Seed of the invented lots. */
    private static final long SEED = 12;

    public SexCountAnswer {
        basis = List.copyOf(basis);
    }

    /**
     * Answers the question.
     *
     * @param file a table of sizes
     * @param mixed true when several kinds or places are in the lot
     * @throws Refusal if the table is wrong, or neither the lot nor the catalogue can tell the sexes
     */
    public static SexCountAnswer of(Path file, Species species, boolean mixed) {
        CocoonSizes table;
        try {
            table = CocoonSizesCsv.read(TextSource.ofFile(file));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        List<Sized> sizes = sizes(table);
        int cocoons = (int) Math.round(sizes.stream().mapToDouble(Sized::count).sum());
        ReadLog read = new ReadLog(CatalogueFiles.sums("sexing").completedBy(species.parameters()));
        double few = read.value("small_cocoons");
        boolean coarse = classes(sizes) < read.value("sieves_least");
        Double one = null;
        Double two = null;
        if (cocoons >= few && !coarse) {
            one = GroupFit.one(sizes).bic();
            two = Math.min(
                    GroupFit.two(sizes, true).bic(), GroupFit.two(sizes, false).bic());
        }
        boolean byGroups = one != null && two != null && two < one && !mixed;
        String why;
        if (byGroups) {
            why = "the cocoons fall into two groups of size, which describe them better than one";
        } else if (mixed) {
            why =
                    "in a lot of several kinds or places the groups are not the sexes, so the known sizes of the species are used";
        } else if (cocoons < few) {
            why = "with fewer than " + Math.round(few)
                    + " cocoons the groups cannot be found in the lot itself, so the known sizes of the species are used";
        } else if (coarse) {
            why = "so few classes of size show no groups, so the known sizes of the species are used";
        } else {
            why =
                    "one group of size describes these cocoons as well as two, so the known sizes of the species are used";
        }
        double sure = read.value("told_certainty");
        SexCount count = byGroups
                ? SexCount.byGroups(sizes, sure, SEED)
                : SexCount.byKnown(sizes, known(file, species, table.measure(), why, read), sure, SEED);
        Fingerprint print = new Fingerprint("");
        print.add(species.latinName());
        print.add(table);
        print.add(mixed);
        print.add(read.read());
        return new SexCountAnswer(
                species, word(table.measure()), cocoons, count, one, two, byGroups, why, read.read(), print.digits());
    }

    private static String word(Measure measure) {
        return measure.name().toLowerCase(Locale.ROOT);
    }

    /** True when cocoons were weighed, in mg; false when they were measured or sieved, in mm. */
    public boolean isWeighed() {
        return measure.equals(word(Measure.WEIGHT));
    }

    private static long classes(List<Sized> sizes) {
        HashSet<Double> found = new HashSet<>();
        sizes.stream().filter(s -> s.count() > 0).forEach(s -> found.add(s.from()));
        return found.size();
    }

    private static List<Sized> sizes(CocoonSizes table) {
        List<Sized> sizes = new ArrayList<>();
        for (int i = 0; i < table.sizes().size(); i++) {
            double size = table.sizes().get(i);
            if (table.measure() != Measure.SIEVE) {
                sizes.add(Sized.of(size));
                continue;
            }
            boolean last = i == table.sizes().size() - 1;
            sizes.add(new Sized(
                    size == 0 ? Double.NEGATIVE_INFINITY : size,
                    last ? Double.POSITIVE_INFINITY : table.sizes().get(i + 1),
                    table.counts().get(i)));
        }
        return sizes;
    }

    private static KnownSexes known(Path file, Species species, Measure measure, String why, ReadLog read) {
        boolean weight = measure == Measure.WEIGHT;
        String what = weight ? "weight" : "width";
        String unit = weight ? "_mg" : "_mm";
        String bee = unit + "_" + TunnelsAnswer.slug(species);
        ParameterTable table = CatalogueFiles.sums("sexing");
        if (!table.has(what + "_f" + bee)) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-SEX-CANNOT-TELL",
                    file.toString(),
                    "the sexes cannot be told: " + why.replace("so the known sizes of the species are used", "and the ")
                            + "sizes of females and males of " + species.latinName() + " are not known.",
                    "Maybe measure 60 cocoons or more of one place, each by itself.");
        }
        Group male = new Group(read.value(what + "_m" + bee), read.value(what + "_m_sd" + bee), 1);
        Group female = new Group(read.value(what + "_f" + bee), read.value(what + "_f_sd" + bee), 1);
        return new KnownSexes(
                male,
                female,
                read.value(what + "_lots_sd" + unit),
                read.value("female_share"),
                read.value("female_share_worth"));
    }
}
