package eddyreach.report.words;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.core.FieldPair;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.geometry.Role;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.ThicknessTolerance;
import eddyreach.switching.OutputFunction;

/** The words for the engine's kinds of things, the same on the terminal, on pages, in tables and in JSON. */
public final class Terms {

    private Terms() {}

    public static String of(SwitchDistance.Outcome outcome) {
        return switch (outcome) {
            case SWITCHES -> "switches";
            case NEVER_ON -> "never on";
            case BEYOND_RANGE -> "beyond range";
            case NEVER_OFF -> "does not release";
        };
    }

    public static String of(Role role) {
        return switch (role) {
            case WINDING -> "winding";
            case CORE -> "core";
            case HOUSING -> "housing";
            case MOUNT -> "mount";
            case TARGET -> "target";
        };
    }

    public static String of(Mounting mounting) {
        return switch (mounting) {
            case FLUSH -> "flush";
            case NON_FLUSH -> "non-flush";
        };
    }

    public static String of(OutputFunction output) {
        return switch (output) {
            case NORMALLY_OPEN -> "normally open";
            case NORMALLY_CLOSED -> "normally closed";
        };
    }

    public static String of(Assurance.Cause cause) {
        return switch (cause) {
            case SPREAD -> "spread of single pieces";
            case OPERATION -> "temperature and supply, limits";
            case TEMPERATURE -> "temperature, computed";
            case CONDUCTIVITY -> "conductivity of the target";
            case PERMEABILITY -> "permeability of the target";
            case THICKNESS -> "thickness of the target";
            case MOUNT_CONDUCTIVITY -> "conductivity of the mount";
            case MOUNT_PERMEABILITY -> "permeability of the mount";
            case NUMERICAL -> "numerical error";
        };
    }

    /** One cause alone; of several layers, which. */
    public static String of(Assurance.Contribution c) {
        return c.about().isEmpty() ? of(c.cause()) : "thickness of " + c.about();
    }

    /** What a thickness tolerance was taken from. */
    public static String of(ThicknessTolerance.Origin origin) {
        return switch (origin) {
            case STATED -> "as stated";
            case FOIL -> "usual for foil: EN 546-3, from memory";
            case SHEET -> "usual for sheet: EN 10131 and EN 485-4, from memory";
            case PLATING -> "usual for plating: common practice";
            case FILM -> "usual for paper, film and paint: common practice";
        };
    }

    /** The part of a loss budget. */
    public static String of(LossBudget.Share share) {
        return share.withItsEffect() ? share.part() + ", with what it changes in the switch" : share.part();
    }

    /** What stands before the switch in a picture. */
    public static String of(FieldPicture field) {
        return field.target().map(t -> "with " + t).orElse("without a target");
    }

    /** The left of two fields. */
    public static String left(FieldPair.Comparison comparison) {
        return switch (comparison) {
            case FREE_AIR_AND_MOUNT -> "free air";
            case BOUNDS_OF_EDGE -> "without the edge";
        };
    }

    /** The right of two fields. */
    public static String right(FieldPair.Comparison comparison) {
        return switch (comparison) {
            case FREE_AIR_AND_MOUNT -> "in the mount";
            case BOUNDS_OF_EDGE -> "ending all round";
        };
    }
}
