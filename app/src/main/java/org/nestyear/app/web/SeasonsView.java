package org.nestyear.app.web;

import java.util.List;

/**
 * The page on which a season is opened.
 *
 * @param first true when no season has been opened yet
 * @param problem why the last try opened nothing, a sentence each; empty when there was none
 * @param path the path last typed, or empty
 * @param earlier seasons opened before, the current one first
 * @param example text of the demo's season file
 */
public record SeasonsView(
        PageHead head, boolean first, List<String> problem, String path, List<Earlier> earlier, String example) {
    public SeasonsView {
        problem = List.copyOf(problem);
        earlier = List.copyOf(earlier);
    }

    /**
     * A season opened before.
     *
     * @param id its id in the records
     * @param name what it is called in the list
     * @param opened when it was opened, in words
     * @param current whether it is open now
     */
    public record Earlier(String id, String name, String opened, boolean current) {}
}
