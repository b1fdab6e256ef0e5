package org.nestyear.app.web;

import java.util.List;
import java.util.Map;
import org.nestyear.app.book.VisitTyped;

/**
 * The quick visit.
 *
 * @param person who writes at this browser
 * @param sites the sites to choose from, the one shown chosen
 * @param houses the houses of the site
 * @param bees the bees
 * @param mud the states of mud
 * @param sightings what can be seen
 * @param visit what stands in the form
 * @param act id of what sending the form does
 * @param line the line of plain words
 * @param understood what the line was understood to tell
 * @param kept what of it was not understood and stands in the note
 * @param receipt the visit saved just now, or empty
 * @param undo act that its undo takes back, or empty
 * @param notice what just happened, or empty
 * @param problem what is wrong, a sentence each
 * @param problems what is wrong with the number of more plugged, all plugged, torch count, day, note, house
 * @param caution a hazard of the work
 */
public record VisitView(
        PageHead head,
        String person,
        List<FieldView.Option> sites,
        List<FieldView.Option> houses,
        List<FieldView.Option> bees,
        List<FieldView.Option> mud,
        List<FieldView.Option> sightings,
        VisitTyped visit,
        String act,
        String line,
        List<String> understood,
        String kept,
        String receipt,
        String undo,
        String notice,
        List<String> problem,
        Map<String, String> problems,
        String caution) {
    public VisitView {
        sites = List.copyOf(sites);
        houses = List.copyOf(houses);
        bees = List.copyOf(bees);
        mud = List.copyOf(mud);
        sightings = List.copyOf(sightings);
        understood = List.copyOf(understood);
        problem = List.copyOf(problem);
        problems = Map.copyOf(problems);
    }

    /** What is wrong with a field, or empty. */
    public String problemOf(String field) {
        return problems.getOrDefault(field, "");
    }
}
