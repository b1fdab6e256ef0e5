package org.nestyear.data.exchange;

/**
 * What a file may give away about where and who.
 *
 * @param blur how coarsely places are given
 * @param names true if the keeper's own names of sites, houses and nests may be given; they often hold an address
 * @param people true if the names of people may be given
 */
public record Disclosure(Blur blur, boolean names, boolean people) {
    /** What holds unless the keeper asks: 10 km cells, no names of places or people. */
    public static Disclosure careful() {
        return new Disclosure(Blur.TEN_KM, false, false);
    }

    /** Everything as it was told, for the keeper's own use. */
    public static Disclosure all() {
        return new Disclosure(Blur.EXACT, true, true);
    }
}
