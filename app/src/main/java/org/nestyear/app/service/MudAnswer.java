package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.mud.Settling;
import org.nestyear.core.mud.TextureClass;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/**
 * A soil's class, its settling times and the water of a tray.
 *
 * @param texture its class
 * @param possible the classes it may be, reading errors of a jar allowed for, its own among them
 * @param errorPoints that error, points of per cent; 0 for a laboratory's shares
 * @param sandMinutes until all sand has settled
 * @param siltMinutes until all silt has settled
 * @param cutAtTwoHoursMm smallest grain settled after two hours, mm
 * @param litresADay water of the tray, or null without a tray
 * @param mudDistanceM how near to the nests mud should be, m
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record MudAnswer(
        MudQuestion question,
        TextureClass texture,
        List<TextureClass> possible,
        double errorPoints,
        double sandMinutes,
        double siltMinutes,
        double cutAtTwoHoursMm,
        @Nullable Double litresADay,
        double mudDistanceM,
        List<Parameter> basis,
        String fingerprint) {
    private static final double TWO_HOURS = 120;

    public MudAnswer {
        possible = List.copyOf(possible);
        basis = List.copyOf(basis);
    }

    /** Answers the question. */
    public static MudAnswer of(MudQuestion question) {
        ReadLog read = new ReadLog(CatalogueFiles.sums("mud").completedBy(CatalogueFiles.sums("mason_bees")));
        double error = question.fromJar() ? read.value("jar_error_points") : 0;
        TextureClass texture = TextureClass.of(question.soil());
        Set<TextureClass> possible = TextureClass.within(question.soil(), error);
        MudQuestion.Tray tray = question.tray();
        // A millimetre on a square metre is a litre.
        Double litres = tray == null ? null : tray.et0Mm() * read.value("tray_water_factor") * tray.squareMetres();
        double near = read.value("mud_distance_m");
        Settling settling = question.settling();
        Fingerprint print = new Fingerprint("");
        print.add(question);
        print.add(read.read());
        return new MudAnswer(
                question,
                texture,
                new ArrayList<>(possible),
                error,
                settling.minutes(Settling.SAND_LEAST_MM),
                settling.minutes(Settling.SILT_LEAST_MM),
                settling.diameterMm(TWO_HOURS),
                litres,
                near,
                read.read(),
                print.digits());
    }
}
