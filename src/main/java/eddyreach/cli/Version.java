package eddyreach.cli;

import eddyreach.report.words.Program;
import picocli.CommandLine.IVersionProvider;

/** The program and its version. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {Program.title()};
    }
}
