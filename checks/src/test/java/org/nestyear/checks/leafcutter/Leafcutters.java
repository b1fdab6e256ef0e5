package org.nestyear.checks.leafcutter;

import org.nestyear.core.leafcutter.WarmthClock;
import org.nestyear.core.leafcutter.WarmthSettings;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** The shipped leafcutter and its clock. */
final class Leafcutters {
    static final ParameterTable TABLE = CatalogueFiles.leafcutters()
            .find("Megachile rotundata")
            .orElseThrow()
            .parameters();
    static final WarmthSettings SETTINGS = WarmthSettings.of(TABLE);
    static final WarmthClock CLOCK = new WarmthClock(SETTINGS);

    private Leafcutters() {}
}
