package org.nestyear.core.plan;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nestyear.core.place.Site;
import org.nestyear.core.release.NoAnswerException;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Species;

/** No bees are ever released outside the range in which their species now lives. */
final class PresentRange {
    private static final List<String> BOXES = List.of("range", "range2");

    private PresentRange() {}

    /** True when the site lies in one of the species' boxes of latitude and longitude (from memory, coarse). */
    static boolean holds(Species species, Site site) {
        ParameterTable table = species.parameters();
        return BOXES.stream()
                .filter(box -> table.has(box + "_lat_low"))
                .anyMatch(box -> site.latitudeDeg() >= table.value(box + "_lat_low")
                        && site.latitudeDeg() <= table.value(box + "_lat_high")
                        && site.longitudeDeg() >= table.value(box + "_lon_low")
                        && site.longitudeDeg() <= table.value(box + "_lon_high"));
    }

    /**
     * Lets a plan go on only inside the range.
     *
     * @throws NoAnswerException outside it, with the reason
     */
    static void require(Species species, Site site) {
        if (!site.isNorthern()) {
            throw new NoAnswerException(
                    "NY-PLAN-SOUTH",
                    "None of these mason bees is native south of the equator, so no release is planned there; ask your"
                            + " local authority which native cavity nesters you may keep.");
        }
        if (!holds(species, site)) {
            String where = Stream.of("range", "range2")
                    .filter(box -> species.parameters().has(box + "_lat_low"))
                    .map(box -> species.parameters().get(box + "_lat_low").locator())
                    .distinct()
                    .collect(Collectors.joining("; "));
            throw new NoAnswerException(
                    "NY-PLAN-RANGE",
                    species.latinName() + " lives in " + where + ", and " + site.name()
                            + " lies outside it, so no release is planned; choose a local species and ask your local"
                            + " authority before moving bees.");
        }
    }
}
