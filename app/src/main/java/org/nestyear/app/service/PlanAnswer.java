package org.nestyear.app.service;

import org.nestyear.core.plan.Plan;
import org.nestyear.core.season.SeasonInputs;

/**
 * A plan with what it was made from.
 *
 * @param inputs the season as read
 * @param fingerprint sixteen characters that change when an input that was read, a catalogue number or the version
 *     changes
 */
public record PlanAnswer(SeasonInputs inputs, Plan plan, String fingerprint) {}
