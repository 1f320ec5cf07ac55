package eddyreach.proof;

/** How well an expected value is known to come from where it is said to come from. */
public enum Provenance {
    PRINTED("printed", "the number stands in the source; quoted from memory and reproduced by an independent program"),
    READ("read", "the number was read in the source or in a text that quotes it"),
    FORMULA("formula", "the number was computed from the source's formula by an independent program"),
    INDEPENDENT(
            "independent",
            "the number was computed by an independent program that solves the same problem another way"),
    LAW("law", "follows from the equations, whatever the numbers are"),
    MEMORY("memory", "quoted from memory, not confirmed"),
    TRADE("trade", "common practice without a source: plausibility, not precision");

    private final String label;
    private final String meaning;

    Provenance(String label, String meaning) {
        this.label = label;
        this.meaning = meaning;
    }

    /** One word. */
    public String label() {
        return label;
    }

    /** The word explained. */
    public String meaning() {
        return meaning;
    }
}
