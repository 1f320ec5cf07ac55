package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    @TempDir
    private Path folder;

    @Test
    void everyKindOfFile() throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), RunCommandTest.QUICK);
        assertThat(Session.in(
                        folder,
                        "check",
                        "p14-reference",
                        "m18-derating",
                        "shared/materials.yaml",
                        "models/p14-reference.yaml",
                        "mine.yaml"))
                .isEqualTo(new Session(0, """
                        models/p14-reference.yaml: fine (shipped switch)
                        studies/m18-derating.yaml: fine (shipped study)
                        shared/materials.yaml: fine (shipped materials)
                        models/p14-reference.yaml: fine (shipped switch)
                        mine.yaml: fine (study)
                        """, ""));
        assertThat(Session.files(folder)).containsExactly("mine.yaml");
    }

    @Test
    void allErrorsOfAllFiles() throws IOException {
        String reference = Files.readString(Path.of("models/p14-reference.yaml"));
        Files.writeString(
                folder.resolve("bad.yaml"),
                reference
                        .replace("turns: 80", "turns: 0")
                        .replace("200 kHz", "200 kg")
                        .replace("flush\n", "flash\n"));
        Files.writeString(folder.resolve("kind.yaml"), "eddyreach: switches\n");
        Files.writeString(folder.resolve("list.yaml"), "- a\n");
        assertThat(Session.in(
                        folder,
                        "check",
                        "bad.yaml",
                        "m18-derating",
                        "kind.yaml",
                        "list.yaml",
                        "gone.yaml",
                        "m18-deratin"))
                .isEqualTo(new Session(2, "studies/m18-derating.yaml: fine (shipped study)\n", """
                        bad.yaml:%d:11 mounting: got "flash", needs flush or non-flush
                        bad.yaml:%d:12 frequency: 200 kg: unknown unit "kg", needs a frequency such as 200 kHz
                        bad.yaml:%d:10 winding.turns: got 0, needs a whole number from 1 to 5000
                        kind.yaml:1:12 eddyreach: got a file of kind "switches", needs materials, mount, study or switch
                        list.yaml:1:1: the key "eddyreach" that tells the kind of file is missing, needs materials, mount, study or switch
                        gone.yaml: file not found
                        m18-deratin: there is no study of this name; did you mean m18-derating?
                        7 errors.
                        """.formatted(
                        line(reference, "mounting:"), line(reference, "frequency:"), line(reference, "  turns:"))));
    }

    private static int line(String text, String start) {
        return 1
                + text.lines()
                        .toList()
                        .indexOf(text.lines()
                                .filter(l -> l.startsWith(start))
                                .findFirst()
                                .orElseThrow());
    }

    private String said(String text) throws IOException {
        Files.writeString(folder.resolve("a.yaml"), text);
        return Session.in(folder, "check", "a.yaml").err();
    }

    @Test
    void whatCannotBeSeenIsTold() throws IOException {
        String study = RunCommandTest.QUICK;
        assertThat(said("\u2028")).startsWith("a.yaml:1:1: no content; line breaks are U+2028\n");
        assertThat(said(study + "accuracy: 5\u200b um\n"))
                .contains("accuracy: 5\u200b um: an invisible character U+200B before the unit\n");
        assertThat(said(study.replaceFirst("name: .*", "name: \"red \\\\e[31m\"")))
                .contains(" name: holds the control character U+001B, leave it out\n");
        assertThat(said(study.replaceFirst("name: .*", "name: \"\\\\UFFFFFFFF\"")))
                .startsWith("a.yaml:1:1: an escape such as /UFFFFFFFF stands for no character");
    }

    @Test
    @EnabledOnOs(value = OS.LINUX, disabledReason = "makes a named pipe")
    void aPipeIsNotWaitedFor() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe.yaml");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        assertThat(Session.in(folder, "check", "pipe.yaml").err())
                .isEqualTo("pipe.yaml: is a pipe or a device, needs a file\n1 error.\n");
    }

    /** Four times as many targets take four times as long, not sixteen; eight leaves room for a busy machine. */
    @Test
    void timeGrowsWithTheNumberOfTargetsAndNoFaster() throws IOException {
        double[] seconds = new double[3];
        int[] counts = {5000, 5000, 20000};
        for (int i = 0; i < counts.length; i++) {
            StringBuilder text =
                    new StringBuilder("eddyreach: study\nname: a\nkind: approach\nswitch: m18-flush\ntargets:\n");
            for (int n = 0; n < counts[i]; n++) {
                text.append("- {name: t").append(n).append(", material: fe360}\n");
            }
            Files.writeString(folder.resolve("many.yaml"), text);
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            assertThat(Session.in(folder, "check", "many.yaml").out()).isEqualTo("many.yaml: fine (study)\n");
            seconds[i] = 1e-9 * (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
        }
        assertThat(seconds[2]).isLessThan(8 * seconds[1]);
    }

    @Test
    void theWindingsCopperAndANameWithADash() throws IOException {
        for (String bad : new String[] {"conductivity: 0 S/m", "conductivity: 58 MS/m, permeability: 2"}) {
            assertThat(said("eddyreach: materials\nmaterials:\n  copper: {name: c, source: s, " + bad + "}\n"))
                    .contains("materials.copper: the winding's copper must conduct and not be magnetic\n");
        }
        assertThat(Session.in(folder, "check", "-dash.yaml").err())
                .isEqualTo("-dash.yaml: begins with -; write ./-dash.yaml\nHow it is used: eddyreach check --help\n");
    }
}
