package org.nestyear.app.web;

import java.util.List;

/**
 * The page of files and links.
 *
 * @param made address of the link made just now, shown this once, or empty
 * @param problem why something was not done
 * @param links links to the calendar, newest first
 */
public record ShareView(PageHead head, String made, List<String> problem, List<Link> links) {
    public ShareView {
        problem = List.copyOf(problem);
        links = List.copyOf(links);
    }

    /**
     * A link to the calendar.
     *
     * @param name whom it was given to
     * @param made day it was made
     * @param revoked whether it was taken back
     */
    public record Link(String id, String name, String made, boolean revoked) {}
}
