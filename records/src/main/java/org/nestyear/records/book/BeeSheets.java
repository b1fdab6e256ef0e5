package org.nestyear.records.book;

import java.util.Arrays;
import java.util.stream.Stream;
import org.nestyear.core.losses.Cause;

/** Tables of batches of bees and of what is done with them. */
final class BeeSheets {
    private BeeSheets() {}

    static Sheet batch() {
        return Columns.sheet(
                        "batch",
                        "Batches",
                        "Bees of one kind, origin and year kept together; the year is the one they fly in.",
                        Columns.site(),
                        Column.text("name", "Name", Columns.SHORT).must(),
                        Columns.bees(),
                        Column.whole("year", "Year they fly", 1900, 2199).must(),
                        Column.text("origin", "Where they come from (local, or a place)", Columns.SHORT)
                                .must(),
                        Column.text("subspecies", "Subspecies, where known", Columns.SHORT),
                        Column.word(
                                        "came_by",
                                        "How they came",
                                        "own nests",
                                        "bought",
                                        "gift",
                                        "swap",
                                        "joined from the wild")
                                .must(),
                        Columns.count("cocoons", "Cocoons or cells"),
                        Columns.count("females", "Females"),
                        Columns.count("males", "Males"),
                        Column.word("wintered", "Where they winter", "fridge", "shed", "outdoors", "unopened"),
                        Column.date("cold_from", "In the cold since"),
                        Column.number("cold_c", "Cold, °C", -30, 20),
                        Column.date("quarantine_until", "Kept apart until"),
                        Columns.note())
                .where(
                        "cocoons",
                        "cocoons, or females and males",
                        v -> v.containsKey("cocoons") || v.containsKey("females"))
                .keyed("name");
    }

    static Sheet parent() {
        return Columns.sheet(
                        "parent",
                        "Parents of batches",
                        "A batch whose bees built the nests that another batch came out of.",
                        Column.link("batch", "Batch", "batch").must(),
                        Column.link("from_batch", "Parent batch", "batch").must())
                .where(
                        "from_batch",
                        "another batch than its own",
                        v -> !Columns.text(v, "batch").equals(Columns.text(v, "from_batch")))
                .keyed("batch", "from_batch");
    }

    static Sheet sexing() {
        return Columns.sheet(
                "sexing",
                "Sexing",
                "A count of females and males in a batch, and how it was made.",
                Column.link("batch", "Batch", "batch").must(),
                Columns.on("Day"),
                Column.word("method", "How", "weight", "width", "sieve", "candling", "opened", "by eye")
                        .must(),
                Columns.count("females", "Females").must(),
                Columns.count("males", "Males").must(),
                Columns.count("cannot_tell", "Cannot tell"),
                Columns.note());
    }

    static Sheet measurement() {
        return Columns.sheet(
                        "measurement",
                        "Cocoons measured",
                        "One cocoon weighed or measured.",
                        Column.link("batch", "Batch", "batch").must(),
                        Columns.on("Day"),
                        Column.number("weight_mg", "Weight, mg", 1, 1000),
                        Column.number("width_mm", "Width, mm", 1, 25),
                        Column.number("length_mm", "Length, mm", 1, 40),
                        Column.word("sex", "Sex, if known", "female", "male"))
                .where(
                        "weight_mg",
                        "a weight, a width or a length",
                        v -> v.containsKey("weight_mg") || v.containsKey("width_mm") || v.containsKey("length_mm"));
    }

    static Sheet release() {
        return Columns.sheet(
                        "release",
                        "Releases",
                        "Bees of a batch put out on one day.",
                        Column.link("batch", "Batch", "batch").must(),
                        Column.link("site", "Site", "site").must(),
                        Column.link("house", "House", "house"),
                        Columns.on("Put out on"),
                        Columns.count("cocoons", "Cocoons or cells"),
                        Columns.count("females", "Females"),
                        Columns.count("males", "Males"),
                        Columns.note())
                .where(
                        "cocoons",
                        "cocoons, or females and males",
                        v -> v.containsKey("cocoons") || v.containsKey("females") || v.containsKey("males"));
    }

    static Sheet holdBack() {
        return Columns.sheet(
                        "hold_back",
                        "Held back",
                        "Bees of a batch kept cold on purpose when others were put out.",
                        Column.link("batch", "Batch", "batch").must(),
                        Columns.on("Day"),
                        Columns.count("cocoons", "Cocoons or cells").must(),
                        Column.date("until_date", "Until"),
                        Columns.note())
                .where("until_date", "a day not before on_date", Columns.order("on_date", "until_date"));
    }

    static Sheet unemerged() {
        return Columns.sheet(
                        "unemerged",
                        "Unemerged",
                        "What was left in the release box after the flight: the winter's real score.",
                        Column.link("batch", "Batch", "batch").must(),
                        Columns.on("Counted on"),
                        Columns.count("put_out", "Cocoons or cells put out").must(),
                        Columns.count("left_closed", "Left closed").must(),
                        Columns.count("dead_inside", "Of these, dead bees inside"),
                        Columns.count("parasites_inside", "Of these, parasites inside"),
                        Columns.note())
                .where(
                        "left_closed",
                        "not more than put_out",
                        v -> Columns.whole(v, "left_closed") <= Columns.whole(v, "put_out"))
                .where(
                        "dead_inside",
                        "with parasites_inside not more than left_closed",
                        v -> Columns.whole(v, "dead_inside") + Columns.whole(v, "parasites_inside")
                                <= Columns.whole(v, "left_closed"));
    }

    static Sheet opening() {
        return Columns.sheet(
                        "opening",
                        "Openings",
                        "Nests of one kind of bee opened at a site on one day.",
                        Columns.site(),
                        Columns.bees(),
                        Columns.on("Day"),
                        Column.whole("year", "Year the nests were built", 1900, 2199)
                                .must(),
                        Columns.note())
                .where("year", "the year of on_date or the one before", v -> {
                    int year = Integer.parseInt(Columns.text(v, "on_date").substring(0, 4));
                    return Columns.whole(v, "year") == year || Columns.whole(v, "year") == year - 1;
                });
    }

    static Sheet tally() {
        String[] found = Stream.concat(
                        Stream.of("alive"), Arrays.stream(Cause.values()).map(Cause::word))
                .toArray(String[]::new);
        return Columns.sheet(
                        "tally",
                        "Tally",
                        "Cells of one sort found in opened nests: alive, or lost to one cause.",
                        Column.link("opening", "Opening", "opening").must(),
                        Column.link("house", "House", "house"),
                        Column.link("nest", "Nest", "nest"),
                        Column.text("tunnel", "Tunnel or block", Columns.SHORT),
                        Column.word("found", "Found", found).must(),
                        Columns.count("cells", "Cells").must())
                .keyed("opening", "house", "nest", "tunnel", "found");
    }

    static Sheet rinse() {
        return Columns.sheet(
                "rinse",
                "Rinses",
                "A rinse of gear or cocoons.",
                Columns.site(),
                Column.link("batch", "Batch", "batch"),
                Columns.on("Day"),
                Column.word("item", "What was rinsed", "gear", "cocoon").must(),
                Column.number("strength_ppm", "Free chlorine, ppm (0 for plain water)", 0, 100_000),
                Column.number("minutes", "Minutes", 0, 1440),
                Column.number("water_c", "Water, °C", 0, 60),
                Column.yesNo("dried", "Dried fully before the cold"),
                Columns.note());
    }

    static Sheet transfer() {
        return Columns.sheet(
                "transfer",
                "Bought, given, sold",
                "Bees that came from or went to somebody else, with what their label says.",
                Columns.site(),
                Column.link("batch", "Batch", "batch"),
                Columns.on("Day"),
                Column.word("direction", "Came or went", "in", "out").must(),
                Column.word("manner", "How", "bought", "gift", "sold", "swap").must(),
                Columns.bees(),
                Columns.count("cocoons", "Cocoons or cells").must(),
                Columns.count("females", "Females"),
                Columns.count("males", "Males"),
                Column.text("from_place", "From (county or place)", Columns.SHORT)
                        .must(),
                Column.text("to_place", "To (county or place)", Columns.SHORT).must(),
                Column.whole("harvest_year", "Year the nests were built", 1900, 2199),
                Column.text("health", "Health findings", 400),
                Column.date("use_by", "Use by"),
                Column.date("quarantine_until", "Kept apart until"),
                Column.text("permit", "Permit, where one is needed", Columns.SHORT),
                Columns.note());
    }
}
