package org.nestyear.app.service;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;

/**
 * The first sixteen hexadecimal digits of a SHA-256 over everything an answer depends on. Weather after the day of the
 * plan is left out, because a plan does not read it.
 */
final class Fingerprint {
    private static final int DIGITS = 16;

    private final MessageDigest digest;

    /**
     * @param catalogue text that changes with any number of the catalogue
     */
    Fingerprint(String catalogue) {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
        add(Version.NUMBER);
        add(catalogue);
    }

    static String of(SeasonInputs inputs, String catalogue) {
        Fingerprint print = new Fingerprint(catalogue);
        print.add(inputs.site());
        print.add(inputs.batches());
        print.add(inputs.nests());
        print.add(inputs.plants());
        print.add(String.valueOf(inputs.community()));
        print.add(inputs.sprays());
        print.add(inputs.goal());
        print.add(inputs.today());
        print.addWeather(inputs.weather().upTo(inputs.today()).orElse(null));
        print.addWeather(inputs.forecast());
        return print.digits();
    }

    /** Adds a value; records, enums, dates and numbers have one text each. */
    void add(Object value) {
        digest.update(value.toString().getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
    }

    private void addWeather(@Nullable WeatherRecord weather) {
        if (weather != null) {
            for (DailyWeather day : weather.days()) {
                add(day);
            }
        }
        add("end of weather");
    }

    String digits() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }
}
