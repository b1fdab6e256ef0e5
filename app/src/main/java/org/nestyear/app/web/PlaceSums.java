package org.nestyear.app.web;

import static org.nestyear.app.web.SumFact.number;
import static org.nestyear.app.web.SumField.choice;
import static org.nestyear.app.web.SumField.several;
import static org.nestyear.app.web.SumField.text;

import java.util.List;
import org.nestyear.app.web.SumField.Choice;

/** Calculators of a place. */
final class PlaceSums {
    private PlaceSums() {}

    static List<Sum> all() {
        return List.of(sun(), facing());
    }

    private static Sum sun() {
        return Sum.of(
                        "sun",
                        "The sun on a front",
                        "Where does the sun stand, and how much light falls on the house?",
                        "sun")
                .leads(3)
                .asks(
                        latitude(),
                        longitude(),
                        text("--at", "Date and time with offset from UTC", "2015-04-20T10:00:00-04:00")
                                .help("Such as 2015-04-20T10:00:00-04:00: the clock says ten, four hours behind UTC."),
                        faces(),
                        elevation())
                .shows(
                        number("Direction of the sun", "azimuth_deg", 1, "°"),
                        number("From straight up", "zenith_deg", 1, "°"),
                        number("Light on level ground", "clear_sky_w_m2", 0, "W/m²"),
                        number("Light on the front", "facade_w_m2", 0, "W/m²"));
    }

    private static Sum facing() {
        return Sum.of("facing", "Which way to face", "Which way should the front of the house look?", "facing")
                .asks(
                        choice(
                                "--for",
                                "Bees",
                                "mason",
                                () -> List.of(
                                        new Choice("mason", "mason bees"),
                                        new Choice("leafcutter", "leafcutter bees"))),
                        latitude(),
                        longitude(),
                        text("--zone", "Time zone", "America/New_York")
                                .help("By continent and city: America/New_York."),
                        faces(),
                        several("--horizon", "Skyline, direction:height in degrees", "60:12 120:5 200:20")
                                .optional()
                                .help("Sighted points, parted by spaces: 60:12 120:5. A level horizon unless told."),
                        elevation(),
                        text("--excess-c", "Tunnels warmer than the air, °C", "")
                                .optional()
                                .help("For every 100 W/m² on the front, if you have measured it."),
                        TimeSums.weather())
                .shows(
                        number("Best way to look", "facings/0/faces_deg", 0, "°"),
                        number("Sun before ten, that way", "facings/0/morning_sun_minutes", 0, "minutes"),
                        number("Light before ten, that way", "facings/0/morning_wh_m2", 0, "Wh/m²"));
    }

    private static SumField latitude() {
        return text("--lat", "Latitude, degrees north", "40.78").help("South of the equator with a minus.");
    }

    private static SumField longitude() {
        return text("--lon", "Longitude, degrees east", "-73.97").help("West of Greenwich with a minus.");
    }

    private static SumField faces() {
        return text("--faces", "The front looks to, degrees", "135")
                .optional()
                .help("Clockwise from north: 90 east, 180 south.");
    }

    private static SumField elevation() {
        return text("--elevation-m", "Height above the sea, m", "").optional().help("0 unless told.");
    }
}
