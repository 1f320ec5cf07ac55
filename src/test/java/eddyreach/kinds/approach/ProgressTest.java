package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.read.Library;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;

/** A bar that stands still looks like a program that hangs. */
class ProgressTest {

    /** Field problem, distances and variants of a part beside the axis may take seconds each. */
    @Test
    void movesWithEachDistanceAndEachVariant() {
        Map<String, Integer> moves = new ConcurrentHashMap<>();
        ApproachInput study = PartQuestion.read(
                "question",
                "p14-reference",
                Optional.empty(),
                Map.of("material", "aluminium", "thickness", "1 mm"),
                List.of(),
                new Library(Path.of("")));
        ApproachRunner.run(study.withoutFieldPictures(), (stage, done, total) -> {
            assertThat(done).isBetween(0, total);
            moves.merge(stage, 1, Integer::sum);
        });
        int perTarget = 2 + 2 * study.points();
        assertThat(moves.get("distances")).isEqualTo(1 + 2 * perTarget);
        assertThat(moves.get("bands")).isGreaterThan(20);
        assertThat(moves.get("variants")).isGreaterThan(10);
    }
}
