package eddyreach.field.targets;

import eddyreach.closedform.LayeredPlate;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;

/** An endless layered plate: exact, without any mesh. */
public final class PlateTarget implements TargetField {

    private final LayeredPlate plate;
    private final WaveBasis basis;

    /**
     * @param plate the layers
     * @param basis waves in the gap
     */
    public PlateTarget(LayeredPlate plate, WaveBasis basis) {
        this.plate = plate;
        this.basis = basis;
    }

    @Override
    public Reflection at(double omega) {
        double[] re = new double[basis.size()];
        double[] im = new double[basis.size()];
        plate.reflection(omega, basis.k(), re, im);
        return new Reflection.Diagonal(re, im);
    }
}
