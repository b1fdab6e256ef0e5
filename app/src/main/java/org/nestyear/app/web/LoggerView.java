package org.nestyear.app.web;

import java.util.List;

/**
 * Readings of a logger, pasted or chosen as a file, and what they hold before they are written.
 *
 * @param person who writes at this browser
 * @param sites to choose from
 * @param places where a logger may lie
 * @param batches to choose from
 * @param logger name of the logger
 * @param text what was pasted, or empty where it is too long to be sent back
 * @param facts what the log holds, empty before it was looked at
 * @param ready id under which it is kept until it is saved, or empty where there is nothing to save
 * @param button what the button that saves says
 * @param notice what just happened, or empty
 * @param undo act that its undo takes back, or empty
 * @param problem what is wrong, a sentence each
 */
public record LoggerView(
        PageHead head,
        String person,
        List<FieldView.Option> sites,
        List<FieldView.Option> places,
        List<FieldView.Option> batches,
        String logger,
        String text,
        List<String> facts,
        String ready,
        String button,
        String notice,
        String undo,
        List<String> problem) {
    public LoggerView {
        sites = List.copyOf(sites);
        places = List.copyOf(places);
        batches = List.copyOf(batches);
        facts = List.copyOf(facts);
        problem = List.copyOf(problem);
    }
}
