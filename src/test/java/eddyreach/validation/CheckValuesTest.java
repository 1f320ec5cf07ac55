package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.proof.Check;
import eddyreach.proof.CheckResult;
import eddyreach.proof.Proof;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every check value of the command prove, each with its source and the reason for its allowance beside it in the list. */
class CheckValuesTest {

    static List<Check> checks() {
        return new Proof().checks();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void isMet(Check check) {
        CheckResult result = check.run();
        assertThat(result.passed())
                .as(
                        "%s: expected %s, computed %s, off by %s where %s is allowed",
                        check,
                        check.expected().text(),
                        result.computed(),
                        result.deviation(),
                        check.expected().allowed())
                .isTrue();
    }
}
