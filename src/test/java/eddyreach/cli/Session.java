package eddyreach.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The program run in this process, in a folder, with what it printed. */
record Session(int code, String out, String err) {

    static Session in(Path folder, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), folder, false, false, 80);
        int code = Eddyreach.execute(terminal, args);
        terminal.out().flush();
        terminal.err().flush();
        // how far a run is, is told every ten seconds: on a slow machine
        String told = text(err, folder).replaceAll("(?m)^[^\n:]+: [^\n]* \\d+/\\d+(, about [^\n]*)?\n", "");
        return new Session(code, text(out, folder), told);
    }

    /** Without the folder's own path and with plain line breaks, so that whole sentences can be compared. */
    private static String text(StringWriter writer, Path folder) {
        return writer.toString()
                .replace(System.lineSeparator(), "\n")
                .replace('\\', '/')
                .replace(folder.toString().replace('\\', '/') + "/", "");
    }

    /** Files and folders in a folder, however deep, sorted, but for the list of what runs have written there. */
    static List<String> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(p -> !p.equals(folder) && !p.toString().endsWith(".sha256"))
                    .map(p -> folder.relativize(p).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
