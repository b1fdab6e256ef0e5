package org.nestyear.app.web;

import java.util.List;

/**
 * A page that says what went wrong.
 *
 * @param title what went wrong, short
 * @param lines what, where and what was expected, a sentence each
 */
public record TroubleView(PageHead head, String title, List<String> lines) {
    public TroubleView {
        lines = List.copyOf(lines);
    }
}
