package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/** Hang the house, its nests and its guard before the first bee flies. */
public final class HouseJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        Parameter mesh = read.row("guard_mesh_mm");
        Parameter gap = read.row("guard_gap_mm");
        Parameter height = read.row("house_height_m");
        LocalDate before = s.choosesItself()
                ? s.outlook().firstMales().early()
                : s.release().window().from();
        return Optional.of(new Job(
                "house",
                Phrase.of("Hang the house and its guard"),
                s.today(),
                s.notBeforeToday(before.minusDays(1)),
                Phrase.of(
                        "{}, {} to {} up, front in the morning sun; mesh of {} to {} held {} to {} off the face",
                        s.tunnels() == 0
                                ? Phrase.of("no tunnels yet")
                                : Phrase.of("{} tunnels", Quantity.count(s.tunnels())),
                        Quantity.metres(height.low()).withDecimals(1),
                        Quantity.metres(height.high()).withDecimals(1),
                        Quantity.millimetres(mesh.low()),
                        Quantity.millimetres(mesh.high()),
                        Quantity.millimetres(gap.low()),
                        Quantity.millimetres(gap.high())),
                Phrase.of(
                        "The first males may be out on {}, and bees learn their house on the first flight. Fix it so"
                                + " it cannot swing, and leave it there all season.",
                        s.outlook().firstMales().early()),
                Phrase.of("Use a sound ladder on firm ground, and have someone hold it."),
                List.of(
                        Phrase.of(
                                "First males out between {} and {}.",
                                s.outlook().firstMales().early(),
                                s.outlook().firstMales().late()),
                        Phrase.of("Height, mesh and distance are common practice without a published source.")),
                read.read()));
    }
}
