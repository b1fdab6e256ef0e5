package org.nestyear.app.web;

import java.util.List;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.web.SumField.Choice;
import org.nestyear.core.species.Species;

/** The bees a calculator may be asked about, by common name with the Latin name beside it. */
final class BeeChoices {
    private BeeChoices() {}

    static List<Choice> mason() {
        return PlanService.catalogue().species().stream()
                .map(BeeChoices::choice)
                .toList();
    }

    /** Mason and leafcutter bees. */
    static List<Choice> all() {
        return EitherBee.all().stream().map(BeeChoices::choice).toList();
    }

    private static Choice choice(Species bee) {
        return new Choice(bee.latinName(), bee.commonName() + " (" + bee.latinName() + ")");
    }

    /** Those whose cocoons have been weighed. */
    static List<Choice> weighed() {
        return mason().stream()
                .filter(bee -> bee.value().matches("Osmia (bicornis|cornuta)"))
                .toList();
    }
}
