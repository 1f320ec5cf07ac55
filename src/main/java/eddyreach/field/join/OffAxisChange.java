package eddyreach.field.join;

import org.apache.commons.math3.complex.Complex;

/**
 * What a target beside the axis does to the coil.
 *
 * @param dz change of the coil's impedance, ohm
 * @param truncation estimate of what the azimuthal orders left out add to it, an upper bound in practice, ohm
 * @param targetOrders highest azimuthal order about the target's axis that was taken in
 * @param switchOrders highest azimuthal order about the switch's axis that was taken in
 */
public record OffAxisChange(Complex dz, double truncation, int targetOrders, int switchOrders) {}
