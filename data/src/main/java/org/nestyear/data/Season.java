package org.nestyear.data;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.SeasonInputs;

/**
 * What a season file holds, with the places a later check may have to point to.
 *
 * @param file name of the file as shown in messages
 * @param inputs the season, with every weather file joined
 * @param todayGiven whether the file names the day of the plan; otherwise it is the caller's
 * @param speciesAt where the species of each batch stands, in the order of the batches
 * @param weather the weather files behind it, in order of date
 * @param forecast the forecast file, or null
 */
public record Season(
        String file,
        SeasonInputs inputs,
        boolean todayGiven,
        List<Position> speciesAt,
        List<WeatherFile> weather,
        @Nullable WeatherFile forecast) {
    private static final String LEAFCUTTER_GENUS = "Megachile";

    public Season {
        speciesAt = List.copyOf(speciesAt);
        weather = List.copyOf(weather);
    }

    /** The fault of a batch whose species is not among the known Latin names; batches count from 0. */
    public DataFault unknownSpecies(int batch, Collection<String> known) {
        String given = inputs.batches().get(batch).species();
        boolean leafcutter = given.startsWith(LEAFCUTTER_GENUS);
        String nearest = leafcutter ? null : NearestWord.find(given, known);
        return new DataFault(
                FaultCode.SEASON_SPECIES,
                speciesAt.get(batch),
                leafcutter
                        ? "\"" + given + "\" is a leafcutter bee, and this version plans mason bees only"
                        : "\"" + given + "\" is not a species of the catalogue",
                "one of " + String.join(", ", known),
                leafcutter
                        ? "the command warm was meant: it tells when to warm leafcutters and when they come out"
                        : nearest == null ? "" : "\"" + nearest + "\" was meant");
    }
}
