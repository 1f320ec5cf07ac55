package eddyreach.model.yaml;

import java.util.List;
import java.util.stream.Collectors;

/** Input files hold errors; carries all of them, in the order of the file. The message has one line for each. */
public class InputException extends RuntimeException {

    private static final int MOST_SHOWN = 50;

    private final transient List<Problem> problems;

    /** With at least one problem. */
    public InputException(List<Problem> problems) {
        super(text(problems));
        this.problems = List.copyOf(problems);
    }

    /** With one problem that concerns a file as a whole. */
    public InputException(String file, String message) {
        this(List.of(new Problem(file, 0, 0, "", message)));
    }

    private static String text(List<Problem> problems) {
        String lines =
                problems.stream().limit(MOST_SHOWN).map(Problem::toString).collect(Collectors.joining("\n"));
        int more = problems.size() - MOST_SHOWN;
        return more > 0 ? lines + "\nand " + more + " more" : lines;
    }

    /** Everything that is wrong; never empty. */
    public List<Problem> problems() {
        return problems;
    }
}
