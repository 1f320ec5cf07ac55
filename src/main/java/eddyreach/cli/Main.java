package eddyreach.cli;

import java.io.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;

/** Start of the program on a command line. */
public final class Main {

    private Main() {}

    /** Runs a command; the process ends with its exit code. */
    public static void main(String[] args) {
        // pictures are drawn into memory, and a server has no screen
        System.setProperty("java.awt.headless", "true");
        Console console = System.console();
        Charset charset = console != null ? console.charset() : charset();
        Terminal terminal =
                new Terminal(writer(System.out, charset), writer(System.err, charset), Path.of(""), console != null);
        int code = Eddyreach.execute(terminal, args);
        terminal.out().flush();
        terminal.err().flush();
        if (code != ExitCode.DONE) {
            System.exit(code);
        }
    }

    private static PrintWriter writer(PrintStream stream, Charset charset) {
        return new PrintWriter(new PlainWriter(new OutputStreamWriter(stream, charset), charset));
    }

    /** The charset that the surroundings expect; a name only newer Java versions know comes first. */
    private static Charset charset() {
        for (String key : new String[] {"stdout.encoding", "native.encoding"}) {
            String name = System.getProperty(key);
            if (name != null && Charset.isSupported(name)) {
                return Charset.forName(name);
            }
        }
        return Charset.defaultCharset();
    }
}
