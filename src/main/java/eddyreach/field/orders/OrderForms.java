package eddyreach.field.orders;

import eddyreach.fem.MixedForms;
import eddyreach.fem.MixedForms.Kind;
import eddyreach.mesh.Axis;

/**
 * The one-dimensional forms of which the matrices of the azimuthal orders are sums of products; v shape functions, l Legendre
 * polynomials inside elements. Arrays are indexed {@code [element][first function * count + second function]}.
 */
final class OrderForms {

    /** int v' v' r dr. */
    final double[][] slopeR;

    /** int v v / r dr. */
    final double[][] overR;

    /** int v v r^3 dr. */
    final double[][] cubeR;

    /** int d(rv)/dr d(rv)/dr r dr. */
    final double[][] momentR;

    /** int v v r^2 dr. */
    final double[][] squareR;

    /** int l l r dr. */
    final double[][] innerR;

    /** int l l r^3 dr. */
    final double[][] innerCubeR;

    /** int l d(rv)/dr r^2 dr. */
    final double[][] innerMomentR;

    /** int l v' r^2 dr. */
    final double[][] innerSlopeR;

    /** int l l dz. */
    final double[][] innerZ;

    /** int l v' dz. */
    final double[][] innerSlopeZ;

    OrderForms(Axis r, Axis z) {
        slopeR = MixedForms.of(r, Kind.SLOPE, Kind.SLOPE, 1);
        overR = MixedForms.of(r, Kind.VALUE, Kind.VALUE, -1);
        cubeR = MixedForms.of(r, Kind.VALUE, Kind.VALUE, 3);
        momentR = MixedForms.of(r, Kind.MOMENT, Kind.MOMENT, 1);
        squareR = MixedForms.of(r, Kind.VALUE, Kind.VALUE, 2);
        innerR = MixedForms.of(r, Kind.INNER, Kind.INNER, 1);
        innerCubeR = MixedForms.of(r, Kind.INNER, Kind.INNER, 3);
        innerMomentR = MixedForms.of(r, Kind.INNER, Kind.MOMENT, 2);
        innerSlopeR = MixedForms.of(r, Kind.INNER, Kind.SLOPE, 2);
        innerZ = MixedForms.of(z, Kind.INNER, Kind.INNER, 0);
        innerSlopeZ = MixedForms.of(z, Kind.INNER, Kind.SLOPE, 0);
    }
}
