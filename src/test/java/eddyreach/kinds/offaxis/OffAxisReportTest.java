package eddyreach.kinds.offaxis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.report.draw.PictureWriter;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultFiles;
import eddyreach.study.StudyResult;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What zones and passes write is what was found. */
class OffAxisReportTest {

    private static final String TARGETS = """
            targets:
              - {name: ball, material: fe360, shape: sphere, diameter: 6 mm}
              - {name: tiny, material: copper, shape: sphere, diameter: 0.5 mm}
            """;

    @TempDir
    private Path folder;

    private StudyResult run(String keys) throws IOException {
        Path file = Files.writeString(
                folder.resolve("s.yaml"), "eddyreach: study\nname: beside\nswitch: m8-flush\n" + keys + TARGETS);
        return StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")))
                .run();
    }

    private JsonNode written(StudyResult result) throws IOException {
        ResultFiles.write(result, folder.resolve("out"), Set.of(PictureWriter.Format.PNG));
        return new JsonMapper().readTree(Files.readString(folder.resolve("out/result.json")));
    }

    private static void textFits(StudyResult result) {
        String text = TextReport.of(result, Optional.empty(), false);
        assertThat(text.lines()).allMatch(line -> line.length() <= TextReport.WIDTH);
        assertThat(text).contains("Not for safety functions").doesNotContain("NaN");
    }

    @Test
    void zone() throws IOException {
        ZoneResult result = (ZoneResult) run("kind: zone\noffsets: {to: 8 mm, points: 11}\n");
        textFits(result);
        JsonNode json = written(result);
        assertThat(json.get("study").get("kind").asString()).isEqualTo("zone");
        assertThat(json.get("targets").size()).isEqualTo(2);
        JsonNode ball = json.get("targets").get(0);
        assertThat(ball.get("target").get("id").asString()).isEqualTo("ball");
        for (String key : List.of("offset_m", "on_m", "on_error_m", "off_m", "off_error_m", "outcome")) {
            assertThat(ball.get(key).size()).as(key).isEqualTo(11);
        }
        assertThat(ball.get("offset_m").get(10).asDouble()).isCloseTo(8e-3, within(1e-12));
        assertThat(ball.get("on_m").get(0).asDouble())
                .isCloseTo(result.targets().get(0).distances().get(0).on(), within(1e-9));
        assertThat(ball.get("on_edge_at_contact_m").asDouble())
                .isCloseTo(result.targets().get(0).onEdge().offset(), within(1e-9));
        assertThat(ball.get("on_edge_at_contact_error_m").asDouble()).isBetween(1e-8, 1e-3);
        assertThat(json.get("targets").get(1).get("on_m").get(0).isNull()).isTrue();
        assertThat(json.get("targets").get(1).get("outcome").get(0).asString()).isEqualTo("never on");
        List<String> csv = Files.readAllLines(folder.resolve("out/zone.csv"));
        assertThat(csv).hasSize(23);
        assertThat(csv.get(0)).isEqualTo("target,offset_mm,on_mm,on_error_mm,off_mm,off_error_mm,outcome");
        assertThat(csv.get(12)).isEqualTo("tiny,0,,,,,never on");
        assertThat(Files.readString(folder.resolve("out/page.md")))
                .contains("## Distances beside the axis", "](zone.png)", "never on at any offset.");
    }

    @Test
    void pass() throws IOException {
        PassResult result = (PassResult) run("kind: pass\ndistance: 0.5 mm\noffsets: {to: 8 mm, points: 21}\n");
        textFits(result);
        JsonNode json = written(result);
        assertThat(json.get("distance_m").asDouble()).isEqualTo(0.5e-3);
        JsonNode changes = json.get("targets").get(0).get("changes");
        List<PassTarget.Change> found = result.targets().get(0).changes();
        assertThat(found).hasSize(2);
        assertThat(changes.size()).isEqualTo(2);
        assertThat(changes.get(0).get("turns_on").asBoolean()).isTrue();
        assertThat(changes.get(0).get("offset_m").asDouble())
                .isNegative()
                .isCloseTo(found.get(0).offset(), within(1e-9));
        assertThat(changes.get(1).get("turns_on").asBoolean()).isFalse();
        assertThat(changes.get(1).get("error_m").asDouble()).isPositive();
        assertThat(json.get("targets").get(1).get("changes").size()).isZero();
        List<String> csv = Files.readAllLines(folder.resolve("out/pass.csv"));
        assertThat(csv).hasSize(1 + 2 * 41);
        assertThat(csv.stream().filter(r -> r.startsWith("ball,") && r.endsWith(",1")))
                .as("it is on somewhere in the middle")
                .isNotEmpty()
                .allMatch(r -> Math.abs(Double.parseDouble(r.split(",")[1]))
                        <= 1e3 * found.get(1).offset());
        assertThat(Files.readString(folder.resolve("out/page.md")))
                .contains("## Where the output changes", "](pass.png)", "never on");
    }
}
