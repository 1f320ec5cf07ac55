package eddyreach.field.targets;

import eddyreach.closedform.LayeredPlate;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.join.TargetField;
import eddyreach.field.join.TargetFieldContract;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Nested;

/** All targets keep the contract; switch and target in one field problem are the independent solution. */
class TargetFieldContractTest {

    private static final double MM = ReferenceSwitch.MM;
    private static final Band BAND = new Band(ReferenceSwitch.OMEGA, 1.15 * ReferenceSwitch.OMEGA);
    private static final double CELSIUS = 20;

    /** A plate as wide as this counts as endless: ten core radii. */
    private static final double WIDE = 70 * MM;

    private static Part part(Material m, double r0, double r1, double z0, double z1) {
        return new Part(m.id(), Role.TARGET, new Section(r0 * MM, r1 * MM, z0 * MM, z1 * MM), m);
    }

    /** Switch and parts, their nearest point at a distance, m, in one field problem. */
    private static Complex direct(List<Part> parts, double distance) {
        return new DirectSolve(
                        ReferenceSwitch.parts(),
                        ReferenceSwitch.COIL,
                        parts.stream().map(p -> p.shifted(distance)).toList(),
                        ReferenceSwitch.OMEGA,
                        CELSIUS,
                        eddyreach.field.axial.Resolution.FINE,
                        ReferenceSwitch.SCALE)
                .change();
    }

    private abstract static class Meshed extends TargetFieldContract {

        abstract List<Part> parts();

        @Override
        protected TargetField target() {
            return new BodyTarget(parts(), basis(), BAND, CELSIUS, RESOLUTION, ReferenceSwitch.SCALE);
        }

        @Override
        protected Complex independent(double distance) {
            return direct(parts(), distance);
        }
    }

    @Nested
    class SteelDisc extends Meshed {
        @Override
        List<Part> parts() {
            return List.of(part(ReferenceSwitch.STEEL, 0, 10, 0, 1));
        }
    }

    @Nested
    class StainlessOnCopper extends Meshed {
        @Override
        List<Part> parts() {
            return List.of(part(ReferenceSwitch.STAINLESS, 0, 8, 0, 0.5), part(ReferenceSwitch.COPPER, 0, 8, 0.5, 1.5));
        }
    }

    @Nested
    class BrassTube extends Meshed {
        @Override
        List<Part> parts() {
            return List.of(part(ReferenceSwitch.BRASS, 6, 8, 0, 6));
        }
    }

    @Nested
    class Plate extends TargetFieldContract {
        @Override
        protected TargetField target() {
            return new PlateTarget(LayeredPlate.single(1.39e6, 1, 1 * MM), basis());
        }

        @Override
        protected Complex independent(double distance) {
            return direct(
                    List.of(new Part("plate", Role.TARGET, new Section(0, WIDE, 0, 1 * MM), ReferenceSwitch.STAINLESS)),
                    distance);
        }
    }

    @Nested
    class Ball extends TargetFieldContract {

        private static final double RADIUS = 5;
        private static final int SLICES = 40;

        @Override
        protected TargetField target() {
            return new SphereTarget("ball", RADIUS * MM, ReferenceSwitch.STAINLESS, basis(), CELSIUS);
        }

        /** Slices of the same volume each, which tend to the ball as they get thinner: 0.5 % left with 48 of them for stainless steel. */
        @Override
        protected Complex independent(double distance) {
            List<Part> slices = new ArrayList<>();
            double h = 2 * RADIUS / SLICES;
            for (int i = 0; i < SLICES; i++) {
                double a = -RADIUS + i * h;
                double b = a + h;
                double mean = RADIUS * RADIUS - (b * b * b - a * a * a) / (3 * h);
                slices.add(part(ReferenceSwitch.STAINLESS, 0, Math.sqrt(mean), i * h, (i + 1) * h));
            }
            return direct(slices, distance);
        }

        @Override
        protected double tolerance() {
            return 1e-2;
        }
    }

    @Nested
    class BeforeABackground extends TargetFieldContract {

        private static final double BEHIND = 3;

        private final List<Part> parts = List.of(part(ReferenceSwitch.STAINLESS, 0, 6, 0, 1));

        @Override
        protected TargetField target() {
            ThroughTarget through = new ThroughTarget(parts, basis(), BAND, CELSIUS, RESOLUTION, ReferenceSwitch.SCALE);
            return new BackedTarget(
                    through, new PlateTarget(LayeredPlate.single(35e6, 1, 2 * MM), basis()), BEHIND * MM);
        }

        @Override
        protected Complex independent(double distance) {
            List<Part> all = new ArrayList<>(parts);
            all.add(new Part(
                    "background",
                    Role.TARGET,
                    new Section(0, WIDE, (1 + BEHIND) * MM, (3 + BEHIND) * MM),
                    ReferenceSwitch.ALUMINIUM));
            return direct(all, distance);
        }
    }

    @Nested
    class OpenSwitch extends TargetFieldContract {
        @Override
        protected TargetField target() {
            return FacingSwitch.open(field());
        }

        @Override
        protected Complex independent(double distance) {
            List<Part> mirrored = ReferenceSwitch.parts().stream()
                    .map(p -> new Part(
                            "other " + p.name(),
                            Role.TARGET,
                            new Section(
                                    p.section().r0(),
                                    p.section().r1(),
                                    -p.section().z1(),
                                    -p.section().z0()),
                            p.material()))
                    .toList();
            return direct(mirrored, distance);
        }
    }
}
