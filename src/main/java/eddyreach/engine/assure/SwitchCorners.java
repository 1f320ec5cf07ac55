package eddyreach.engine.assure;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.Trim;
import java.util.List;

/**
 * The thresholds that pieces of a switch may have, at 23 C and when coldest and hottest: set on the standard target in free air, wherever
 * the switch is used later.
 */
final class SwitchCorners {

    /** A piece may have next to no differential travel: its off threshold is this share of its on threshold. */
    private static final double NO_TRAVEL = 1 - 1e-9;

    private final ResolutionLadder.Step nominal;
    private final Target standard;
    private final Condition ambient;
    private final List<Condition> temperatures;
    private final Trim pieceShort;
    private final Trim pieceLong;
    private final Trim usableShort;
    private final Trim usableLong;

    /**
     * A switch at one temperature.
     *
     * @param solved the switch in free air
     * @param celsius its temperature and the target's, degrees Celsius
     * @param weak thresholds of a piece with the shortest distances allowed
     * @param keen thresholds of a piece with the longest distances allowed
     * @param standard where the standard target switches on with the nominal thresholds, m
     */
    record Condition(SolvedSwitch solved, double celsius, Trim weak, Trim keen, double standard) {}

    /**
     * @param setup switch and standard target
     * @param rough the switch at 23 C with its trim
     * @param allowances what to allow for
     */
    SwitchCorners(Setup setup, ResolutionLadder.Step rough, Allowances allowances) {
        standard = setup.standard();
        nominal = rough;
        SwitchModel model = setup.switchModel();
        double shortest = (1 - allowances.effective()) * model.ratedDistance();
        double longest = (1 + allowances.effective()) * model.ratedDistance();
        double travel = allowances.differentialTravel() * longest;
        double least = (1 - allowances.usable()) * shortest;
        double most = (1 + allowances.usable()) * longest;
        ConductanceCurve trimmed = new ConductanceCurve(rough.solved(), rough.field(standard));
        pieceShort = weak(trimmed.conductance(shortest));
        pieceLong = keen(trimmed.conductance(longest), trimmed.conductance(longest + travel));
        double sr = model.effectiveDistance();
        usableShort = weak(trimmed.conductance((1 - allowances.usable()) * sr));
        usableLong = weak(trimmed.conductance((1 + allowances.usable()) * sr));
        ambient = new Condition(
                rough.solved(),
                Temperature.AMBIENT,
                weak(trimmed.conductance(least)),
                keen(trimmed.conductance(most), trimmed.conductance(most + travel)),
                trimmed.on(rough.trim()));
        temperatures = allowances.temperature()
                ? List.of(
                        condition(allowances.coldest(), least, most, travel),
                        condition(allowances.hottest(), least, most, travel))
                : List.of();
    }

    private static Trim weak(double on) {
        return new Trim(on, NO_TRAVEL * on);
    }

    /** The standard target's curve may be level out there. */
    private static Trim keen(double on, double off) {
        return new Trim(on, Math.min(off, NO_TRAVEL * on));
    }

    /** The thresholds are kept from the trim at 23 C as long as the standard target stays within the limits of s_u. */
    private Condition condition(double celsius, double least, double most, double travel) {
        SolvedSwitch solved = nominal.solved().at(celsius);
        ConductanceCurve tryout = ConductanceCurve.of(solved, Variants.at(standard, celsius));
        double on = Math.max(pieceLong.on(), tryout.conductance(most));
        double off = Math.max(pieceLong.off(), tryout.conductance(most + travel));
        return new Condition(
                solved,
                celsius,
                weak(Math.min(pieceShort.on(), tryout.conductance(least))),
                keen(on, off),
                tryout.on(nominal.trim()));
    }

    /** The switch as it is, at 23 C. */
    ResolutionLadder.Step nominal() {
        return nominal;
    }

    /** True when a target is the standard target, whose material is what it is by definition. */
    boolean defines(Target target) {
        return target.actsAs(standard);
    }

    /** At 23 C and the limits of s_u. */
    Condition ambient() {
        return ambient;
    }

    /** The coldest and the hottest; none where temperature is not varied. */
    List<Condition> temperatures() {
        return temperatures;
    }

    /** On thresholds of the pieces with the shortest and the longest s_r. */
    List<Trim> pieces() {
        return List.of(pieceShort, weak(pieceLong.on()));
    }

    /** On thresholds at the limits of s_u of this piece. */
    List<Trim> usable() {
        return List.of(usableShort, usableLong);
    }
}
