package org.nestyear.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets in who comes with the launch token, then knows them by their session cookie; everyone else sees how to get in. */
final class LaunchTokenFilter extends OncePerRequestFilter {
    static final String PARAMETER = "t";
    private static final String LET_IN = LaunchTokenFilter.class.getName();
    // What a page without records needs: the answer that the server is up, and the look of the refusal.
    private static final Set<String> OPEN = Set.of("/healthz", "/nestyear.css", "/mark.svg");

    private final LaunchToken token;
    private final Pages pages;

    LaunchTokenFilter(LaunchToken token, Pages pages) {
        this.token = token;
        this.pages = pages;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        HttpSession session = request.getSession(false);
        boolean letIn = session != null && session.getAttribute(LET_IN) != null;
        if (token.matches(request.getParameter(PARAMETER))
                && request.getMethod().equals("GET")) {
            request.getSession().setAttribute(LET_IN, true);
            if (session != null) {
                request.changeSessionId();
            }
            response.sendRedirect("/");
        } else if (letIn || !token.isRequired() || isOpen(request.getRequestURI())) {
            chain.doFilter(request, response);
        } else {
            refuse(response);
        }
    }

    // A calendar has its own secret in its address.
    private static boolean isOpen(String path) {
        return OPEN.contains(path) || path.startsWith(ShareController.CALENDAR);
    }

    private void refuse(HttpServletResponse response) throws IOException {
        response.setStatus(HttpServletResponse.SC_FORBIDDEN);
        response.setContentType("text/html");
        response.setCharacterEncoding(StandardCharsets.UTF_8.name());
        response.getWriter().write(pages.render("closed.jte", ""));
    }
}
