package eddyreach.model.read;

import eddyreach.model.yaml.Node;
import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.TanhPair;
import eddyreach.units.Dimension;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Binds the oscillator group of a switch file: the active element by name, with its parameters. */
final class OscillatorReader {

    private enum Kind {
        HARD_LIMITER,
        TANH_PAIR,
        CLIPPED_STAGE
    }

    private static final Map<String, Kind> KINDS =
            Map.of("hard limiter", Kind.HARD_LIMITER, "tanh pair", Kind.TANH_PAIR, "clipped stage", Kind.CLIPPED_STAGE);

    private OscillatorReader() {}

    /** The element, to be built once nothing is wrong with the file; empty when its name is not known. */
    static Optional<Supplier<ActiveElement>> bind(Node node) {
        Optional<Kind> kind = node.choice("element", KINDS);
        if (kind.isEmpty()) {
            node.knows("current", "transconductance", "clip level");
            return Optional.empty();
        }
        Supplier<ActiveElement> element = switch (kind.get()) {
            case HARD_LIMITER -> {
                double current = current(node);
                yield () -> new HardLimiter(current);
            }
            case TANH_PAIR -> {
                double current = current(node);
                double transconductance = transconductance(node);
                yield () -> new TanhPair(current, transconductance);
            }
            case CLIPPED_STAGE -> {
                double transconductance = transconductance(node);
                double clipLevel = node.quantity("clip level", Dimension.VOLTAGE, 1e-3, 1e3);
                yield () -> new ClippedStage(transconductance, clipLevel);
            }
        };
        return Optional.of(element);
    }

    private static double current(Node node) {
        return node.quantity("current", Dimension.CURRENT, 1e-9, 1);
    }

    private static double transconductance(Node node) {
        return node.quantity("transconductance", Dimension.CONDUCTANCE, 1e-9, 10);
    }
}
