package eddyreach.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.kinds.approach.ApproachTables;
import eddyreach.kinds.approach.SampleResult;
import eddyreach.report.draw.PictureWriter.Format;
import eddyreach.report.page.Json;
import eddyreach.report.words.ReasonText;
import eddyreach.studies.HangingRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.JsonSchema;

class ResultFilesTest {

    private static final ApproachResult RESULT = SampleResult.of();

    private static final String LIST = ".eddyreach.result.sha256";

    @TempDir
    private Path folder;

    private static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> map = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path f : files.filter(f -> !f.equals(folder) && !f.equals(folder.resolve(LIST)))
                    .toList()) {
                map.put(
                        folder.relativize(f).toString(),
                        Files.isDirectory(f) ? "folder" : Arrays.hashCode(Files.readAllBytes(f)) + "");
            }
        }
        return map;
    }

    private static ApproachResult withTargets(List<TargetResult> targets) {
        ApproachResult r = RESULT;
        return new ApproachResult(r.header(), r.trimmed(), targets, r.fields().subList(0, 1), List.of(), r.warnings());
    }

    private static TargetResult broken(TargetResult t) {
        Curve c = t.curve();
        Curve torn = new Curve(
                c.distance(),
                new double[1],
                c.inductanceChange(),
                c.impedanceError(),
                c.resistance(),
                c.inductance(),
                c.frequency(),
                c.conductance(),
                c.amplitude());
        return new TargetResult(
                t.target(),
                torn,
                t.distance(),
                t.factor(),
                t.factorError(),
                t.band(),
                t.budget(),
                t.reason(),
                List.of());
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> parse(String json) {
        LoadSettings settings =
                LoadSettings.builder().setSchema(new JsonSchema()).build();
        return (Map<String, Object>) new Load(settings).loadFromString(json);
    }

    /** A plain reader of RFC 4180, so that the writer is checked by something else than itself. */
    private static List<List<String>> parseCsv(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c != '"') {
                    cell.append(c);
                } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append(c);
                    i++;
                } else {
                    quoted = false;
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == ',' || c == '\n') {
                row.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        return rows;
    }

    @Test
    void writesEverythingIntoANewFolder() throws IOException {
        List<Path> files = ResultFiles.write(RESULT, folder.resolve("a/b"), EnumSet.allOf(Format.class));
        assertThat(files).hasSize(2 * 11 + 7).allMatch(Files::isRegularFile);
        assertThat(files.get(files.size() - 1)).hasFileName("result.json");
        assertThat(content(folder.resolve("a/b"))).hasSize(files.size());
    }

    @Test
    void jsonCanBeReadBack() throws IOException {
        ResultFiles.write(RESULT, folder, Set.of());
        Map<String, Object> json = parse(Files.readString(folder.resolve("result.json")));
        assertThat(json.get("files"))
                .isEqualTo(List.of(
                        "distances.csv",
                        "impedance.csv",
                        "page.html",
                        "page.md",
                        "record.html",
                        "record.md",
                        "result.json"));
        List<?> targets = (List<?>) json.get("targets");
        assertThat(targets).hasSameSizeAs(RESULT.targets());
        for (int i = 0; i < targets.size(); i++) {
            TargetResult expected = RESULT.targets().get(i);
            Map<?, ?> target = (Map<?, ?>) targets.get(i);
            assertThat(target.get("id")).isEqualTo(expected.target().id());
            Double on = expected.distance().on();
            assertThat(target.get("on_m")).isEqualTo(on.isNaN() ? null : on);
            assertThat(target.get("reason")).isEqualTo(ReasonText.of(expected.reason()));
            Map<?, ?> curve = (Map<?, ?>) target.get("curve");
            List<?> change = (List<?>) curve.get("loss_resistance_change_ohm");
            assertThat(change.toArray())
                    .isEqualTo(Arrays.stream(expected.curve().lossResistance())
                            .boxed()
                            .toArray());
        }
        Map<?, ?> materials = (Map<?, ?>) json.get("materials");
        assertThat(materials.keySet().stream().map(Object::toString))
                .containsExactlyInAnyOrder("copper", "ferrite", "brass", "steel", "stainless", "aluminium");
        assertThat(((Map<?, ?>) materials.get("steel")).get("source")).isEqualTo(SampleResult.STEEL.source());
        Map<?, ?> oscillator = (Map<?, ?>) ((Map<?, ?>) json.get("switch")).get("oscillator");
        assertThat(oscillator.get("current_a")).isEqualTo(150e-6);
        assertThat(oscillator.get("supply_v")).isEqualTo(5.0);
        assertThat(oscillator.get("small_signal_conductance_s")).isNull();
        assertThat(((Map<?, ?>) json.get("losses_without_target")).get("distance_m"))
                .isNull();
    }

    @Test
    void jsonEscapesWhatMustBeEscaped() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("a \"b\" \\ /", "line\nbreak\ttab\r\u0001 µΩ \ud83d\ude00");
        map.put("n", List.of(1, -2.5e-9, 1e300, Double.MIN_VALUE));
        map.put("no", Double.NaN);
        map.put("empty", List.of());
        map.put("none", Map.of());
        map.put("deep", List.of(List.of(true), Map.of("x", false)));
        String text = Json.write(map);
        Map<String, Object> back = parse(text);
        map.put("no", null);
        assertThat(back).isEqualTo(map);
        assertThat(Json.write(Map.of("lone", "\ud83d"))).contains("\\ud83d");
    }

    @Test
    void csvCanBeReadBack() throws IOException {
        List<TargetResult> targets = new ArrayList<>(RESULT.targets());
        ResultFiles.write(withTargets(targets), folder, Set.of());
        List<List<String>> rows = parseCsv(Files.readString(folder.resolve("distances.csv")));
        assertThat(rows).hasSize(1 + targets.size());
        assertThat(rows.get(0)).containsExactly("target", "on_mm", "off_mm", "factor", "error_mm");
        for (int i = 0; i < targets.size(); i++) {
            List<String> row = rows.get(i + 1);
            double on = targets.get(i).distance().on();
            if (Double.isNaN(on)) {
                assertThat(row).containsExactly("washer", "", "", "", "");
            } else {
                assertThat(Double.parseDouble(row.get(1)) * 1e-3).isCloseTo(on, Offset.offset(1e-8 * on));
            }
        }
        List<List<String>> curve = parseCsv(Files.readString(folder.resolve("impedance.csv")));
        assertThat(curve).hasSize(1 + 61 * targets.size()).allMatch(r -> r.size() == 6);
        double[] change = targets.get(0).curve().inductanceChange();
        assertThat(Double.parseDouble(curve.get(61).get(4)))
                .isCloseTo(change[60], Offset.offset(1e-8 * Math.abs(change[60])));
        assertThat(Files.readString(folder.resolve("distances.csv"))).endsWith("\r\n");
    }

    @Test
    void csvQuotesSeparatorsAndQuotes() throws IOException {
        TargetResult t = RESULT.targets().get(0);
        String id = "a, \"b\"\nc";
        TargetResult odd = new TargetResult(
                new eddyreach.model.values.Target(id, "odd", t.target().body()),
                t.curve(),
                t.distance(),
                t.factor(),
                t.factorError(),
                t.band(),
                t.budget(),
                t.reason(),
                List.of());
        List<List<String>> rows =
                parseCsv(ApproachTables.distances(withTargets(List.of(odd))).text());
        assertThat(rows.get(1)).hasSize(5).startsWith(id);
    }

    @Test
    void failedRunLeavesTheEarlierResult() throws IOException {
        ResultFiles.write(RESULT, folder, EnumSet.of(Format.SVG));
        Map<String, String> before = content(folder);
        ApproachResult torn = withTargets(List.of(broken(RESULT.targets().get(0))));
        assertThatThrownBy(() -> ResultFiles.write(torn, folder, EnumSet.of(Format.SVG)))
                .isInstanceOf(RuntimeException.class);
        assertThat(content(folder)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "distances.csv",
                "impedance.csv",
                "page.html",
                "page.md",
                "record.html",
                "record.md",
                "result.json"
            })
    void blockedNameIsAnIoErrorAndChangesNothing(String name) throws IOException {
        ResultFiles.write(RESULT, folder, Set.of());
        Files.delete(folder.resolve(name));
        Files.createDirectories(folder.resolve(name).resolve("blocked"));
        Map<String, String> before = content(folder);
        assertThatThrownBy(() -> ResultFiles.write(withTargets(RESULT.targets().subList(0, 1)), folder, Set.of()))
                .isInstanceOf(IOException.class)
                .hasMessageEndingWith(name + ": a folder of this name is in the way");
        assertThat(content(folder)).isEqualTo(before);
    }

    /** Killed after some renames, a run has its new files in the list beside the earlier ones: all go. */
    @Test
    void aRunKilledBetweenTwoRenamesLeavesNothingThatStays() throws IOException {
        ResultFiles.write(RESULT, folder, Set.of());
        Map<String, String> before = content(folder);
        String list = Files.readString(folder.resolve(LIST));
        ResultFiles.write(RESULT, folder, EnumSet.of(Format.SVG));
        String later = Files.readString(folder.resolve(LIST));
        Files.writeString(folder.resolve(LIST), list + later.substring(later.indexOf('\n') + 1));
        Path hidden = Files.createDirectory(folder.resolve(".eddyreach-1"));
        Files.writeString(hidden.resolve("lock"), "Eddyreach prepares files here: .eddyreach-1\n");
        Files.writeString(hidden.resolve("plane.svg"), "cut off");
        ResultFiles.write(RESULT, folder, Set.of());
        assertThat(content(folder)).isEqualTo(before);
    }

    /** A folder that came by post: its document, and even its list, names files that a run has not written. */
    @Test
    void noFileLeadsARunToDeleteAnother() throws IOException {
        ResultFiles.write(RESULT, folder, Set.of());
        String document = Files.readString(folder.resolve("result.json"));
        List<String> names = List.of("measurements.csv", "photo.png", "README.md", "sub.png", "link.png");
        for (String name : names.subList(0, 3)) {
            Files.writeString(folder.resolve(name), "mine");
        }
        Files.createDirectory(folder.resolve("sub.png"));
        Files.createSymbolicLink(folder.resolve("link.png"), folder.resolve("photo.png"));
        Path list = folder.resolve(LIST);
        StringBuilder evil = new StringBuilder(Files.readString(list));
        for (String name : names) {
            evil.append("0".repeat(64)).append("  ").append(name).append('\n');
        }
        evil.append("0".repeat(64)).append("  ../outside.csv\n");
        Files.writeString(list, evil);
        Map<String, String> before = content(folder);
        ResultFiles.write(withTargets(RESULT.targets()), folder, Set.of());
        assertThat(content(folder).keySet()).isEqualTo(before.keySet());
        assertThat(folder.resolve("photo.png")).hasContent("mine");
        assertThat(document).contains("distances.csv");
    }

    @Test
    void aChangedOrForeignFileInTheWayIsLeftAlone() throws IOException {
        Path precious = Files.writeString(folder.resolve("precious.txt"), "mine");
        Path inner = Files.createDirectory(folder.resolve("inner"));
        ResultFiles.write(RESULT, inner, Set.of());
        for (String name : List.of("distances.csv", "result.json", LIST)) {
            Path file = inner.resolve(name);
            byte[] own = Files.readAllBytes(file);
            Files.writeString(file, "changed by hand");
            refused(inner, name);
            assertThat(file).hasContent("changed by hand");
            Files.delete(file);
            Files.createSymbolicLink(file, precious);
            refused(inner, name);
            Files.delete(file);
            Files.write(file, own);
        }
        assertThat(precious).hasContent("mine");
        ResultFiles.write(RESULT, inner, Set.of());
    }

    private static void refused(Path folder, String name) throws IOException {
        Map<String, String> before = content(folder);
        assertThatThrownBy(() -> ResultFiles.write(RESULT, folder, Set.of()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(name + ": a file of this name is in the way, and not as a run has left it");
        assertThat(content(folder)).isEqualTo(before);
    }

    @Test
    void hiddenFoldersAndLinksThatNoRunHasMadeStay() throws IOException {
        Path outside = Files.createDirectory(folder.resolve("outside"));
        Files.writeString(outside.resolve("lock"), "Eddyreach prepares files here: .eddyreach-evil\n");
        Files.writeString(outside.resolve("photo.png"), "mine");
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.createSymbolicLink(inner.resolve(".eddyreach-evil"), outside);
        Path notes = Files.createDirectory(inner.resolve(".eddyreach-notes"));
        Files.writeString(notes.resolve("notes.md"), "mine");
        Path empty = Files.createDirectory(inner.resolve(".eddyreach-empty"));
        ResultFiles.write(RESULT, inner, Set.of());
        assertThat(outside.resolve("photo.png")).hasContent("mine");
        assertThat(notes.resolve("notes.md")).hasContent("mine");
        assertThat(empty).isDirectory();
    }

    @Test
    void ownObsoleteFilesGoAndForeignFilesStay() throws IOException {
        ResultFiles.write(RESULT, folder, EnumSet.of(Format.SVG));
        Files.writeString(folder.resolve("field-notes.svg"), "mine");
        assertThat(folder.resolve("field-foil.svg")).exists();
        ResultFiles.write(withTargets(RESULT.targets()), folder, EnumSet.of(Format.SVG));
        assertThat(folder.resolve("field-foil.svg")).doesNotExist();
        assertThat(folder.resolve("field-without-target.svg")).exists();
        assertThat(folder.resolve("field-notes.svg")).hasContent("mine");
    }

    @Test
    void killedRunLeavesTheEarlierResultAndItsLeftoversGoWithTheNext() throws Exception {
        ResultFiles.write(RESULT, folder, Set.of());
        Map<String, String> before = content(folder);
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        HangingRun.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        assertThat(child.inputReader().readLine()).isEqualTo("written");
        Map<String, String> during = content(folder);
        assertThat(during).hasSizeGreaterThan(before.size());
        ResultFiles.write(RESULT, folder, Set.of());
        assertThat(content(folder)).as("a live run is left alone").isEqualTo(during);
        child.destroyForcibly();
        assertThat(child.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(content(folder)).as("killed").isEqualTo(during).containsAllEntriesOf(before);
        ResultFiles.write(RESULT, folder, Set.of());
        assertThat(content(folder)).isEqualTo(before);
    }
}
