package eddyreach.report.words;

/** What every page, picture and answer to {@code --version} calls the program. */
public final class Program {

    private Program() {}

    /** Name and version, the latter from the jar's manifest. */
    public static String title() {
        String version = Program.class.getPackage().getImplementationVersion();
        return "Eddyreach " + (version == null ? "(not packaged)" : version);
    }
}
