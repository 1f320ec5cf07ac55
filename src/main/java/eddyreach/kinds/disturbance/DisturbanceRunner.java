package eddyreach.kinds.disturbance;

import eddyreach.closedform.SmallBodies;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.SwitchField;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.oscillator.AlternatingField;
import eddyreach.oscillator.CoreSaturation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code disturbance}. */
final class DisturbanceRunner {

    /** Frequencies of the picture, from this share of the oscillation's on. */
    private static final int POINTS = 41;

    private static final double LOWEST = 1e-4;
    private static final double HIGHEST = 0.7;

    private final DisturbanceInput study;
    private final ResolutionLadder ladder;

    private DisturbanceRunner(DisturbanceInput study, Progress progress) {
        this.study = study;
        ladder = new ResolutionLadder(study.setup(), List.of(study.standard()), progress);
    }

    static DisturbanceResult run(DisturbanceInput study, Progress progress) {
        return new DisturbanceRunner(study, progress).result();
    }

    private DisturbanceResult result() {
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        TrimmedSwitch t = TrimmedSwitch.of(step, WorkingPoint.free(step.solved()));
        double linkage = linkage(step.solved(), study.field().frequency());
        double coarse = linkage(ladder.step(0).solved(), study.field().frequency());
        double perTesla = perTesla(t, linkage, study.field().frequency());
        List<DisturbanceResult.Harmless> sweep = IntStream.range(0, POINTS)
                .mapToObj(i -> {
                    double f0 = t.undamped().frequency();
                    double f = f0 * LOWEST * Math.pow(HIGHEST / LOWEST, i / (POINTS - 1.0));
                    double per = perTesla(t, linkage, f);
                    return new DisturbanceResult.Harmless(
                            f, free(t, per).largestFluxDensity(), on(t, per).largestFluxDensity());
                })
                .toList();
        return new DisturbanceResult(
                study,
                t,
                linkage,
                ErrorBar.ofDifference(linkage - coarse),
                free(t, perTesla),
                on(t, perTesla),
                core(t),
                sweep,
                List.of());
    }

    /** Without a target the amplitude is high; what lowers it to the on threshold turns the output on. */
    private AlternatingField.Effect free(TrimmedSwitch t, double perTesla) {
        return study.field().effect(perTesla, t.undamped().amplitude(), t.onAmplitude());
    }

    /** At the on distance it is low; what raises it to the off threshold turns the output off. */
    private AlternatingField.Effect on(TrimmedSwitch t, double perTesla) {
        return study.field().effect(perTesla, t.onAmplitude(), t.offAmplitude());
    }

    /** Voltage across the tank for a field of 1 T of a frequency, V/T. */
    private static double perTesla(TrimmedSwitch t, double linkage, double frequency) {
        Operating o = t.undamped();
        return new AlternatingField(frequency, 1).acrossTank(linkage, o.inductance(), o.resistance(), t.capacitance());
    }

    /**
     * Flux linkage per flux density at a frequency, m2: by reciprocity the magnetic moment per ampere, which is what is left of the emitted waves far away,
     * {@code 4 pi s(k)/(mu0 k)} for k to 0. Core and housing answer at the frequency of the field, not at that of the oscillation.
     */
    static double linkage(SolvedSwitch solved, double frequency) {
        double omega = 2 * Math.PI * frequency;
        double plane = solved.plane();
        SwitchField field = new SwitchField(
                solved.parts().stream().map(p -> p.shifted(-plane)).toList(),
                w -> solved.coil(w).shifted(-plane),
                solved.basis(),
                solved.resolution().band(omega),
                solved.celsius(),
                solved.resolution(),
                solved.scale());
        double[][] s = field.link(omega);
        WaveBasis basis = solved.basis();
        // the moment is linear in k for small k: a straight line through two nodes
        double first = moment(s, basis, 0);
        double second = moment(s, basis, 1);
        double k0 = basis.k()[0];
        double k1 = basis.k()[1];
        return Math.abs(first - (second - first) * k0 / (k1 - k0));
    }

    private static double moment(double[][] s, WaveBasis basis, int i) {
        return 4 * Math.PI * Math.hypot(s[0][i], s[1][i]) / (Math.sqrt(basis.w()[i]) * Material.MU0 * basis.k()[i]);
    }

    /** The core as a spheroid of its diameter and height, with the flux of the oscillation through its post. */
    private Optional<CoreSaturation> core(TrimmedSwitch t) {
        List<Section> core = study.switchModel().parts().stream()
                .filter(p -> p.role() == Role.CORE)
                .map(Part::section)
                .toList();
        if (core.isEmpty()) {
            return Optional.empty();
        }
        double radius = core.stream().mapToDouble(Section::r1).max().orElseThrow();
        double front = core.stream().mapToDouble(Section::z1).max().orElseThrow();
        double back = core.stream().mapToDouble(Section::z0).min().orElseThrow();
        double mu = study.switchModel().parts().stream()
                .filter(p -> p.role() == Role.CORE)
                .mapToDouble(p -> p.material().muReal())
                .max()
                .orElseThrow();
        double demagnetising = SmallBodies.ellipsoidDemagnetising((front - back) / (2 * radius));
        // the innermost part that stands as high as the coil is the post; without one all flux goes through the whole
        Section post = core.stream()
                .filter(s -> s.r1() <= study.switchModel().winding().section().r0())
                .max(Comparator.comparing(Section::r1))
                .orElse(new Section(0, radius, back, front));
        double area = Math.PI * (post.r1() * post.r1() - post.r0() * post.r0());
        double own = t.undamped().amplitude()
                / (2
                        * Math.PI
                        * t.undamped().frequency()
                        * study.switchModel().winding().turns()
                        * area);
        return Optional.of(
                new CoreSaturation(study.saturation(), CoreSaturation.concentration(mu, demagnetising), own));
    }
}
