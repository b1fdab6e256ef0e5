package org.nestyear.app.service;

/**
 * The keeper's current season and the plan for it.
 *
 * @param fileName name of its season file
 * @param demo whether it is the invented demonstration season
 * @param answer the plan
 */
public record OpenSeason(String fileName, boolean demo, PlanAnswer answer) {}
