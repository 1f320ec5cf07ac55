package eddyreach.engine.assure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.Assurance.Cause;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Bands in mounts: those of free air where the mount does nothing, above its metal and below, and wider for what its metal may be. */
class MountedAssurerTest {

    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Materials MATERIALS = LIBRARY.materials();
    private static final SwitchModel MODEL = LIBRARY.switchModel("m18-flush");
    private static final Setup SETUP =
            new Setup(MODEL, TargetReader.standard(MATERIALS.get(Materials.STANDARD_STEEL), MODEL), 2e-5);

    /** Nothing was found at a finer step, so that bands are those of the rough one. */
    private static final SwitchDistance UNKNOWN =
            new SwitchDistance(SwitchDistance.Outcome.SWITCHES, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private static Target disc(String material, double diameter) {
        return new Target(
                material,
                material,
                new Target.Outline.Disc(diameter),
                List.of(new Layer(MATERIALS.get(material), 1e-3)));
    }

    private static Mount wall(String material, double surface, double opening, double depth) {
        List<Mount.Opening> openings = depth > 0 ? List.of(new Mount.Opening(opening, opening, 0, depth)) : List.of();
        return new Mount(
                "wall",
                "wall",
                "",
                surface,
                Optional.of(new Mount.Wall(
                        MATERIALS.get(material),
                        20e-3,
                        Double.POSITIVE_INFINITY,
                        20e-3,
                        openings,
                        Double.POSITIVE_INFINITY)),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    private static Assurance band(Mount mount, Target target) {
        return new MountedAssurer(SETUP, List.of(target))
                .of(mount, target, UNKNOWN)
                .orElseThrow();
    }

    @Test
    void aWallOfPlasticDoesNothing() {
        Target target = disc("aluminium", 20e-3);
        Assurance free = band(Mount.freeAir(), target);
        Assurance mounted = band(wall("plastic", 0, 0, 0), target);
        assertThat(mounted.assuredOn()).isCloseTo(free.assuredOn(), within(1e-7));
        assertThat(mounted.assuredOff()).isCloseTo(free.assuredOff(), within(1e-7));
        assertThat(mounted.contributions()).extracting(Contribution::cause).doesNotContain(Cause.MOUNT_CONDUCTIVITY);
    }

    /** Sunk in steel the band moves outwards with the distance, and the steel's own tolerances are in it. */
    @Test
    void theMetalOfTheMountVariesToo() {
        Assurance free = band(Mount.freeAir(), SETUP.standard());
        Assurance level = band(wall("fe360", 0, 0, 0), SETUP.standard());
        assertThat(level.assuredOff()).isGreaterThan(free.assuredOff() + 0.1e-3);
        for (Cause cause : List.of(Cause.MOUNT_CONDUCTIVITY, Cause.MOUNT_PERMEABILITY)) {
            Contribution c = level.contributions().stream()
                    .filter(x -> x.cause() == cause)
                    .findFirst()
                    .orElseThrow();
            assertThat(c.longest() - c.shortest()).as("%s", cause).isBetween(1e-6, 0.3e-3);
            assertThat(c.shortest()).isGreaterThan(level.assuredOn());
        }
    }

    /** Level steel does little to a target beside the axis, as to one on it. */
    @Test
    @Tag("long")
    void besideTheAxis() {
        Target target = disc("fe360", 20e-3).beside(6e-3);
        Assurance free = band(Mount.freeAir(), target);
        Assurance level = band(wall("fe360", 0, 0, 0), target);
        assertThat(level.assuredOn()).isCloseTo(free.assuredOn(), within(0.1e-3));
        assertThat(level.assuredOff()).isBetween(free.assuredOff() + 0.05e-3, free.assuredOff() + 0.4e-3);
    }

    /**
     * Below the surface of a recess so wide that its metal does not matter the band is that of free air: variants there are followed by their
     * ratio to the target as it is, and a thin plate may need the whole way down to contact.
     */
    @Test
    @Tag("long")
    void insideARecessTheBandIsThatOfFreeAir() {
        for (String material : List.of("aluminium", "fe360")) {
            Target target = disc(material, 20e-3);
            Assurance free = band(Mount.freeAir(), target);
            Assurance sunk = band(wall("fe360", 6e-3, 120e-3, 15e-3), target);
            assertThat(sunk.assuredOn()).as(material).isCloseTo(free.assuredOn(), within(0.01e-3));
            assertThat(sunk.assuredOff()).as(material).isCloseTo(free.assuredOff(), within(0.02e-3));
        }
    }
}
