package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.stocking.Settlers;
import org.nestyear.core.stocking.Spread;
import org.nestyear.core.stocking.TunnelNeed;
import org.nestyear.data.CatalogueFiles;

/**
 * How many bees and tunnels for an orchard.
 *
 * @param hectares area taken
 * @param females females that should nest
 * @param femaleCocoons female cocoons to put out for that
 * @param maleCocoons male cocoons that go with them
 * @param tunnels tunnels to hang
 * @param need width and depth of the tunnels
 * @param rate the published rate
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record OrchardAnswer(
        OrchardQuestion question,
        Spread hectares,
        Spread females,
        Spread femaleCocoons,
        Spread maleCocoons,
        Spread tunnels,
        TunnelNeed need,
        Parameter rate,
        List<Parameter> basis,
        String fingerprint) {
    private static final double SQUARE_METRES_PER_HECTARE = 10_000;
    private static final String RATE = "rate_";
    /** Crops of which a handbook says that no rate is established (SARE Handbook 11, chapter 6). */
    private static final List<String> NONE_ESTABLISHED = List.of("cherry", "pear");

    public OrchardAnswer {
        basis = List.copyOf(basis);
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if there is no standard rate for the crop and the species
     */
    public static OrchardAnswer of(OrchardQuestion question) {
        Species species = question.species();
        ParameterTable stocking = CatalogueFiles.sums("stocking");
        String id = RATE + slug(question.crop()) + "_" + TunnelsAnswer.slug(species);
        if (!stocking.has(id)) {
            throw noRate(question, stocking);
        }
        String cells = TunnelsAnswer.cellsRow(species);
        ReadLog read = new ReadLog(EitherBee.nesting(species));
        Parameter rate = read.row(id);
        Spread hectares = hectares(question, read);
        Spread females = new Spread(
                        hectares.low() * rate.low(), hectares.value() * rate.value(), hectares.high() * rate.high())
                .roundedUp();
        Spread cocoons = Settlers.of(read).cocoons(females).roundedUp();
        double males = read.value("males_per_female");
        TunnelNeed need = TunnelNeed.of(females.value(), females.value(), cells, read);
        TunnelNeed few = TunnelNeed.of(females.low(), females.low(), cells, read);
        TunnelNeed many = TunnelNeed.of(females.high(), females.high(), cells, read);
        Fingerprint print = new Fingerprint("");
        print.add(species.latinName());
        print.add(question.crop());
        print.add(hectares);
        print.add(read.read());
        return new OrchardAnswer(
                question,
                hectares,
                females,
                cocoons,
                new Spread(cocoons.low() * males, cocoons.value() * males, cocoons.high() * males).roundedUp(),
                new Spread(few.needed(), need.needed(), many.needed()),
                need,
                rate,
                read.read(),
                print.digits());
    }

    /** All cocoons, of both sexes. */
    public Spread cocoons() {
        return new Spread(
                femaleCocoons.low() + maleCocoons.low(),
                femaleCocoons.value() + maleCocoons.value(),
                femaleCocoons.high() + maleCocoons.high());
    }

    private static Spread hectares(OrchardQuestion question, ReadLog read) {
        Double area = question.squareMetres();
        Integer trees = question.trees();
        if (area != null) {
            return times(area, new Spread(1, 1, 1));
        }
        if (trees == null) {
            throw new IllegalArgumentException("neither an area nor trees are told");
        }
        Double each = question.squareMetresPerTree();
        if (each != null) {
            return times(trees, new Spread(each, each, each));
        }
        Parameter usual = read.row("tree_area_m2");
        return times(trees, new Spread(usual.low(), usual.value(), usual.high()));
    }

    private static Spread times(double number, Spread squareMetres) {
        double share = number / SQUARE_METRES_PER_HECTARE;
        return new Spread(share * squareMetres.low(), share * squareMetres.value(), share * squareMetres.high());
    }

    private static Refusal noRate(OrchardQuestion question, ParameterTable stocking) {
        String crop = question.crop();
        List<String> others = new ArrayList<>();
        List<String> crops = new ArrayList<>();
        for (Species species : EitherBee.all()) {
            String end = "_" + TunnelsAnswer.slug(species);
            for (Parameter row : stocking.rows()) {
                if (row.id().startsWith(RATE) && row.id().endsWith(end)) {
                    String named = row.id().substring(RATE.length(), row.id().length() - end.length());
                    if (!crops.contains(named)) {
                        crops.add(named);
                    }
                    if (named.equals(slug(crop))) {
                        others.add(species.latinName());
                    }
                }
            }
        }
        String why;
        if (!others.isEmpty()) {
            why = "There is no standard rate for " + crop + " with "
                    + question.species().latinName() + "; one was found for " + String.join(", ", others) + ".";
        } else if (NONE_ESTABLISHED.contains(slug(crop))) {
            why = "There is no standard rate for " + crop
                    + ": handbooks say that none is established, and trials beside"
                    + " honey bees raised fruit set but not the crop.";
        } else {
            why = "There is no standard rate for " + crop + "; rates were found for " + String.join(", ", crops) + ".";
        }
        return new Refusal(
                Refusal.Kind.NO_ANSWER,
                "NY-ORCHARD-NO-RATE",
                "",
                why,
                others.isEmpty() && !NONE_ESTABLISHED.contains(slug(crop)) ? Spelling.advice(crop, crops) : "");
    }

    private static String slug(String crop) {
        return crop.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "_");
    }
}
