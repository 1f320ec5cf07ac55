package eddyreach.model.read;

import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Other switches that may serve where one reaches too little. */
public final class AlternativeSwitches {

    private AlternativeSwitches() {}

    /**
     * The next larger switch of the same mounting and, for a flush one, the non-flush one of the same size, as far as the library
     * has them. Files that are not in order are passed over: they are told when they are asked for.
     */
    public static List<SwitchModel> of(SwitchModel model, Library library, Materials materials) {
        List<SwitchModel> all = new ArrayList<>();
        for (String id : library.switches()) {
            try {
                all.add(SwitchReader.read(library.switchFile(id), materials));
            } catch (InputException e) {
                continue;
            }
        }
        List<SwitchModel> found = new ArrayList<>();
        nearest(all, m -> m.mounting() == model.mounting() && m.faceDiameter() > 1.01 * model.faceDiameter(), found);
        if (model.mounting() == Mounting.FLUSH) {
            nearest(
                    all,
                    m -> m.mounting() == Mounting.NON_FLUSH
                            && Math.abs(m.faceDiameter() - model.faceDiameter()) <= 0.01 * model.faceDiameter(),
                    found);
        }
        return found;
    }

    /** The smallest that fits, of those the first by id. */
    private static void nearest(List<SwitchModel> all, Predicate<SwitchModel> fits, List<SwitchModel> found) {
        all.stream()
                .filter(fits)
                .min(Comparator.comparingDouble(SwitchModel::faceDiameter).thenComparing(SwitchModel::id))
                .ifPresent(found::add);
    }
}
