package org.nestyear.app.web;

import java.util.List;

/**
 * What every page shows around its content.
 *
 * @param title name of the page
 * @param places the pages of the menu
 * @param csrfName name of the field that proves a form is ours
 * @param csrfToken its value for this session
 */
public record PageHead(String title, List<Place> places, String csrfName, String csrfToken) {
    public PageHead {
        places = List.copyOf(places);
    }

    /**
     * A page of the menu.
     *
     * @param name what it is called
     * @param address its path
     * @param current whether it is the page shown
     */
    public record Place(String name, String address, boolean current) {}
}
