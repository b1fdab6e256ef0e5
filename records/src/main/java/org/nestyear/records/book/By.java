package org.nestyear.records.book;

/**
 * Who writes.
 *
 * @param owner whose records they are
 * @param who the person who did or saw what is written down
 */
public record By(String owner, String who) {
    public By {
        if (owner.isBlank() || who.isBlank()) {
            throw new IllegalArgumentException("an entry needs an owner and a person");
        }
    }
}
