package org.nestyear.checks.reference;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.sun.DayLength;
import org.nestyear.core.sun.DaySpan;

class DayLengthTest {
    /**
     * daylength.csv: 10 latitudes × 16 days by a reference program with the same published series
     * (Spencer declination, −0.8333°, solar time); it writes −99 for polar night and 99 for polar day. Tolerance 1e-9 h
     * as that folder's README asks.
     */
    @Test
    void agreesWithTheReferenceTable() {
        Comparison rise = new Comparison("sunrise, solar h", 1e-9);
        Comparison set = new Comparison("sunset, solar h", 1e-9);
        Comparison length = new Comparison("day length, h", 1e-9);
        for (NamedCsvRecord row : SharedData.rows("reference/*/daylength.csv")) {
            String name = "latitude " + row.getField("lat") + " day " + row.getField("jday");
            DaySpan span = DayLength.of(SharedData.number(row, "lat"), Integer.parseInt(row.getField("jday")));
            length.add(name, span.lengthHours(), SharedData.number(row, "daylength_h"));
            if (Math.abs(SharedData.number(row, "sunrise_h")) < 24) {
                rise.add(name, span.sunriseHour(), SharedData.number(row, "sunrise_h"));
                set.add(name, span.sunsetHour(), SharedData.number(row, "sunset_h"));
            }
        }
        length.check(160);
        rise.check(150);
        set.check(150);
    }
}
