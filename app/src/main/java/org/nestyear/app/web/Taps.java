package org.nestyear.app.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.nestyear.app.book.TallyDesk.Spot;

/** The taps of one browser, so that its undo takes back its own last tap and nobody else's. Safe for many threads. */
final class Taps {
    private static final String KEPT = Taps.class.getName();
    private static final int MOST = 500;

    private final Deque<Tap> taps = new ArrayDeque<>();
    private final List<String> undone = new ArrayList<>();

    /**
     * A tap.
     *
     * @param act what was done
     */
    record Tap(String act, String opening, Spot spot, String found) {}

    static synchronized Taps of(HttpServletRequest request) {
        HttpSession session = request.getSession();
        if (session.getAttribute(KEPT) instanceof Taps taps) {
            return taps;
        }
        Taps taps = new Taps();
        session.setAttribute(KEPT, taps);
        return taps;
    }

    synchronized void add(Tap tap) {
        if (taps.stream().anyMatch(earlier -> earlier.act().equals(tap.act()))) {
            return;
        }
        taps.push(tap);
        if (taps.size() > MOST) {
            taps.removeLast();
        }
    }

    /** The last tap at an opening, no longer to be given out. */
    synchronized Optional<Tap> takeLast(String opening) {
        Optional<Tap> last =
                taps.stream().filter(tap -> tap.opening().equals(opening)).findFirst();
        last.ifPresent(taps::remove);
        return last;
    }

    /** Whether an undo of this id is new; a repeated one must not take back a second tap. */
    synchronized boolean isNew(String undo) {
        if (undone.contains(undo)) {
            return false;
        }
        undone.add(undo);
        if (undone.size() > MOST) {
            undone.remove(0);
        }
        return true;
    }
}
