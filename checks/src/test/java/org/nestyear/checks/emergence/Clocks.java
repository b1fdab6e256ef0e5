package org.nestyear.checks.emergence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.species.Sex;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** The catalogue's clocks, run over whatever a check needs. */
final class Clocks {
    /** Bees along each of the two needs, as many as a printed quantile uses. */
    private static final int GRID = 51;

    private Clocks() {}

    static EmergenceSettings settings(String species, Sex sex) {
        return EmergenceSettings.of(
                CatalogueFiles.load().find(species).orElseThrow().parameters(), sex);
    }

    static ThermalSums outdoors(EmergenceSettings settings, WeatherRecord weather, double latitudeDeg) {
        double[] min = weather.days().stream().mapToDouble(DailyWeather::minC).toArray();
        double[] max = weather.days().stream().mapToDouble(DailyWeather::maxC).toArray();
        assertThat(weather.gaps()).isEmpty();
        return ThermalSums.ofHours(settings, HourlyTemperatures.fromDailyRange(weather.first(), min, max, latitudeDeg));
    }

    /** When each bee of the grid is out, days since the sums begin; see {@link EmergenceClock#times}. */
    static double[] times(EmergenceSettings settings, ThermalSums sums, Storage storage) {
        return new EmergenceClock(settings, GRID).times(sums, storage).clone();
    }

    static double shareInStore(double[] times) {
        return share(times, EmergenceClock.IN_STORE);
    }

    static double shareNotYet(double[] times) {
        return share(times, EmergenceClock.NOT_YET);
    }

    private static double share(double[] times, double mark) {
        return (double) Arrays.stream(times).filter(t -> t == mark).count() / times.length;
    }

    /** The times of those that come out after they are put out, at least one. */
    static double[] out(double[] times) {
        double[] out = Arrays.stream(times).filter(Double::isFinite).toArray();
        assertThat(out).isNotEmpty();
        return out;
    }
}
