package eddyreach.materials;

/**
 * In which state a material is: what of its table value is in effect.
 *
 * @param celsius temperature at which it is held, degrees Celsius; NaN when it follows its surroundings
 * @param sheetFactor conductivity over that of the solid material, 1 unless a solid sheet stands for a perforated one or a mesh
 */
public record Specimen(double celsius, double sheetFactor) {

    /** Solid and as warm as what is around it. */
    public static final Specimen PLAIN = new Specimen(Double.NaN, 1);

    public Specimen {
        if (!(sheetFactor > 0) || Double.isInfinite(sheetFactor)) {
            throw new IllegalArgumentException("sheet factor " + sheetFactor + ": must be positive and finite");
        }
    }

    /** True when it is held at a temperature of its own. */
    public boolean held() {
        return !Double.isNaN(celsius);
    }

    /** Its temperature in surroundings of a temperature, degrees Celsius. */
    public double celsius(double surroundings) {
        return held() ? celsius : surroundings;
    }
}
