package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumField.text;

import java.util.List;

/** Calculators of a place. */
final class PlaceSums {
    private PlaceSums() {}

    static List<Sum> all() {
        return List.of(sun());
    }

    private static Sum sun() {
        return Sum.of(
                        "sun",
                        "The sun on a front",
                        "Where does the sun stand, and how much light falls on the house?",
                        "sun")
                .leads(3)
                .asks(
                        text("--lat", "Latitude, degrees north", "40.78").help("South of the equator with a minus."),
                        text("--lon", "Longitude, degrees east", "-73.97").help("West of Greenwich with a minus."),
                        text("--at", "Date and time with offset from UTC", "2015-04-20T10:00:00-04:00")
                                .help("Such as 2015-04-20T10:00:00-04:00: the clock says ten, four hours behind UTC."),
                        text("--faces", "The front looks to, degrees", "135")
                                .optional()
                                .help("Clockwise from north: 90 east, 180 south."),
                        text("--elevation-m", "Height above the sea, m", "").optional())
                .shows(
                        number("Direction of the sun", "azimuth_deg", 1, "°"),
                        number("From straight up", "zenith_deg", 1, "°"),
                        number("Light on level ground", "clear_sky_w_m2", 0, "W/m²"),
                        number("Light on the front", "facade_w_m2", 0, "W/m²"));
    }
}
