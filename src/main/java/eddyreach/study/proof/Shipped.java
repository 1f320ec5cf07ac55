package eddyreach.study.proof;

import eddyreach.model.Materials;
import eddyreach.model.SourceFile;
import eddyreach.model.SwitchModel;
import eddyreach.model.SwitchReader;

/** Files within the program, whatever lies in the user's folders. */
final class Shipped {

    private Shipped() {}

    static Materials materials() {
        return Materials.read(new SourceFile.Shipped("shared/materials.yaml"));
    }

    static SwitchModel switchModel(String id) {
        return SwitchReader.read(new SourceFile.Shipped("models/" + id + ".yaml"), materials());
    }
}
