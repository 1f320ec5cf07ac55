package eddyreach.engine.assure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.engine.core.Warning;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be told as a note when bands cannot be computed, and what must end the run. */
class AssessorFailuresTest {

    private static List<TargetResult> assessed(RuntimeException failure) {
        TargetResult plain =
                new TargetResult(null, null, null, 1, 0, java.util.Optional.empty(), null, null, List.of());
        return new Assessor("study", null, Assessor.Scope.WHOLE, List::of, null, (what, done, of) -> {
                    throw failure;
                })
                .assess(List.of(plain));
    }

    @Test
    void aFailedSelfCheckEndsTheRun() {
        assertThatThrownBy(() -> assessed(new SelfCheckException("would gain power")))
                .isInstanceOf(SelfCheckException.class)
                .hasMessage("would gain power");
    }

    @Test
    void aMistakeInTheProgramEndsTheRun() {
        assertThatThrownBy(() -> assessed(new ArithmeticException("/ by zero"))).hasMessage("/ by zero");
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aSwitchThatCannotDoItIsNoted(boolean trim) {
        Warning note = assessed(
                        trim ? new NoTrimException("no such trim") : new NoOscillationException("no such frequency"))
                .get(0)
                .warnings()
                .get(0);
        assertThat(note.kind()).isEqualTo(Warning.Kind.NOT_ASSESSED);
        assertThat(note.about()).isEqualTo("no such " + (trim ? "trim" : "frequency"));
    }
}
