package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AskCommandTest {

    @TempDir
    private Path folder;

    private Session ask(String... args) {
        String[] all = new String[args.length + 1];
        all[0] = "ask";
        System.arraycopy(args, 0, all, 1, args.length);
        return Session.in(folder, all);
    }

    private static Session usage(String message) {
        return new Session(2, "", message + "\nHow it is used: eddyreach ask --help\n");
    }

    private static Session wrong(String message) {
        return new Session(2, "", message + "\n1 error; nothing was run.\n");
    }

    @Test
    void anAnswerWithoutAFile() throws IOException {
        Session s = ask("--switch", "p14-reference", "--material", "aluminium", "--thickness", "10um", "--plate");
        assertThat(s.err()).isEmpty();
        assertThat(s.code()).isZero();
        assertThat(s.out())
                .startsWith("Yes: on at 5.32 mm (factor 1.06); every unit is on up to 4.16 mm.\n\ntarget     ")
                .contains("\npart                  5.", "\nAluminium, 10 µm, endless plate, factor 1.06: ")
                .contains("\nStudy: aluminium, 10 µm, endless plate.\nSwitch: M18 flush reference switch, ")
                .endsWith("without the standards that apply there and competent\npeople.\n")
                .doesNotContain("Files:");
        assertThat(Session.files(folder)).isEmpty();
    }

    /** The answer is that of the mount, with free air beside it. */
    @Test
    void aSwitchInAMount() throws IOException {
        Files.writeString(
                folder.resolve("steel.yaml"),
                "eddyreach: mount\nname: level in steel\nwall: {material: fe360, thickness: 9 mm}\n");
        String[] disc = {"--switch", "m8-flush", "--material", "fe360", "--diameter", "6mm", "--thickness", "1mm"};
        Session s = ask(with(disc, "--mount", "steel.yaml"));
        assertThat(s.err()).isEmpty();
        assertThat(s.code()).isZero();
        Matcher answer = Pattern.compile(
                        "Yes: on at ([0-9.]+) mm in this mount \\(free air ([0-9.]+)\\); every unit is on up to ([0-9.]+)\\s")
                .matcher(s.out());
        assertThat(answer.lookingAt()).as(s.out()).isTrue();
        double mounted = Double.parseDouble(answer.group(1));
        double free = Double.parseDouble(answer.group(2));
        assertThat(mounted).isBetween(0.95 * free, 1.1 * free).isNotEqualTo(free);
        assertThat(Double.parseDouble(answer.group(3))).isBetween(0.6 * mounted, 0.9 * mounted);
        assertThat(s.out()).contains("in the mount", "\nIn free air:\n");
        assertThat(s.out().lines().mapToInt(String::length).max().orElseThrow()).isLessThanOrEqualTo(80);
    }

    @Test
    void aMountThatIsNone() throws IOException {
        Files.createDirectory(folder.resolve("dir"));
        Files.writeString(
                folder.resolve("far.yaml"),
                "eddyreach: mount\nname: far\nbackground: {material: fe360, distance: 2 mm, thickness: 1 mm}\n");
        String[] disc = {"--switch", "m8-flush", "--material", "fe360", "--thickness", "2mm"};
        assertThat(ask(with(disc, "--mount", "none.yaml"))).isEqualTo(wrong("--mount: none.yaml: file not found"));
        assertThat(ask(with(disc, "--mount", "./dir")).err()).contains("dir: is a folder, needs a file\n");
        assertThat(ask(with(disc, "--mount", "far.yaml")))
                .isEqualTo(
                        wrong("--mount: the background of mount \"far\" stands at 2 mm, which leaves no room for target"
                                + " \"part\", 2 mm thick, at 0 mm"));
    }

    @Test
    void forScripts() throws IOException {
        String[] foil = {"--switch", "p14-reference", "--material", "aluminium", "--thickness", "10um", "--plate"};
        Session line = ask(with(foil, "--quiet"));
        assertThat(line.code()).isZero();
        assertThat(line.out()).matches(".*on at 5\\.[0-9]{2} .*\n");
        Session json = ask(with(foil, "--json", "--into", "a", "--csv-decimal", "comma"));
        assertThat(json.code()).isZero();
        assertThat(json.err()).isEmpty();
        // a session shows every backslash as a stroke
        assertThat(json.out())
                .isEqualTo(Files.readString(folder.resolve("a/result.json")).replace('\\', '/'));
        assertThat(Files.readString(folder.resolve("a/distances.csv")))
                .startsWith("target;on_mm;off_mm;factor;error_mm\r\n")
                .containsPattern("\npart;5,[0-9]+;");
        assertThat(ask(with(foil, "--json", "--quiet"))).isEqualTo(usage("--quiet and --json exclude each other"));
    }

    private static String[] with(String[] line, String... more) {
        return Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void namesOfSeveralWords() {
        Session s = ask(
                "--switch", "p14-reference", "--layer", "PE 0.2mm", "--layer", "AISI 304 1 mm", "--plate", "--quiet");
        assertThat(s.err()).isEmpty();
        assertThat(s.code()).isZero();
    }

    @Test
    void layersAndFilesOnRequest() throws IOException {
        Session s = ask(
                "--switch",
                "p14-reference",
                "--layer",
                "zinc 8 um",
                "--layer",
                "fe360 1.5mm",
                "--plate",
                "--into",
                "a");
        assertThat(s.code()).isZero();
        assertThat(s.out())
                .contains("\nZinc 8 µm on mild steel Fe 360 1.5 mm, endless plate, factor 1.14: the front")
                .contains("\nFiles: a\n")
                .contains("\nPictures, in a, as png:\n  factors  ");
        assertThat(Session.files(folder)).contains("a/result.json", "a/distances.csv", "a/factors.png");
    }

    @Test
    void roundParts() {
        Session washer = ask(
                "--switch",
                "p14-reference",
                "--material",
                "fe360",
                "--washer",
                "20mm/10mm",
                "--thickness",
                "2mm",
                "--slit",
                "--coating",
                "zinc 8um");
        assertThat(washer.err()).isEmpty();
        assertThat(washer.out())
                .startsWith("Yes: on at ")
                .contains("\nStudy: mild steel Fe 360 washer 20 mm / 10 mm by 2 mm, slit, zinc 8 µm all over.\n");
        Session wrong = ask(
                "--switch",
                "p14-reference",
                "--material",
                "brass",
                "--tube",
                "10mm/12mm",
                "--length",
                "5",
                "--coating",
                "zink");
        assertThat(wrong).isEqualTo(new Session(2, "", """
                        --length: 5: no unit, needs a length such as 0.6 mm
                        --tube, inner: 12 mm must be smaller than outer, 10 mm: nothing is left between them
                        --coating, material: unknown material "zink", did you mean "zinc"?
                        --coating, thickness: missing, needs a length such as 0.6 mm
                        4 errors; nothing was run.
                        """));
        assertThat(ask(
                        "--switch",
                        "p14-reference",
                        "--material",
                        "brass",
                        "--cylinder",
                        "8mm",
                        "--slit",
                        "--shank",
                        "1mm"))
                .isEqualTo(usage("Only one shape can be given, not --cylinder and --head"));
        assertThat(ask(
                        "--switch",
                        "p14-reference",
                        "--material",
                        "brass",
                        "--cylinder",
                        "8mm",
                        "--length",
                        "1mm",
                        "--slit"))
                .isEqualTo(wrong("--slit: a slit stops the current round a hole, but this shape is solid; needs a"
                        + " washer or a tube"));
        assertThat(ask("--switch", "p14-reference", "--material", "brass", "--shank", "8mm/9mm"))
                .isEqualTo(new Session(2, "", """
                        --head, head diameter: missing, needs a length such as 0.6 mm
                        --head, head height: missing, needs a length such as 0.6 mm
                        2 errors; nothing was run.
                        """));
    }

    @Test
    void withoutASizeItIsTheStandardTarget() {
        Session s = ask("--switch", "p14-reference", "--material", "fe360");
        assertThat(s.out())
                .startsWith("Yes: on at 5.00 mm (factor 1.00); every unit is on up to 4.05 mm.\n")
                .contains("5.00 (trim)  5.25 (trim)   1.00");
    }

    @Test
    void besideTheAxis() {
        Session near = disc("--offset", "6mm");
        assertThat(near.err()).isEmpty();
        assertThat(near.out()).contains("\nStudy: mild steel Fe 360, 1 mm, disc 10 mm, 6 mm off the axis.\n");
        assertThat(near.out().replace("\n", " ")).contains(": its axis is 6 mm from that of the switch;");
        assertThat(onDistance(near)).isBetween(0.5, onDistance(disc()));
        Session far = disc("--offset", "80mm");
        assertThat(far.code()).isZero();
        assertThat(far.out()).contains("\npart                            -            -      -         - never on\n");
        assertThat(disc("--offset", "-6mm")).isEqualTo(wrong("--offset: -6mm is out of range, needs 0 mm to 1 m"));
        assertThat(disc("--offset", "6")).isEqualTo(wrong("--offset: 6: no unit, needs a length such as 0.6 mm"));
    }

    private Session disc(String... more) {
        List<String> line = new ArrayList<>(List.of(
                "--switch", "p14-reference", "--material", "fe360", "--thickness", "1mm", "--diameter", "10mm"));
        line.addAll(List.of(more));
        return ask(line.toArray(String[]::new));
    }

    private static double onDistance(Session s) {
        Matcher row = Pattern.compile("\npart +([0-9.]+) ").matcher(s.out());
        assertThat(row.find()).isTrue();
        return Double.parseDouble(row.group(1));
    }

    @Test
    void airIsNeverSeen() {
        Session s = ask("--switch", "p14-reference", "--material", "air", "--thickness", "5 mm", "--plate");
        assertThat(s.code()).isZero();
        assertThat(s.out())
                .contains("\npart                            -            -      -         - never on\n")
                .startsWith("No: never on, since only metal is detected.\n")
                .contains("\nAir, 5 mm, endless plate, never on: it neither conducts nor is magnetic, so the\n");
    }

    @Test
    void whatIsMissingOrTooMuch() throws IOException {
        assertThat(ask()).isEqualTo(usage("Missing required option: '--switch=SWITCH'"));
        assertThat(ask("--switch", "p14-reference"))
                .isEqualTo(usage("What is the part made of? Give --material, or --layer once for each layer"));
        assertThat(ask("--switch", "p14-reference", "--material", "zinc", "--plate", "--diameter", "8mm"))
                .isEqualTo(usage("Only one shape can be given, not --diameter and --plate"));
        assertThat(ask("--switch", "p14-reference", "--material", "zinc", "--layer", "zinc 1 mm"))
                .isEqualTo(usage("--layer stands in place of --material and --thickness"));
        assertThat(ask("--switch", "p14-reference", "--material", "zinc", "--diameter", "8mm"))
                .isEqualTo(wrong("--thickness: missing, needs a length such as 0.6 mm"));
        assertThat(Session.files(folder)).isEmpty();
    }

    @Test
    void oddInputIsToldUnderTheNameOfItsOption() throws IOException {
        assertThat(ask("--switch", "p14-referense", "--material", "alu", "--thickness", "-3mm", "--square", "NaN"))
                .isEqualTo(new Session(2, "", """
                        --switch: p14-referense: there is no switch of this name; did you mean p14-reference?
                        --square: NaN: not a finite number
                        --material: unknown material "alu", needs an id of shared/materials.yaml such as fe360
                        --thickness: -3mm is out of range, needs 1 nm to 1 m
                        4 errors; nothing was run.
                        """));
        assertThat(ask("--switch", "p14-reference", "--layer", "zink 8 um", "--layer", "fe360", "--into", "x"))
                .isEqualTo(new Session(2, "", """
                        --layer 1, material: unknown material "zink", did you mean "zinc"?
                        --layer 2, thickness: missing, needs a length such as 0.6 mm
                        2 errors; nothing was run.
                        """));
        assertThat(ask("--switch", "p14-reference", "--layer", " ")).isEqualTo(new Session(2, "", """
                        --layer 1, material: missing, needs a text
                        --layer 1, thickness: missing, needs a length such as 0.6 mm
                        2 errors; nothing was run.
                        """));
        assertThat(ask("--switch", "p14-reference", "--material", ""))
                .isEqualTo(wrong("--material: missing, needs a text"));
        assertThat(ask("--switch", "p14-reference", "--material", "zinc", "--thickness", "1,5mm")
                        .err())
                .startsWith("--thickness: 1,5mm: ");
        assertThat(Session.files(folder)).isEmpty();
    }
}
