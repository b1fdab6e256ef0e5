package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.nestyear.app.web.PageHead.Place;
import org.springframework.security.web.csrf.CsrfToken;

/** Makes the head of a page for a request. */
final class Heads {
    private Heads() {}

    static PageHead of(String title, HttpServletRequest request) {
        String path = request.getRequestURI();
        List<Place> places = List.of(
                place("Jobs now", "/", path),
                place("Release", "/release", path),
                place("Records", "/records", path),
                place("Quick sums", "/sums", path),
                place("Sources", "/sources", path),
                place("Seasons", "/seasons", path));
        return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken csrf
                ? new PageHead(title, places, csrf.getParameterName(), csrf.getToken())
                : new PageHead(title, places, "", "");
    }

    private static Place place(String name, String address, String path) {
        boolean current = address.equals("/") ? path.equals("/") : path.startsWith(address);
        return new Place(name, address, current);
    }
}
