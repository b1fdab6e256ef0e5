package org.nestyear.records.book;

/** Tables of places and of what is seen there. */
final class PlaceSheets {
    private PlaceSheets() {}

    static Sheet site() {
        return Columns.sheet(
                        "site",
                        "Sites",
                        "A garden, allotment or orchard where bees are kept.",
                        Column.text("name", "Name", Columns.SHORT).must(),
                        Column.number("latitude_deg", "Latitude, degrees north", -90, 90)
                                .must(),
                        Column.number("longitude_deg", "Longitude, degrees east", -180, 180)
                                .must(),
                        Column.number("elevation_m", "Height above the sea, m", -430, 6000),
                        Column.text("zone", "Time zone", Columns.SHORT).must(),
                        Column.text("region", "Region of its plants", Columns.SHORT),
                        Column.text("weather_file", "Weather table on this computer", 400),
                        Columns.note())
                .keyed("name");
    }

    static Sheet horizon() {
        return Columns.sheet(
                        "horizon",
                        "Skyline",
                        "How high the skyline stands in one direction, seen from the bees' place.",
                        Columns.site(),
                        Column.number("azimuth_deg", "Direction, degrees from north by east", 0, 360)
                                .must(),
                        Column.number("height_deg", "Height of the skyline, degrees", 0, 90)
                                .must())
                .keyed("site", "azimuth_deg");
    }

    static Sheet house() {
        return Columns.sheet(
                        "house",
                        "Houses",
                        "A shelter that holds nests.",
                        Columns.site(),
                        Column.text("name", "Name", Columns.SHORT).must(),
                        Column.number("faces_deg", "Faces, degrees from north by east", 0, 360),
                        Column.number("height_cm", "Height above the ground, cm", 0, 1000),
                        Column.number("roof_out_cm", "Roof stands out, cm", 0, 300),
                        Column.number("roof_above_cm", "Roof above the tunnels, cm", 0, 300),
                        Column.yesNo("fixed", "Fixed so that it cannot swing"),
                        Column.yesNo("guard", "Bird guard in front"),
                        Column.date("put_up_on", "Put up on"),
                        Column.date("taken_down_on", "Taken down on"),
                        Columns.note())
                .where("taken_down_on", "a day not before put_up_on", Columns.order("put_up_on", "taken_down_on"))
                .keyed("site", "name");
    }

    static Sheet nest() {
        return Columns.sheet(
                        "nest",
                        "Nests",
                        "A bundle or block of like tunnels in a house.",
                        Column.link("house", "House", "house").must(),
                        Column.text("name", "Name", Columns.SHORT).must(),
                        Column.word("kind", "Kind of nest", "tube", "reed", "tray", "drilled block")
                                .must(),
                        Column.text("material", "Material", Columns.SHORT),
                        Column.yesNo("openable", "Can be opened").must(),
                        Column.number("hole_width_mm", "Hole width, mm", 2, 25).must(),
                        Column.number("length_mm", "Length of a tunnel, mm", 20, 500),
                        Column.whole("tunnels", "Tunnels", 1, 100_000).must(),
                        Column.whole("first_year", "First year of use", 1900, 2199),
                        Column.date("retired_on", "Taken out of use on"),
                        Columns.note())
                .keyed("house", "name");
    }

    static Sheet photo() {
        return Columns.sheet(
                "photo",
                "Photos",
                "A picture of a site, house or nest.",
                Columns.site(),
                Column.link("house", "House", "house"),
                Column.link("nest", "Nest", "nest"),
                Columns.on("Taken on"),
                Column.text("file_name", "File name", 200).must(),
                Column.word("media_type", "Kind of picture", "image/jpeg", "image/png", "image/webp")
                        .must(),
                Column.text("sha256", "SHA-256 of the picture", 64).must(),
                Column.text("caption", "Caption", 400));
    }

    static Sheet plant() {
        return Columns.sheet(
                        "plant",
                        "Plants",
                        "A plant in reach of the bees.",
                        Columns.site(),
                        Column.text("name", "Name", Columns.SHORT).must(),
                        Column.number("cover_m2", "Ground it covers, m²", 0, 10_000_000)
                                .must(),
                        Column.number("distance_m", "Distance, m", 0, 10_000),
                        Column.yesNo("target", "Bees are kept for it"),
                        Columns.note())
                .keyed("site", "name");
    }

    static Sheet bloom() {
        return Columns.sheet(
                        "bloom",
                        "Bloom seen",
                        "A day of bloom as it was seen on a plant.",
                        Column.link("plant", "Plant", "plant").must(),
                        Columns.on("Day"),
                        Column.word("stage", "Stage", "first", "full", "last").must(),
                        Columns.note())
                .keyed("plant", "on_date", "stage");
    }

    static Sheet spray() {
        return Columns.sheet(
                "spray",
                "Sprays nearby",
                "A spray announced or seen within reach of the bees.",
                Columns.site(),
                Columns.on("Day of the spray"),
                Column.text("what", "What is sprayed", Columns.SHORT),
                Column.text("where_to", "Where", Columns.SHORT),
                Column.text("told_by", "Who told", Columns.SHORT),
                Columns.note());
    }

    static Sheet note() {
        return Columns.sheet(
                "note",
                "Notes",
                "Anything else worth keeping.",
                Columns.site(),
                Columns.on("Day"),
                Column.text("note", "Note", Columns.LONG).must());
    }

    static Sheet visit() {
        return Columns.sheet(
                        "visit",
                        "Visits",
                        "What was counted at a site or house on one day.",
                        Columns.site(),
                        Column.link("house", "House", "house"),
                        Column.species("species", "Kind of bee"),
                        Columns.on("Day"),
                        Columns.count("more_plugged", "More plugged since the last visit"),
                        Columns.count("all_plugged", "Plugged in all"),
                        Columns.count("torch_count", "Tunnels with a bee by torch"),
                        Column.word("mud", "Mud", "wet", "damp", "dry", "none"),
                        Columns.note())
                .where(
                        "more_plugged",
                        "a count, the mud or a note",
                        v -> v.containsKey("more_plugged")
                                || v.containsKey("all_plugged")
                                || v.containsKey("torch_count")
                                || v.containsKey("mud")
                                || v.containsKey("note"))
                .where(
                        "all_plugged",
                        "not fewer than more_plugged",
                        v -> !v.containsKey("all_plugged")
                                || Columns.whole(v, "more_plugged") <= Columns.whole(v, "all_plugged"));
    }

    static Sheet sighting() {
        return Columns.sheet(
                "sighting",
                "Sightings",
                "Something seen: a first bee, the last, an enemy, a guest.",
                Columns.site(),
                Column.species("species", "Kind of bee"),
                Columns.on("Day"),
                Column.word(
                                "what",
                                "What",
                                "first male",
                                "first female",
                                "first nesting",
                                "first plug",
                                "last bee",
                                "parasitoid wasp",
                                "cuckoo bee",
                                "bird",
                                "mouse",
                                "ants",
                                "earwigs",
                                "guest",
                                "dead bees",
                                "other")
                        .must(),
                Columns.count("number_seen", "How many"),
                Columns.note());
    }

    static Sheet reading() {
        return Columns.sheet(
                        "reading",
                        "Temperature readings",
                        "A thermometer read by hand or by a logger; times are the site's local times.",
                        Columns.site(),
                        Column.word("place", "Where", "fridge", "warm room", "incubator", "shed", "tunnel", "outdoors")
                                .must(),
                        Column.moment("read_at", "Read at").must(),
                        Column.number("temperature_c", "Temperature, °C", -60, 90)
                                .must(),
                        Column.number("humidity_percent", "Air moisture, %", 0, 100),
                        Column.text("logger", "Logger", Columns.SHORT),
                        Column.link("batch", "Batch", "batch"))
                .keyed("site", "place", "read_at", "logger", "batch");
    }
}
