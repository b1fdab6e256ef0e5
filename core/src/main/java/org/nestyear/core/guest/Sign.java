package org.nestyear.core.guest;

/**
 * An answer that may be given to a question of the card.
 *
 * @param word as it is given on the command line
 * @param meaning what it looks like
 */
public record Sign(CardQuestion question, String word, String meaning) {}
