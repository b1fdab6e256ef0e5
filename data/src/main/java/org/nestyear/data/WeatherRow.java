package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.weather.DailyWeather;

/** Reads one row after another and knows the days before it. */
final class WeatherRow {
    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 55;
    /** Above the largest rain ever measured in a day, 1825 mm (WMO archive of extremes, from memory). */
    private static final double WETTEST_MM = 2000;
    /** Above the mean wind of any inhabited place. */
    private static final double WINDIEST_M_S = 60;
    /** Above the sun's daily sum outside the atmosphere at the poles in midsummer, about 45 MJ/m² (FAO-56 table 2.6). */
    private static final double SUNNIEST_MJ_M2 = 50;

    private final SourceText source;
    private final char separator;
    private final WeatherHeader header;
    private final DoubleStream.Builder lows = DoubleStream.builder();
    private final DoubleStream.Builder highs = DoubleStream.builder();
    private @Nullable LocalDate previous;
    private @Nullable String place;
    private int line;

    WeatherRow(SourceText source, char separator, WeatherHeader header) {
        this.source = source;
        this.separator = separator;
        this.header = header;
    }

    /**
     * The day in this row.
     *
     * @throws DataFault the first thing wrong with the row
     */
    DailyWeather read(CsvRecord row) {
        line = (int) row.getStartingLineNumber();
        checkCells(row);
        LocalDate date = date(row);
        checkPlace(row);
        double min = value(row, WeatherColumn.MIN, COLDEST_C, HOTTEST_C);
        double max = value(row, WeatherColumn.MAX, COLDEST_C, HOTTEST_C);
        if (min > max) {
            throw fault(
                    FaultCode.WEATHER_MIN_MAX,
                    WeatherColumn.MIN,
                    "the lowest temperature " + cell(row, WeatherColumn.MIN) + " is above the highest, "
                            + cell(row, WeatherColumn.MAX) + ", on " + date,
                    "the lowest not above the highest",
                    "the two columns are swapped");
        }
        return new DailyWeather(
                date,
                min,
                max,
                rain(row),
                value(row, WeatherColumn.WIND, 0, WINDIEST_M_S),
                value(row, WeatherColumn.RADIATION, 0, SUNNIEST_MJ_M2));
    }

    /** Every lowest temperature read so far, °C, also those of refused rows; may be asked for once. */
    double[] lows() {
        return lows.build().toArray();
    }

    /** Every highest temperature read so far, °C, also those of refused rows; may be asked for once. */
    double[] highs() {
        return highs.build().toArray();
    }

    private void checkCells(CsvRecord row) {
        int needed = 0;
        for (WeatherColumn column : header.columns()) {
            needed = Math.max(needed, header.cell(column) + 1);
        }
        if (row.getFieldCount() < needed) {
            throw new DataFault(
                    FaultCode.WEATHER_CELLS,
                    new Position(source.name(), line, 1),
                    "the row has " + row.getFieldCount() + (row.getFieldCount() == 1 ? " cell" : " cells"),
                    "at least " + needed,
                    "");
        }
        for (int i = header.width(); i < row.getFieldCount(); i++) {
            if (!row.getField(i).isBlank()) {
                throw new DataFault(
                        FaultCode.WEATHER_CELLS,
                        CsvColumns.position(source, line, i, separator),
                        "the row has " + row.getFieldCount() + " cells",
                        header.width() + ", as in the header line",
                        "numbers are written with a decimal comma: write 5.2, or part the cells by semicolons");
            }
        }
    }

    private LocalDate date(CsvRecord row) {
        String cell = cell(row, WeatherColumn.DATE);
        LocalDate date = Cells.date(cell);
        if (date == null) {
            boolean dayFirst = cell.matches("\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}");
            throw fault(
                    FaultCode.WEATHER_DATE,
                    WeatherColumn.DATE,
                    "\"" + cell + "\" is not a day of the calendar written year first",
                    "a date such as 2015-04-20",
                    dayFirst ? "day and month stand first here: write year, month, day" : "");
        }
        LocalDate before = previous;
        if (before != null && date.equals(before)) {
            throw fault(
                    FaultCode.WEATHER_TWICE,
                    WeatherColumn.DATE,
                    date + " stands there twice",
                    "each day once",
                    "hours were exported: ask for daily values");
        }
        if (before != null && date.isBefore(before)) {
            throw fault(
                    FaultCode.WEATHER_ORDER,
                    WeatherColumn.DATE,
                    date + " comes after " + before,
                    "days in order of date",
                    "sort the rows by date, or join two files that overlap");
        }
        previous = date;
        return date;
    }

    private void checkPlace(CsvRecord row) {
        if (header.cell(WeatherColumn.PLACE) < 0) {
            return;
        }
        String here = cell(row, WeatherColumn.PLACE);
        String first = place;
        if (first == null) {
            place = here;
        } else if (!first.equals(here)) {
            throw fault(
                    FaultCode.WEATHER_PLACES,
                    WeatherColumn.PLACE,
                    "the rows are of two places, \"" + first + "\" and \"" + here + "\"",
                    "the days of one place",
                    "delete the rows of the other place");
        }
    }

    private double rain(CsvRecord row) {
        if (cell(row, WeatherColumn.RAIN).equals("T")) {
            return 0;
        }
        return value(row, WeatherColumn.RAIN, 0, WETTEST_MM);
    }

    private double value(CsvRecord row, WeatherColumn column, double low, double high) {
        if (header.cell(column) < 0) {
            return Double.NaN;
        }
        String cell = cell(row, column);
        if (Cells.isMissing(cell)) {
            return Double.NaN;
        }
        double given = Cells.number(cell, separator == ',' ? '.' : ',');
        WeatherUnit unit = header.unit(column);
        if (Double.isNaN(given)) {
            throw fault(
                    FaultCode.WEATHER_NUMBER,
                    column,
                    column.ownName() + " is \"" + cell + "\", which is not a number",
                    "a number in " + unit.symbol() + ", or an empty cell when it was not measured",
                    "");
        }
        double value = unit.toOwn(given);
        if (column == WeatherColumn.MIN) {
            lows.add(value);
        } else if (column == WeatherColumn.MAX) {
            highs.add(value);
        }
        if (!(value >= low && value <= high)) {
            throw fault(
                    FaultCode.WEATHER_RANGE,
                    column,
                    column.ownName() + " is " + cell + " " + unit.symbol(),
                    range(column, low, high),
                    cause(column, given, unit));
        }
        return value;
    }

    private static String range(WeatherColumn column, double low, double high) {
        return String.format(
                Locale.ROOT,
                "%.0f to %.0f %s",
                low,
                high,
                WeatherUnit.of(column).get(0).symbol());
    }

    private static String cause(WeatherColumn column, double given, WeatherUnit unit) {
        if (unit == WeatherUnit.CELSIUS) {
            if (given > HOTTEST_C && given <= 130) {
                return String.format(
                        Locale.ROOT,
                        "this is Fahrenheit (%.1f °C): name the columns tmin_f and tmax_f",
                        WeatherUnit.FAHRENHEIT.toOwn(given));
            }
            return given > 130 ? "these are tenths of a degree" : "the thermometer failed: leave the cell empty";
        }
        return switch (column) {
            case RAIN -> given < 0 ? "a negative value stands for \"not measured\": leave the cell empty" : "";
            case WIND -> "the wind is in km/h or mph: name the column wind_kmh or wind_mph";
            case RADIATION -> "the mean in W/m² is given: name the column radiation_w_m2";
            default -> "the thermometer failed: leave the cell empty";
        };
    }

    private String cell(CsvRecord row, WeatherColumn column) {
        return row.getField(header.cell(column)).strip();
    }

    private DataFault fault(FaultCode code, WeatherColumn column, String found, String expected, String advice) {
        return new DataFault(
                code, CsvColumns.position(source, line, header.cell(column), separator), found, expected, advice);
    }
}
