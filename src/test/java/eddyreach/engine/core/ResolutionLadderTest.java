package eddyreach.engine.core;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.assure.TargetResult;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.study.StudyHeader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Finer meshes follow by themselves until the error bar is below what the study asks for. */
class ResolutionLadderTest {

    private static final Library LIBRARY = new Library(Path.of(""));

    private static TargetResult copper(double accuracy) {
        Materials materials = LIBRARY.materials();
        SwitchModel model = LIBRARY.switchModel("m18-flush");
        Target standard = TargetReader.standard(materials.get("fe360"), model);
        Target copper = TargetReader.standard(materials.get("copper"), model);
        ApproachInput study = new ApproachInput(
                new StudyHeader("s", "s", "", ApproachKind.APPROACH, model, standard, accuracy),
                List.of(copper),
                Map.of(),
                0,
                10e-3,
                21,
                false);
        return ApproachRunner.run(study).targets().get(1);
    }

    @Test
    void climbsAndStops() {
        TargetResult rough = copper(1e-3);
        TargetResult fine = copper(6e-6);
        assertThat(rough.distance().error()).isBetween(6e-6, 1e-3);
        assertThat(fine.distance().error()).isLessThan(6e-6);
        assertThat(fine.warnings()).noneMatch(w -> w.kind() == Warning.Kind.ERROR_ABOVE_REQUEST);
        assertThat(Math.abs(fine.distance().on() - rough.distance().on()))
                .as("the finer answer lies inside the rough one's bar")
                .isLessThan(rough.distance().onError());
    }

    @Test
    void saysSoWhenItCannot() {
        TargetResult result = copper(1e-9);
        assertThat(result.warnings())
                .filteredOn(w -> w.kind() == Warning.Kind.ERROR_ABOVE_REQUEST)
                .singleElement()
                .satisfies(w -> assertThat(w.value(Warning.Measure.ASKED)).isEqualTo(1e-9));
    }
}
