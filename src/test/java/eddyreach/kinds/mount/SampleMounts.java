package eddyreach.kinds.mount;

import eddyreach.engine.core.Progress;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Mounts of all kinds around a small switch, computed once for all tests of what is shown of them. */
final class SampleMounts {

    private static final String STUDY = """
            eddyreach: study
            name: a mount
            kind: mount
            switch: m8-flush
            mounts:
              - name: a-mount-with-a-name-as-long-as-names-can
                label: countersunk
                sunk by: 1 mm
                wall: {material: fe360, thickness: 9 mm, countersink: {diameter: 11 mm, depth: 4 mm}}
                nut: {material: brass, across corners: 15 mm, height: 3 mm}
                background: {material: aluminium, distance: 12 mm, thickness: 2 mm}
              - name: odd
                label: stepped, 20 µm off
                sunk by: 1.5 mm
                wall: {material: fe360, thickness: 9 mm, diameter: 30 mm, recess: {diameter: 14 mm, depth: 4 mm}}
              - name: bracket
                proud by: 3 mm
                wall: {material: fe360, thickness: 2 mm, diameter: 30 mm, edge: 6 mm}
            distances: {to: 5 mm, points: 11}
            """;

    private static MountResult known;

    private SampleMounts() {}

    static synchronized MountResult result() throws IOException {
        if (known == null) {
            Path folder = Files.createTempDirectory("mounts");
            Path file = Files.writeString(folder.resolve("s.yaml"), STUDY);
            MountInput study = (MountInput) StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")));
            // the target dips into the second
            known = MountRunner.run(study, m -> !m.id().equals("odd"), Progress.NONE);
            Files.delete(file);
            Files.delete(folder);
        }
        return known;
    }
}
