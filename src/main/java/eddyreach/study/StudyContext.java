package eddyreach.study;

import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import java.util.Optional;

/**
 * What the readers of the single kinds need.
 *
 * @param root the file
 * @param switchModel the switch; empty when it could not be read
 * @param materials the materials that may be named
 * @param targets reads targets
 * @param library where files are that the study names
 * @param source the file itself, to which paths in it are relative
 * @param problems where problems of other files go
 */
public record StudyContext(
        Node root,
        Optional<SwitchModel> switchModel,
        Materials materials,
        TargetReader targets,
        Library library,
        SourceFile source,
        Problems problems) {}
