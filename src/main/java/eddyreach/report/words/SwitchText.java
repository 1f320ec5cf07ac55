package eddyreach.report.words;

import eddyreach.model.values.SwitchModel;
import java.util.Locale;

/** How a switch is named in a sentence. */
public final class SwitchText {

    private SwitchText() {}

    /** Its readable name, without a leading word "switch". */
    public static String name(SwitchModel model) {
        String name = model.name().strip();
        String rest = name.replaceFirst("(?i)^switch[,:]?\\s+", "");
        return rest.isEmpty() ? name.toLowerCase(Locale.ROOT) : rest;
    }
}
