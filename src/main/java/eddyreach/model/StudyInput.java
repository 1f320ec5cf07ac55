package eddyreach.model;

/** What a study asks for, in SI units. */
public interface StudyInput {

    /** What every study says. */
    StudyHeader header();

    /** The same study without field pictures, where it has any. */
    default StudyInput withoutFieldPictures() {
        return this;
    }

    /** Name of its file without the ending. */
    default String id() {
        return header().id();
    }

    /** Readable name. */
    default String name() {
        return header().name();
    }

    /** Which study. */
    default Kind kind() {
        return header().kind();
    }

    /** The switch. */
    default SwitchModel switchModel() {
        return header().switchModel();
    }

    /** The standard target of the switch. */
    default Target standard() {
        return header().standard();
    }

    /** Largest numerical error of a distance that is accepted, m. */
    default double accuracy() {
        return header().accuracy();
    }

    /** The kinds of study. */
    enum Kind {
        APPROACH("approach"),
        MATERIALS("materials"),
        MOUNT("mount"),
        BACKGROUND("background"),
        NEIGHBOUR("neighbour"),
        RECESS("recess"),
        THICKNESS("thickness"),
        SIZE("size"),
        CONDUCTIVITY("conductivity"),
        LAYERS("layers"),
        ZONE("zone"),
        PASS("pass");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The word used in files and tables. */
        public String label() {
            return label;
        }
    }

    /** Numerical error of a distance that is accepted unless a study says otherwise: 0.02 mm at M18, in proportion to the size; m. */
    static double defaultAccuracy(SwitchModel model) {
        return 0.02e-3 * model.faceDiameter() / 18e-3;
    }

    /** End of the range of distances unless a study says otherwise, m. */
    static double defaultReach(SwitchModel model) {
        return 2.5 * model.ratedDistance();
    }
}
