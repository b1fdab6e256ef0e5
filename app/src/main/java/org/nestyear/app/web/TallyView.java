package org.nestyear.app.web;

import java.util.List;

/**
 * The counter at an opening.
 *
 * @param person who writes at this browser
 * @param title which opening it is
 * @param id of the opening
 * @param spot where the cells lie, in words, or empty
 * @param house full name of the house, or empty
 * @param nest full name of the nest, or empty
 * @param tunnel name of the tunnel, or empty
 * @param houses to choose from
 * @param nests to choose from
 * @param tap id of the next tap
 * @param notice what just happened, or empty
 * @param problem what is wrong, a sentence each
 * @param caution a hazard of the work
 * @param totals the counts
 */
public record TallyView(
        PageHead head,
        String person,
        String title,
        String id,
        String spot,
        String house,
        String nest,
        String tunnel,
        List<FieldView.Option> houses,
        List<FieldView.Option> nests,
        String tap,
        String notice,
        List<String> problem,
        String caution,
        Totals totals) {
    public TallyView {
        houses = List.copyOf(houses);
        nests = List.copyOf(nests);
        problem = List.copyOf(problem);
    }

    /**
     * The counts of an opening.
     *
     * @param buttons one for each sort, alive first
     * @param sentence how many in all, and the share lost
     */
    public record Totals(List<Button> buttons, String sentence) {
        public Totals {
            buttons = List.copyOf(buttons);
        }
    }

    /**
     * A button that counts.
     *
     * @param found what it counts
     * @param key its key on a keyboard
     * @param here cells at the spot
     * @param all cells in the whole opening
     * @param share of all cells, or empty where there are none
     */
    public record Button(String found, String label, String key, String here, String all, String share) {}

    /**
     * The page on which an opening is chosen or begun.
     *
     * @param openings the newest openings
     * @param act id of what beginning one does
     * @param entry id of the opening that would be begun
     */
    public record Choice(
            PageHead head,
            String person,
            List<Opening> openings,
            List<FieldView> fields,
            List<String> problem,
            String caution,
            String act,
            String entry) {
        public Choice {
            openings = List.copyOf(openings);
            fields = List.copyOf(fields);
            problem = List.copyOf(problem);
        }
    }

    /** An opening to go on with. */
    public record Opening(String address, String words) {}
}
