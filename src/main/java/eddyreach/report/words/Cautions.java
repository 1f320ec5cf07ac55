package eddyreach.report.words;

import java.util.List;

/** What every result warns of. */
public final class Cautions {

    /** For the terminal. */
    public static final String SHORT =
            "Computed estimate; confirm it on the machine. Not for safety functions or explosive"
                    + " atmospheres without the standards that apply there and competent people.";

    /** For a document. */
    public static final String TAG = "computed estimate, to be confirmed on the machine";

    /** For a page. */
    public static final List<String> PAGE = List.of(
            "This is a computed estimate from an idealised model. Confirm it on the machine, with the actual switch, part and mount,"
                    + " over the whole range of temperature and supply. The manufacturer's data sheet and instructions take precedence.",
            "A proximity switch of this type is not a safety device and must not be used to protect people. In safety functions and"
                    + " explosive atmospheres the standards that apply there and competent people decide; nothing here shows that a switch"
                    + " is suitable for either.");

    private Cautions() {}
}
