package eddyreach.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** Every number that decides accuracy stands in a named place and on one page. */
class AccuracyReferenceTest {

    /** To write it anew: {@code mvn -q test -Dtest=AccuracyReferenceTest -Drewrite=true}. */
    @Test
    void pageFollowsTheSources() throws IOException {
        String text = AccuracyReference.text();
        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(AccuracyReference.PAGE, text);
        }
        assertThat(Files.readString(AccuracyReference.PAGE)).isEqualTo(text);
    }

    @Test
    void eachNumberIsExplained() {
        assertThat(AccuracyReference.PAGE)
                .content()
                .contains("| `SAFETY` | 2.5 | Stated error bar over the difference of two steps of the ladder. |")
                .doesNotContain("|  |");
    }

    /** A new number either belongs to a policy class, or the test says what else it is. */
    @Test
    void noNumberStandsElsewhere() throws IOException {
        assertThat(AccuracyReference.strays()).isEmpty();
        assertThat(AccuracyReference.stale()).isEmpty();
    }
}
