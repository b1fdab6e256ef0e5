package org.nestyear.app.service;

import java.nio.file.Path;
import org.nestyear.core.weather.FilledWeather;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.DataFault;
import org.nestyear.data.TextSource;
import org.nestyear.data.WeatherFile;
import org.nestyear.data.WeatherFiles;

/**
 * A station's table of daily weather, as measured and with its gaps filled.
 *
 * @param name name of the file as the keeper gave it
 */
record StationWeather(String name, WeatherRecord measured, FilledWeather filled) {
    /**
     * Reads one.
     *
     * @throws Refusal if the file is wrong or has a gap that cannot be filled
     */
    static StationWeather read(Path path) {
        WeatherFile file;
        try {
            file = WeatherFiles.read(TextSource.ofFile(path));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        try {
            return new StationWeather(file.name(), file.record(), GapFilling.fill(file.record()));
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.Kind.NO_ANSWER, "NY-WEATHER-GAP", file.name(), e.getMessage() + ".", "");
        }
    }
}
