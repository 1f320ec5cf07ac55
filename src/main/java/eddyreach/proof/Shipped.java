package eddyreach.proof;

import eddyreach.model.read.Materials;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.SourceFile;

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
