package eddyreach.kinds.series;

import eddyreach.units.Dimension;

/** What differs from unit to unit. */
enum Factor {
    TRIM("trim", Dimension.NONE, 0.2),
    CAPACITOR("capacitor", Dimension.NONE, 0.2),
    FERRITE("ferrite permeability", Dimension.NONE, 0.5),
    COIL("coil position", Dimension.LENGTH, 2e-3),
    CAP("cap thickness", Dimension.LENGTH, 2e-3),
    CONDUCTIVITY("target conductivity", Dimension.NONE, 0.5),
    PERMEABILITY("target permeability", Dimension.NONE, 0.8),
    THICKNESS("target thickness", Dimension.NONE, 0.5),
    OFFSET("offset", Dimension.LENGTH, 5e-3),
    MOUNTING("mounting", Dimension.LENGTH, 5e-3),
    TEMPERATURE("temperature", Dimension.TEMPERATURE, 0),
    SUPPLY("supply", Dimension.NONE, 0.1);

    private final String label;
    private final Dimension dimension;
    private final double most;

    Factor(String label, Dimension dimension, double most) {
        this.label = label;
        this.dimension = dimension;
        this.most = most;
    }

    /** Its word in files, tables and charts. */
    String label() {
        return label;
    }

    /** Dimension of its limit: a plain number is a share of the nominal value. */
    Dimension dimension() {
        return dimension;
    }

    /** Largest limit that may be stated, SI. */
    double most() {
        return most;
    }

    /** Whether it changes the switch that is trimmed. */
    boolean ofSwitch() {
        return this == CAPACITOR || this == FERRITE || this == COIL || this == CAP;
    }

    /** Whether it changes the field problem; the others act on the distance directly. */
    boolean solved() {
        return this != TRIM && this != MOUNTING && this != SUPPLY;
    }
}
