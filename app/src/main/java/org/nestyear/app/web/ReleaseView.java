package org.nestyear.app.web;

import java.util.List;

/**
 * The page Release.
 *
 * @param season which season and which day it is made for
 * @param answer the release window in one sentence
 * @param portions what to put out when, and why in so many parts
 * @param founded how many years of weather stand behind it
 * @param aims the three aims with their windows
 * @param firstDate first date tried, ISO 8601
 * @param lastDate last date tried, ISO 8601
 * @param typedDate the date whose cost was asked for, ISO 8601, or empty
 * @param typedCost the answer to that, or empty
 * @param widePicture the curve for wide screens and paper, SVG
 * @param narrowPicture the curve for phones, SVG
 * @param marks the dates marked in the picture
 * @param points every date tried
 * @param struck how often a lot is taken to be lost to what no weather record shows
 * @param held what comes of holding a share back
 * @param shifts how far the best date moves when something uncertain is otherwise
 * @param agreement how many draws of the uncertain numbers agree with the window
 * @param basis every parameter read for the answer
 */
public record ReleaseView(
        PageHead head,
        String season,
        String answer,
        List<String> portions,
        String founded,
        List<Aim> aims,
        String firstDate,
        String lastDate,
        String typedDate,
        String typedCost,
        String widePicture,
        String narrowPicture,
        List<MarkRow> marks,
        List<PointRow> points,
        String struck,
        List<HeldRow> held,
        List<Shift> shifts,
        String agreement,
        List<BasisLine> basis) {
    public ReleaseView {
        portions = List.copyOf(portions);
        aims = List.copyOf(aims);
        marks = List.copyOf(marks);
        points = List.copyOf(points);
        held = List.copyOf(held);
        shifts = List.copyOf(shifts);
        basis = List.copyOf(basis);
    }

    /**
     * An aim to choose.
     *
     * @param word the word in season files
     * @param window its release window
     * @param meaning what is wanted
     */
    public record Aim(String word, String name, String window, String meaning, boolean chosen) {}

    /** A date marked in the picture, its span, and what it loses. */
    public record MarkRow(String name, String date, String span, String cost) {}

    /**
     * A date tried, with everything the picture shows of it.
     *
     * @param tag the word that marks the best date and the others of the window; empty outside
     */
    public record PointRow(
            String date, String mean, String band, String daughters, String bloomDays, String cost, String tag) {}

    /**
     * A share held back and what comes of it.
     *
     * @param tag the word that marks what the plan does; empty otherwise
     */
    public record HeldRow(String share, String tag, String cost, String badYears, String allLost, String left) {}

    /** Something that may be otherwise than taken, and how far the best date then moves. */
    public record Shift(String name, String days) {}
}
