package eddyreach.model.values;

import java.util.List;

/**
 * How far the thickness of a layer may differ from the stated one, either way.
 *
 * @param share of the stated thickness, 0 to {@value #MOST}
 * @param origin where the number comes from
 */
public record ThicknessTolerance(double share, Origin origin) {

    /** Largest share; more would leave next to nothing of the layer. */
    public static final double MOST = 0.9;

    /** Thickest metal that is foil, m. */
    private static final double FOIL = 0.2e-3;

    /** Thickest metal over another that is a plating, m. */
    private static final double PLATING = 50e-6;

    /** Where a tolerance comes from: all but a stated one are common practice, from memory of the standards for the products. */
    public enum Origin {
        /** The file says so. */
        STATED(Double.NaN),
        /** Aluminium foil: 8 % after EN 546-3. */
        FOIL(0.08),
        /** Cold-rolled sheet of steel or aluminium near 1 mm: 6 to 8 % after EN 10131 and EN 485-4. */
        SHEET(0.07),
        /** Electroplating and dip coatings over a part and from batch to batch: no standard limits both ways. */
        PLATING(0.3),
        /** Paper, film, paint. */
        FILM(0.1);

        private final double usual;

        Origin(double usual) {
            this.usual = usual;
        }
    }

    /** As a file states it. */
    public static ThicknessTolerance stated(double share) {
        return new ThicknessTolerance(share, Origin.STATED);
    }

    /** The usual one of a layer among others, by what it looks like. */
    public static ThicknessTolerance usual(List<Layer> layers, int i) {
        Layer layer = layers.get(i);
        Origin origin = !layer.material().hasEffect()
                ? Origin.FILM
                : layer.thickness() <= PLATING && overMetal(layers, i)
                        ? Origin.PLATING
                        : layer.thickness() <= FOIL ? Origin.FOIL : Origin.SHEET;
        return new ThicknessTolerance(origin.usual, origin);
    }

    /** A thin metal is a plating where it touches a thicker one. */
    private static boolean overMetal(List<Layer> layers, int i) {
        return metalAbove(layers, i, i - 1) || metalAbove(layers, i, i + 1);
    }

    private static boolean metalAbove(List<Layer> layers, int i, int beside) {
        return beside >= 0
                && beside < layers.size()
                && layers.get(beside).material().hasEffect()
                && layers.get(beside).thickness() > layers.get(i).thickness();
    }
}
