package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * How far the answer hangs on numbers that are not well known: each is drawn between its low and its high.
 *
 * @param draws how many times all were drawn
 * @param inWindow in how many of them the best date lies inside the window
 * @param early one draw in ten puts the best date before this
 * @param late and one in ten after this
 */
public record Agreement(int draws, int inWindow, LocalDate early, LocalDate late) {}
