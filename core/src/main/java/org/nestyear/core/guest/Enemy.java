package org.nestyear.core.guest;

import java.util.List;
import java.util.Set;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Source;

/**
 * An enemy of brood.
 *
 * @param id stable short name
 * @param name as it reads in a sentence
 * @param also other words under which it is found
 * @param latin genera and species, or empty
 * @param kind what it is, such as wasp or mite
 * @param bees bees it harms: mason, leafcutter
 * @param seasons seasons in which something can be seen or done
 * @param looks what it looks like
 * @param when when it comes
 * @param rate how much it takes, as published
 * @param deed what to do
 * @param never what never to do
 * @param caution where work can hurt, or empty
 * @param basis how this is known
 * @param source where it stands
 * @param locator what stands there
 */
public record Enemy(
        String id,
        String name,
        List<String> also,
        String latin,
        String kind,
        Set<String> bees,
        Set<String> seasons,
        String looks,
        String when,
        String rate,
        String deed,
        String never,
        String caution,
        Basis basis,
        Source source,
        String locator) {
    public Enemy {
        also = List.copyOf(also);
        bees = Set.copyOf(bees);
        seasons = Set.copyOf(seasons);
    }
}
