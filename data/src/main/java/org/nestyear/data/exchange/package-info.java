/**
 * Writers of open-standard files for other programs: calendar (iCalendar), map (GeoJSON) and occurrences (Darwin Core).
 * Pure functions of small records; places are blurred unless the keeper asks for the exact ones.
 */
@NullMarked
package org.nestyear.data.exchange;

import org.jspecify.annotations.NullMarked;
