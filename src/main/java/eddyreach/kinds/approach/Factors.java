package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.assure.TargetResult;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.report.words.Labels;
import java.util.Optional;

/** The correction factor of a target whose permeability is stated as a range: an interval, apart from the numerical error. */
final class Factors {

    private Factors() {}

    /** The interval as shares of s_r; an end at which it is never on is 0. */
    static Optional<Range> of(TargetResult t, double effectiveDistance) {
        return t.permeability()
                .filter(c -> Double.isFinite(c.longest()))
                .map(c -> new Range(low(c) / effectiveDistance, c.longest() / effectiveDistance));
    }

    private static double low(Contribution c) {
        return Double.isNaN(c.shortest()) ? 0 : c.shortest();
    }

    /** A correction factor at its least and at its largest. */
    record Range(double low, double high) {

        @Override
        public String toString() {
            return Labels.fixed(low, 2) + " to " + Labels.fixed(high, 2);
        }
    }

    /** True when the interval reaches into the trade's band. */
    static boolean overlaps(TargetResult t, double effectiveDistance) {
        if (t.band().isEmpty()) {
            return false;
        }
        FactorBand band = t.band().get();
        return of(t, effectiveDistance)
                .filter(r -> r.high() >= band.low() && r.low() <= band.high())
                .isPresent();
    }

    /** What is said of it; empty for the others. */
    static Optional<String> words(TargetResult t, double effectiveDistance) {
        return of(t, effectiveDistance)
                .map(r -> t.target().label() + ": factor " + r + " over a relative permeability of " + stated(t)
                        + ". The ± is the numerical error alone.");
    }

    private static String stated(TargetResult t) {
        return t.target().body().materials().stream()
                .map(Material::range)
                .flatMap(Optional::stream)
                .findFirst()
                .map(r -> Labels.significant(r.low(), 3) + " to " + Labels.significant(r.high(), 3))
                .orElseThrow();
    }
}
