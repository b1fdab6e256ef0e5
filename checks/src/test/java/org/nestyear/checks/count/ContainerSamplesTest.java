package org.nestyear.checks.count;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.SharedData;
import org.nestyear.core.count.ContainerSamples;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** The plan by containers against appendix C of the Canadian producer guide, as its table stands in the reference data. */
@Tag("reference")
class ContainerSamplesTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    @Test
    void everyBandOfTheGuideComesOut() {
        ParameterTable counting = CatalogueFiles.sums("counting");
        int compared = 0;
        for (NamedCsvRecord row : SharedData.rows("megachile/cfia_sampling_tables.csv")) {
            if (!row.getField("table").equals("containers")) {
                continue;
            }
            Matcher band = NUMBER.matcher(row.getField("condition"));
            assertThat(band.find()).isTrue();
            int from = Integer.parseInt(band.group());
            int to = band.find() ? Integer.parseInt(band.group()) : from + 100;
            String samples = row.getField("samples");
            Matcher number = NUMBER.matcher(samples);
            assertThat(number.find()).isTrue();
            int told = Integer.parseInt(number.group());
            for (int containers = from; containers <= to; containers++) {
                int expected = samples.contains("per container") ? told * containers : told;
                assertThat(ContainerSamples.of(containers, counting))
                        .as("%d containers", containers)
                        .isEqualTo(expected);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    /** Cases M22 and M23 of the reference data: 12 containers give 12 samples, 40 give 20. */
    @Test
    void workedCases() {
        ParameterTable counting = CatalogueFiles.sums("counting");
        assertThat(ContainerSamples.of(12, counting)).isEqualTo(12);
        assertThat(ContainerSamples.of(40, counting)).isEqualTo(20);
    }
}
