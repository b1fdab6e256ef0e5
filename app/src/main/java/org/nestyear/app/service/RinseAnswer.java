package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.nestyear.core.hygiene.RinseItem;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/**
 * Whether an item may be rinsed, with how strong a mixture, and with what care.
 *
 * @param allowed false when it must not be done
 * @param verdict why, in a sentence
 * @param steps how it is done, empty when it must not be
 * @param cautions what keeps hands, eyes, lungs and water safe; never empty
 * @param published the strengths published for bees and the like, weakest first
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record RinseAnswer(
        RinseQuestion question,
        boolean allowed,
        String verdict,
        List<String> steps,
        List<String> cautions,
        List<Parameter> published,
        List<Parameter> basis,
        String fingerprint) {
    private static final String STRENGTH = "strength_";
    private static final String FOR_COCOONS = "strength_cocoon_";

    public RinseAnswer {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
        published = List.copyOf(published);
        basis = List.copyOf(basis);
    }

    /** Answers the question. */
    public static RinseAnswer of(RinseQuestion question) {
        ParameterTable table = CatalogueFiles.sums("hygiene");
        ReadLog read = new ReadLog(table);
        List<Parameter> published = new ArrayList<>();
        for (Parameter row : table.rows()) {
            if (row.id().startsWith(STRENGTH)) {
                published.add(read.row(row.id()));
            }
        }
        published.sort(Comparator.comparingDouble(Parameter::value));
        double most = published.stream()
                .filter(row -> row.id().startsWith(FOR_COCOONS))
                .mapToDouble(Parameter::high)
                .max()
                .orElseThrow();
        boolean tooStrong =
                question.item() == RinseItem.COCOON && question.mixture().ppm() > most;
        boolean allowed = question.item().isEverRinsed() && !tooStrong;
        String verdict = tooStrong
                ? "No: the strongest mixture that anyone is known to use on cocoons has " + Wording.number(most, 0)
                        + " ppm; stronger ones are for empty gear."
                : verdict(question.item());
        List<String> steps = allowed ? steps(question.item(), read) : List.of();
        List<String> cautions = cautions(question, read);
        Fingerprint print = new Fingerprint("");
        print.add(question);
        print.add(read.read());
        return new RinseAnswer(question, allowed, verdict, steps, cautions, published, read.read(), print.digits());
    }

    private static String verdict(RinseItem item) {
        return switch (item) {
            case GEAR -> "Yes, when it is empty: no bee, cocoon or cell may be left in it.";
            case COCOON ->
                "Only if chalkbrood or mites were seen. Otherwise mason cocoons are rinsed in cool water and nothing else.";
            case LEAF_CELL ->
                "No: leafcutter cells are never washed at home, because the leaf is not waterproof. Keep them dry and pick"
                        + " out what is ill. The strong dips below are for loose, tumbled cells of seed growers.";
            case GUEST ->
                "No: guests are never washed, chilled or bagged. Leave their nests outdoors, whole and dry, until they have"
                        + " flown.";
        };
    }

    private static List<String> steps(RinseItem item, ReadLog read) {
        if (item == RinseItem.GEAR) {
            return List.of(
                    "Brush and wash off all mud, pollen and droppings first: dirt uses up the bleach.",
                    "Wet every face, rinse with clean water, and let it dry fully in the air before it is used.");
        }
        return List.of(
                "Brush off mud and loose droppings first, with the cocoons in cool water.",
                "Dip them for 1 to " + Wording.number(read.value("cocoon_dip_most_min"), 0)
                        + " minutes, never longer: bleach eats the silk.",
                "Rinse for 3 to " + Wording.number(read.value("cocoon_rinse_min"), 0) + " minutes in cool clean water.",
                "Dry them on a screen for " + Wording.number(read.value("cocoon_dry_h"), 0)
                        + " hour or longer, in the cool, until no damp is left; then back to the cold.");
    }

    private static List<String> cautions(RinseQuestion question, ReadLog read) {
        List<String> cautions = new ArrayList<>();
        double months = read.value("bottle_fresh_months");
        Parameter label = read.row("label_percent");
        Double age = question.bottleMonths();
        if (age != null && age > months) {
            cautions.add("This bottle is " + Wording.number(age, 0)
                    + " months old and weaker than its label by an unknown" + " part: buy a fresh one.");
        } else {
            cautions.add("A bottle older than " + Wording.number(months, 0)
                    + " months, or without a date, is weaker than its label: buy a fresh one.");
        }
        cautions.add(
                "Never mix bleach with vinegar or any other acid, nor with ammonia: both give poisonous gas. Nor with"
                        + " peroxide, oven or drain cleaner, or insecticide.");
        cautions.add(
                "Work outdoors or with windows open. Wear gloves, eye protection and old clothes; children and animals"
                        + " stay away.");
        cautions.add("Follow the label, which is law. Take plain bleach with its strength on the label, "
                + Wording.number(label.low(), 0) + " to " + Wording.number(label.high(), 0) + " %: no"
                + " splashless, scented or colour-safe kind.");
        cautions.add("Mix it cold and fresh, and throw out after " + Wording.number(read.value("mixture_fresh_h"), 0)
                + " hours what is left. Bleach eats metal and screens.");
        cautions.add(
                "Used water carries spores and bleach: not near nests or plants, nor into storm drains, ponds or, in"
                        + " bulk, septic tanks. Local rules on waste water decide.");
        return cautions;
    }
}
