package eddyreach.cli;

import java.io.BufferedWriter;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
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
        Terminal terminal = Terminal.of(
                writer(FileDescriptor.out, charset),
                writer(FileDescriptor.err, charset),
                Path.of(""),
                console != null,
                System.getenv());
        int code = Eddyreach.execute(terminal, args);
        terminal.err().flush();
        if (code != ExitCode.DONE) {
            System.exit(code);
        }
    }

    /** Not by way of System.out, which keeps to itself that it could not write. */
    private static PrintWriter writer(FileDescriptor to, Charset charset) {
        return new PrintWriter(new PlainWriter(
                new BufferedWriter(new OutputStreamWriter(new FileOutputStream(to), charset)), charset));
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
