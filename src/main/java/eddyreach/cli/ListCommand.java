package eddyreach.cli;

import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import eddyreach.units.Quantity;
import eddyreach.units.Texts;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists what can be named on the command line and in files. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Lists the switches, mounts, studies and materials that can be named by their id: those in the folders"
                        + " models, studies and shared here, and the shipped ones.",
        footer = {"", "Examples:", "  eddyreach list", "  eddyreach list materials"})
final class ListCommand implements Callable<Integer> {

    private static final int WIDTH = 80;
    private static final int CONDUCTIVITY = 12;
    private static final int PERMEABILITY = 8;

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "WHAT", description = "switches, mounts, studies, materials; all of them unless given")
    private List<String> what;

    /** What can be listed. */
    enum What {
        SWITCHES,
        MOUNTS,
        STUDIES,
        MATERIALS
    }

    ListCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Library library = new Library(terminal.workingFolder());
        String gap = "";
        for (What group : wanted()) {
            terminal.out().print(gap);
            switch (group) {
                case SWITCHES -> switches(library);
                case MOUNTS -> mounts(library);
                case STUDIES -> studies(library);
                case MATERIALS -> materials(library);
            }
            gap = System.lineSeparator();
        }
        return ExitCode.DONE;
    }

    private Set<What> wanted() {
        if (what == null) {
            return EnumSet.allOf(What.class);
        }
        Set<What> groups = EnumSet.noneOf(What.class);
        for (String name : what) {
            groups.add(Stream.of(What.values())
                    .filter(w -> w.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElseThrow(() -> new CommandLine.ParameterException(
                            spec.commandLine(),
                            "There is no list of \"" + Texts.excerpt(name)
                                    + "\", only of switches, mounts, studies and materials")));
        }
        return groups;
    }

    private void switches(Library library) {
        terminal.out().println("Switches");
        int width = width(library.switches());
        library.switches()
                .forEach(id -> line(
                        width, id, described(id, i -> library.switchModel(i).name())));
    }

    private void mounts(Library library) {
        terminal.out().println("Mounts");
        int width = width(library.mounts());
        library.mounts().forEach(id -> line(width, id, described(id, library::mountName)));
    }

    private void studies(Library library) {
        terminal.out().println("Studies");
        int width = width(library.studies());
        library.studies().forEach(id -> line(width, id, described(id, i -> study(library, i))));
    }

    private static String study(Library library, String id) {
        StudyInput study = StudyReader.read(library.studyFile(id), library);
        return study.name() + " (" + study.kind().label() + ", "
                + study.switchModel().id() + ")";
    }

    /** A file with errors is listed all the same, so that it is not looked for in vain. */
    private static String described(String id, Function<String, String> description) {
        try {
            return description.apply(id);
        } catch (InputException e) {
            return "has errors, see: eddyreach check " + id;
        }
    }

    private void materials(Library library) {
        terminal.out().println("Materials at 20 C");
        Materials materials = library.materials();
        int width = width(materials.ids());
        line(width, "", padded("sigma, MS/m", CONDUCTIVITY) + padded("mu_r", PERMEABILITY) + "name");
        for (Material m : materials.all()) {
            line(
                    width,
                    m.id(),
                    padded(Quantity.CONDUCTIVITY.format(m.conductivity20(), 4), CONDUCTIVITY)
                            + padded(Quantity.PERMEABILITY.format(m.muReal(), 4), PERMEABILITY)
                            + m.name());
        }
    }

    /** Width of the column of ids, with the space around it. */
    private static int width(List<String> ids) {
        return 4 + ids.stream().mapToInt(String::length).max().orElse(0);
    }

    /** One entry; a long text goes on in the next lines, below its beginning. */
    private void line(int width, String id, String text) {
        String start = "  " + padded(id, width - 2);
        String rest = text;
        while (start.length() + rest.length() > WIDTH) {
            int room = Math.max(WIDTH - start.length(), 1);
            int space = rest.lastIndexOf(' ', room);
            int cut = space > 0 ? space : room;
            terminal.out().println(start + rest.substring(0, cut));
            start = " ".repeat(width);
            rest = rest.substring(cut).strip();
        }
        terminal.out().println((start + rest).stripTrailing());
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }
}
