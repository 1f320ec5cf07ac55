package eddyreach.kinds.approach;

import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.model.values.ThicknessTolerance;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.List;

/** The thickness tolerances of targets as inputs. */
final class ToleranceWords {

    private ToleranceWords() {}

    /** A sentence for each layer of a sheet. */
    static List<String> of(Target target) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < target.tolerances().size(); i++) {
            Layer layer = target.layers().get(i);
            ThicknessTolerance t = target.tolerances().get(i);
            all.add("Thickness of " + target.id() + ", " + layer.material().name() + " "
                    + Labels.length(layer.thickness()) + ": "
                    + (t.share() == 0 ? "exact" : "± " + Labels.significant(100 * t.share(), 2) + " %") + " ("
                    + Terms.of(t.origin()) + ").");
        }
        return all;
    }
}
