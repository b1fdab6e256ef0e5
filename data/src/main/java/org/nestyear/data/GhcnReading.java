package org.nestyear.data;

/**
 * A GHCN-Daily file as read.
 *
 * @param file its days like those of any other weather table
 * @param report what was left out, and why
 */
public record GhcnReading(WeatherFile file, GhcnReport report) {}
