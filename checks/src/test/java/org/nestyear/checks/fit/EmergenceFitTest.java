package org.nestyear.checks.fit;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class EmergenceFitTest {
    @Test
    void explore() {
        Likelihood l = new Likelihood(FitData.load());
        double[] v = Fitted.catalogue();
        report(l, "catalogue", v, l.dispersion(v));
        Likelihood.Dispersion d = l.dispersion(v);
        long t0 = System.nanoTime();
        for (int i = 0; i < 100; i++) {
            l.of(v, 160, d, g -> true);
        }
        System.out.printf(Locale.ROOT, "ms per evaluation %.2f%n", (System.nanoTime() - t0) / 1e8);
        for (int round = 0; round < 4; round++) {
            Likelihood.Dispersion dd = d;
            JointFit.Optimum o = JointFit.search(x -> l.of(x, 160, dd, g -> true), v, JointFit.allBut());
            v = o.values();
            report(l, "round " + round, v, d);
            d = l.dispersion(v);
        }
        Likelihood.Dispersion dd = d;
        System.out.println(Arrays.toString(JointFit.standardErrors(x -> l.of(x, 160, dd, g -> true), v, 0.1)));
    }

    static void report(Likelihood l, String name, double[] v, Likelihood.Dispersion d) {
        System.out.println(name + " " + d + " logL " + l.of(v, 160, d, g -> true) + " pen " + l.penalty(v) + " rmse "
                + l.errorOfMeans(v, FitData.WINTERS));
        for (Fitted f : Fitted.values()) {
            System.out.print(f + " " + f.print(v[f.ordinal()]) + "; ");
        }
        System.out.println();
        l.curves(v, 160, FitData.Group::isField)
                .forEach((g, c) -> System.out.println(g.label() + " " + Likelihood.errorOfShares(g, c)));
    }
}
