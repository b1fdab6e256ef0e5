package org.nestyear.data;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Writes daily weather in our own format, one line a day, values that were not measured as empty cells. Every value is
 * written so that reading it back gives the same number.
 */
public final class WeatherCsvWriter {
    private WeatherCsvWriter() {}

    /**
     * Writes the header line and the days; wind and radiation only where at least one day has them.
     *
     * @throws UncheckedIOException if the writer fails
     */
    public static void write(WeatherRecord record, Writer to) {
        boolean wind = record.days().stream().anyMatch(day -> !Double.isNaN(day.windMs()));
        boolean radiation = record.days().stream().anyMatch(day -> !Double.isNaN(day.radiationMjM2()));
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(to)) {
            List<String> header = new ArrayList<>(List.of("date", "tmin_c", "tmax_c", "rain_mm"));
            if (wind) {
                header.add("wind_m_s");
            }
            if (radiation) {
                header.add("radiation_mj_m2");
            }
            csv.writeRecord(header);
            for (DailyWeather day : record.days()) {
                List<String> cells = new ArrayList<>(
                        List.of(day.date().toString(), cell(day.minC()), cell(day.maxC()), cell(day.rainMm())));
                if (wind) {
                    cells.add(cell(day.windMs()));
                }
                if (radiation) {
                    cells.add(cell(day.radiationMjM2()));
                }
                csv.writeRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(double value) {
        return Double.isNaN(value) ? "" : BigDecimal.valueOf(value).toPlainString();
    }
}
