package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;

/** What a browser chose last, so that the next form begins with it. */
final class Kept {
    private Kept() {}

    static String get(HttpServletRequest request, String name) {
        return request.getSession().getAttribute("kept-" + name) instanceof String value ? value : "";
    }

    static void put(HttpServletRequest request, String name, String value) {
        request.getSession().setAttribute("kept-" + name, value);
    }
}
