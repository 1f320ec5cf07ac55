package eddyreach.engine.core;

import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;

/** The wave that explains what a target does. */
public final class Wavenumber {

    private Wavenumber() {}

    /**
     * The wavenumber that dominates at a target, 1/m: 1/k is about 0.6 times mean coil radius plus distance from the coil's front.
     *
     * @param distance distance of the target from the active face, m
     */
    public static double dominant(SwitchModel model, double distance) {
        var s = model.winding().section();
        return 1 / (0.6 * ((s.r0() + s.r1()) / 2 + distance - s.z1()));
    }

    /**
     * Thickness at which a thin sheet takes the most loss of a wave, m: t* = 2 k / (w mu0 sigma), which is k delta^2 of a metal that is not
     * magnetic (reflection of a thin sheet, Maxwell; Smythe). Infinite for an insulator.
     *
     * @param material the sheet
     * @param omega angular frequency, rad/s
     * @param wavenumber wavenumber k of the wave, 1/m
     */
    public static double sheetOptimum(Material material, double omega, double wavenumber) {
        return 2 * wavenumber / (omega * Material.MU0 * material.conductivity(Temperature.AMBIENT));
    }
}
