package org.nestyear.records.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every record table, parents before those that link to them. */
public final class Sheets {
    private static final Map<String, Sheet> ALL = all();

    private Sheets() {}

    /** All tables, parents first. */
    public static List<Sheet> list() {
        return List.copyOf(ALL.values());
    }

    /**
     * The table of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Sheet get(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException("there is no record table " + name));
    }

    /** The table of this name, if there is one. */
    public static Optional<Sheet> find(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    private static Map<String, Sheet> all() {
        Map<String, Sheet> all = new LinkedHashMap<>();
        List.of(
                        PlaceSheets.site(),
                        PlaceSheets.horizon(),
                        PlaceSheets.house(),
                        PlaceSheets.nest(),
                        BeeSheets.batch(),
                        BeeSheets.parent(),
                        PlaceSheets.photo(),
                        BeeSheets.sexing(),
                        BeeSheets.measurement(),
                        BeeSheets.release(),
                        BeeSheets.holdBack(),
                        BeeSheets.unemerged(),
                        PlaceSheets.visit(),
                        PlaceSheets.sighting(),
                        PlaceSheets.reading(),
                        BeeSheets.opening(),
                        BeeSheets.tally(),
                        BeeSheets.rinse(),
                        BeeSheets.transfer(),
                        PlaceSheets.spray(),
                        PlaceSheets.plant(),
                        PlaceSheets.bloom(),
                        PlaceSheets.note())
                .forEach(sheet -> all.put(sheet.name(), sheet));
        return all;
    }
}
