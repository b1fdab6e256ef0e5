package org.nestyear.app.cli;

import java.util.List;
import org.nestyear.core.source.Parameter;

/** Writes the numbers an answer rests on, each with its kind and source. */
final class BasisJson {
    private BasisJson() {}

    static void write(JsonText json, List<Parameter> basis) {
        json.objects("basis", basis, (entry, parameter) -> {
            entry.text("id", parameter.id());
            entry.number("value", parameter.value());
            entry.text("unit", parameter.unit());
            entry.number("low", parameter.low());
            entry.number("high", parameter.high());
            entry.text("kind", parameter.basis().word());
            entry.text("citation", parameter.source().citation());
            entry.text("locator", parameter.locator());
            if (!parameter.source().doi().isEmpty()) {
                entry.text("doi", parameter.source().doi());
            }
            if (parameter.isBorrowed()) {
                entry.text("borrowed_from", parameter.borrowedFrom());
            }
            if (!parameter.note().isEmpty()) {
                entry.text("note", parameter.note());
            }
        });
    }

    /** Names of the numbers, which stand in full in the answer's own basis. */
    static void writeIds(JsonText json, List<Parameter> basis) {
        json.texts("basis", basis.stream().map(Parameter::id).toList());
    }
}
