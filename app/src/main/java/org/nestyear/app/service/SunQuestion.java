package org.nestyear.app.service;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.sun.Observer;

/**
 * Where and when the sun is asked for.
 *
 * @param observer the place and its air
 * @param at the moment; sunrise and sunset are those of its calendar day under its offset from UTC
 * @param facesDeg where a front looks, degrees clockwise from north, or null
 */
public record SunQuestion(
        Observer observer, OffsetDateTime at, @Nullable Double facesDeg) {}
