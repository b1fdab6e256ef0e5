package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;

/** Who writes at this browser: the name typed last, at first the name of the computer's user. */
final class Person {
    /** Field of every form that writes. */
    static final String FIELD = "who";

    private static final String KEPT = Person.class.getName();
    private static final int LONGEST = 80;

    private Person() {}

    static String of(HttpServletRequest request) {
        HttpSession session = request.getSession();
        return session.getAttribute(KEPT) instanceof String name ? name : plain(System.getProperty("user.name", ""));
    }

    /** The name typed into a form, remembered for the next one. */
    static String typed(HttpServletRequest request) {
        String typed = request.getParameter(FIELD);
        if (typed == null || typed.isBlank()) {
            return of(request);
        }
        String name = plain(typed);
        request.getSession().setAttribute(KEPT, name);
        return name;
    }

    private static String plain(String typed) {
        String name = typed.replaceAll("\\p{Cntrl}", " ").strip();
        String kept = name.length() > LONGEST ? name.substring(0, LONGEST) : name;
        return kept.isEmpty() ? "keeper" : kept;
    }
}
