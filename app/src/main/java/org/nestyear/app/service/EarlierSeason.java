package org.nestyear.app.service;

import java.time.Instant;

/**
 * A season the keeper has opened, in a list.
 *
 * @param id its id in the records
 * @param name its file, with the folder where it lies on this computer
 * @param openedAt when it was last opened
 * @param current whether it is the one open now
 */
public record EarlierSeason(String id, String name, Instant openedAt, boolean current) {}
