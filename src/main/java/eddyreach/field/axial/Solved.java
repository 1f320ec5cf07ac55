package eddyreach.field.axial;

import java.util.List;

/**
 * A field and the losses it makes.
 *
 * @param field the field
 * @param losses loss of each part, parts without effect left out, the winding's proximity loss last
 */
public record Solved(Field field, List<PartLoss> losses) {

    public Solved {
        losses = List.copyOf(losses);
    }
}
