package org.nestyear.checks.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.Repository;
import org.nestyear.checks.fit.Likelihood.Dispersion;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Sex;

/**
 * {@code docs/emergence-fit.md} is what the fitting program finds, and the catalogue holds its ranges. To fit anew
 * and write the page, a quarter of an hour: {@code mvn test -pl checks -am -Dtest=EmergenceFitTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dnestyear.write=true}. Without that the page's likelihoods are computed again
 * at its values and at the catalogue's.
 */
@Tag("reference")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EmergenceFitTest {
    /** The page prints log-likelihoods with three decimals. */
    private static final double ROUNDING = 0.0006;
    /** The page's dispersion is that of the fit before the last, a few per cent off. */
    private static final double DISPERSION = 0.05;
    /** Values are printed with so many digits that nothing more is lost. */
    private static final double PRINTED = 0.02;
    /**
     * What a step of a tenth of {@link Fitted#step} may gain, in units of log-likelihood. A 95 % range is a fall of 1.92.
     */
    private static final double SMALL_GAIN = 0.01;

    private static final double SMALL_STEP = 0.1;
    /** What rounding the values may cost, twice the log-likelihood. */
    private static final double ROUNDING_FALL = 0.05;
    /** Rounding of catalogue values and ranges, as a share of the range's width. */
    private static final double RANGE_ROUNDING = 0.06;

    private final Likelihood likelihood;
    private final String page;

    EmergenceFitTest() throws IOException {
        likelihood = new Likelihood(FitData.load());
        Path file = Repository.root().resolve("docs/emergence-fit.md");
        if (Boolean.getBoolean("nestyear.write")) {
            Files.writeString(file, new FitPage(new FitResult(likelihood)).write());
        }
        page = Files.readString(file);
    }

    /** The numbers of the row of a table that starts with this label. */
    private double[] row(String label) {
        String line = page.lines()
                .filter(l -> l.startsWith("| " + label + " |"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("the page has no row " + label));
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = Pattern.compile("-?\\d+(\\.\\d+)?").matcher(line.substring(label.length() + 4));
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private Dispersion dispersion() {
        return new Dispersion(row(FitPage.WINTERS_ROW)[0], row(FitPage.FIELD_ROW)[0]);
    }

    private double logLikelihood(double[] values) {
        return likelihood.of(values, dispersion(), g -> true);
    }

    /** The fitted values as the page prints them. */
    private double[] fitted() {
        return Fitted.ALL.stream().mapToDouble(f -> row(f.label())[0]).toArray();
    }

    /** The catalogue's values; the field's readiness, which it does not hold, is the page's. */
    private double[] catalogue() {
        return Fitted.catalogue(row(Fitted.FIELD_READINESS.label())[0]);
    }

    @Test
    void thePageGivesTheLikelihoods() {
        Comparison catalogue = new Comparison("log-likelihood of the catalogue, page against now", ROUNDING);
        catalogue.add("catalogue", logLikelihood(catalogue()), row(FitPage.CATALOGUE_ROW)[0]);
        catalogue.check(1);
        Comparison top = new Comparison("log-likelihood of the fit as printed, page against now", PRINTED);
        top.add("fit", logLikelihood(fitted()), row(FitPage.TOP_ROW)[0]);
        top.check(1);
        Dispersion now = likelihood.dispersion(fitted());
        Comparison dispersion = new Comparison("dispersion at the fit over the page's, share", DISPERSION);
        dispersion.add("winters", now.winters() / dispersion().winters(), 1);
        dispersion.add("field", now.field() / dispersion().field(), 1);
        dispersion.check(2);
    }

    /** The page's fit is at the top of the likelihood: no small step of one value gains anything to speak of. */
    @Test
    void noSmallStepIsBetterThanTheFit() {
        double[] values = fitted();
        double top = logLikelihood(values);
        assertThat(likelihood.penalty(values)).isZero();
        for (Fitted f : Fitted.ALL) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double[] moved = values.clone();
                moved[f.at()] += sign * SMALL_STEP * f.step();
                assertThat(logLikelihood(moved) - top)
                        .as(f.label() + " moved by " + sign * SMALL_STEP * f.step())
                        .isLessThan(SMALL_GAIN);
            }
        }
    }

    /** The catalogue's values are the fit's, rounded: they hold the constraints, and rounding costs next to nothing. */
    @Test
    void theCatalogueHoldsTheFit() {
        assertThat(likelihood.penalty(catalogue())).isZero();
        double fall = 2 * (row(FitPage.TOP_ROW)[0] - logLikelihood(catalogue()));
        assertThat(fall).isBetween(-PRINTED, ROUNDING_FALL);
        for (Fitted f : Fitted.ALL) {
            if (f.isInCatalogue()) {
                double[] printed = row(f.label());
                double near = RANGE_ROUNDING * (printed[2] - printed[1]);
                assertThat(f.inCatalogue().value()).as(f.label()).isBetween(printed[0] - near, printed[0] + near);
            }
        }
    }

    /** The first optimum is the better one under its own dispersion, which is the page's. */
    @Test
    void theFitIsTheBetterOptimum() {
        double[] ends = row(FitPage.FIRST_ROW);
        assertThat(ends[0]).isGreaterThan(ends[1]).isCloseTo(row(FitPage.TOP_ROW)[0], within(PRINTED));
    }

    /** Ranges in the catalogue are the page's, rounded. */
    @Test
    void theCatalogueHoldsThePagesRanges() {
        for (Fitted f : Fitted.ALL) {
            if (f.isInCatalogue()) {
                range(f.inCatalogue(), row(f.label()));
            }
        }
        for (Sex sex : Sex.values()) {
            String s = sex.suffix();
            ParameterTable cornuta = Fitted.table("Osmia cornuta");
            range(cornuta.get("gate_base" + s + "_c"), row(FitPage.cornuta(sex)));
            assertThat(cornuta.get("gate_base" + s + "_c").low()).isGreaterThanOrEqualTo(Likelihood.FRIDGE_C);
            ParameterTable bicornis = Fitted.table("Osmia bicornis");
            for (String other : List.of("Osmia lignaria", "Osmia cornifrons")) {
                for (String id : List.of("gate_base" + s + "_c", "gate_need" + s)) {
                    Parameter borrowed = Fitted.table(other).get(id);
                    assertThat(borrowed.value()).isEqualTo(bicornis.value(id));
                    assertThat(borrowed.low()).isEqualTo(bicornis.get(id).low());
                    assertThat(borrowed.high()).isEqualTo(bicornis.get(id).high());
                }
            }
            assertThat(cornuta.value("gate_need" + s)).isEqualTo(bicornis.value("gate_need" + s));
        }
    }

    private static void range(Parameter parameter, double[] printed) {
        double near = RANGE_ROUNDING * (printed[2] - printed[1]);
        assertThat(parameter.low()).as(parameter.id() + ", low").isBetween(printed[1] - near, printed[1] + near);
        assertThat(parameter.high()).as(parameter.id() + ", high").isBetween(printed[2] - near, printed[2] + near);
    }

    /** The smooth share out of the fit is the share of the product's grid of bees, within 1.5 points of a hundred: the grid has 51 bees. */
    @Test
    void theFitRunsTheProductsClock() {
        Comparison shares = new Comparison("share out, fit against the clock of the product", 0.015);
        double[] values = catalogue();
        for (FitData.Group group : likelihood.data().groups()) {
            EmergenceSettings settings = likelihood.settings(values, group.species(), group.sex());
            double before = group.isField() ? Fitted.FIELD_READINESS.in(values) : 0;
            ThermalSums sums = ThermalSums.ofHours(settings, likelihood.data().hours(group.place()));
            double[] curve = ShareOut.byDay(settings, sums, before);
            double[] times = new EmergenceClock(settings, 51).times(sums, new Storage(0, before, 1, 0, 0));
            for (int day = 0; day < curve.length; day++) {
                int end = day;
                double out = Arrays.stream(times).filter(t -> t < end).count() / (double) times.length;
                shares.add(group.label() + " day " + day, curve[day], out);
            }
        }
        shares.check(16 * 30);
    }
}
