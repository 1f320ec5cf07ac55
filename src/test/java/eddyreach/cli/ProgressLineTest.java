package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

    private long now;

    private final StringWriter out = new StringWriter();

    private String shown(ProgressLine line, int done) {
        out.getBuffer().setLength(0);
        line.at("map", done, 120);
        return out.toString().strip();
    }

    /** Cells of an earlier run took no time; before two seconds and three steps nothing is promised. */
    @Test
    void tellsTheTimeLeft() {
        ProgressLine line = new ProgressLine(new PrintWriter(out), "recess", 80, () -> now);
        assertThat(shown(line, 20)).endsWith("map 20/120");
        now = 1_000_000_000L;
        assertThat(shown(line, 25)).endsWith("map 25/120");
        now = 10_000_000_000L;
        assertThat(shown(line, 70)).endsWith("map 70/120, about 10 s left of this stage");
        now = 200_000_000_000L;
        assertThat(shown(line, 80)).endsWith("map 80/120, about 2 min left of this stage");
        assertThat(shown(line, 120)).endsWith("map 120/120");
    }

    @Test
    void isNeverWiderThanTheTerminal() {
        ProgressLine line = new ProgressLine(new PrintWriter(out), "a-study-with-a-long-name", 30, () -> now);
        for (int i = 0; i < 120; i++) {
            now += 1_000_000_000L;
            line.at("a stage", i, 120);
        }
        line.close();
        assertThat(out.toString().split("\r")).hasSizeGreaterThan(100).allMatch(l -> l.length() < 30);
    }

    @Test
    void plainLinesComeEveryTenSecondsWhereNothingCanBeOverwritten() {
        ProgressLine line = new ProgressLine(new PrintWriter(out), "recess", 0, () -> now);
        for (int i = 0; i < 25; i++) {
            line.at("map", i, 120);
            now += 1_000_000_000L;
        }
        line.close();
        assertThat(out.toString().replace(System.lineSeparator(), "\n"))
                .isEqualTo(
                        "recess: map 10/120, about 2 min left of this stage\nrecess: map 20/120, about 2 min left of this stage\n");
    }
}
