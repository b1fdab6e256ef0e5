package org.nestyear.core.forage;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/**
 * What a square metre of a plant gives in full bloom. A flower gives its pollen once in its life, so of the flowers open
 * only the new ones of a day count; of their pollen a part reaches one bee; and a cell takes all pollen of so many
 * flowers (Müller et al. 2006).
 *
 * @param openM2 flowers open in full bloom, 1/m²
 * @param counted what is counted as one of them
 * @param from where the count comes from
 * @param flowersACell flowers a cell needs, the pollen that does not reach a bee counted in
 * @param cellsM2 cells a day that a square metre feeds in full bloom, 1/(m²·d)
 */
public record FlowerYield(Band openM2, Counted counted, From from, Band flowersACell, Band cellsM2) {
    private static final double ROOT = 0.5;

    /** Where a count of flowers comes from. */
    public enum From {
        /** The keeper counted them. */
        OWN,
        /** Counted on this plant in a study. */
        STUDY,
        /** Not counted on this plant: taken from plants that grow alike. */
        ALIKE;

        /** The word for it, in lower case. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Works out the yield.
     *
     * @param plant the plant, or null for one that is not in the list, taken for a herb
     * @param ownM2 open flowers a square metre counted by the keeper, or null
     * @param read the numbers, read through a log
     */
    public static FlowerYield of(@Nullable GardenPlant plant, @Nullable Double ownM2, Flora flora, ReadLog read) {
        Counted counted = plant == null ? Counted.FLOWER : plant.counted();
        String own = plant == null ? "" : "open_" + counted.plural() + "_" + plant.id();
        boolean studied = flora.numbers().has(own);
        Ranged open;
        if (ownM2 != null) {
            open = new Ranged(1, ownM2, 1);
        } else if (studied) {
            open = Ranged.of(read.row(own));
        } else {
            open = Ranged.of(read.row(alike(plant)));
        }
        Ranged life = Ranged.of(read.row(counted == Counted.HEAD ? "head_life_days" : "flower_life_days"));
        Ranged need = Ranged.of(read.row(
                        counted == Counted.FLORET && plant != null
                                ? "florets_per_larva_" + plant.id()
                                : counted.plural() + "_per_larva"))
                .over(Ranged.of(read.row("pollen_reachable")));
        From from = ownM2 != null ? From.OWN : studied && !isGuess(flora, own) ? From.STUDY : From.ALIKE;
        return new FlowerYield(
                open.band(),
                counted,
                from,
                need.band(),
                open.over(life).over(need).band());
    }

    private static boolean isGuess(Flora flora, String id) {
        return flora.numbers().get(id).basis() == Basis.ASSUMED;
    }

    private static String alike(@Nullable GardenPlant plant) {
        if (plant != null && plant.counted() == Counted.HEAD) {
            return "open_heads";
        }
        return plant != null && plant.growth().isWoody() ? "open_flowers_woody" : "open_flowers_herb";
    }

    /**
     * A number with the factors by which it may be smaller or larger.
     *
     * @param down how many times smaller, 1 or more
     * @param up how many times larger, 1 or more
     */
    private record Ranged(double down, double value, double up) {
        static Ranged of(Parameter row) {
            return new Ranged(row.value() / row.low(), row.value(), row.high() / row.value());
        }

        /** The ratio of two numbers whose errors have nothing to do with each other. */
        Ranged over(Ranged divisor) {
            return new Ranged(both(down, divisor.up), value / divisor.value, both(up, divisor.down));
        }

        private static double both(double one, double other) {
            return Math.exp(Math.pow(Math.pow(Math.log(one), 2) + Math.pow(Math.log(other), 2), ROOT));
        }

        Band band() {
            return new Band(value / down, value, value * up);
        }
    }
}
