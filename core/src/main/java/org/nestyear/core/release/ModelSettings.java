package org.nestyear.core.release;

import java.util.List;
import org.nestyear.core.bloom.BloomSettings;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.flight.FlightSettings;
import org.nestyear.core.nesting.NestingSettings;
import org.nestyear.core.nesting.TunnelStock;
import org.nestyear.core.season.Nests;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.species.Sex;
import org.nestyear.core.winter.ColdRecord;

/** Every number the release model reads, in one set: the catalogue's values, or one draw from their ranges. */
record ModelSettings(
        EmergenceSettings female,
        EmergenceSettings male,
        FlightSettings flight,
        BloomSettings bloom,
        NestingSettings nesting,
        TunnelStock tunnels,
        ColdRecord cold,
        BoxLoss box,
        double boxExcessC,
        double chillLimitC) {
    static ModelSettings of(ParameterReader parameters, List<Nests> nests) {
        return new ModelSettings(
                EmergenceSettings.of(parameters, Sex.FEMALE),
                EmergenceSettings.of(parameters, Sex.MALE),
                FlightSettings.of(parameters),
                BloomSettings.of(parameters),
                NestingSettings.of(parameters),
                TunnelStock.of(nests, parameters),
                new ColdRecord(parameters),
                BoxLoss.of(parameters),
                parameters.value("box_excess_c"),
                parameters.value("chill_limit_c"));
    }
}
