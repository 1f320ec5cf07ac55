package eddyreach.report;

import eddyreach.materials.FactorBand;
import eddyreach.study.StudyResult;
import eddyreach.study.SwitchDistance;
import eddyreach.study.TargetResult;
import eddyreach.study.Warning;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The answer for the terminal: a table, the reasons, the warnings and where the files are, in 80 columns. */
public final class TextReport {

    /** No line is longer, save that of a long path. */
    public static final int WIDTH = 80;

    private static final int[] COLUMNS = {-20, 12, 12, 6, 9, -16};
    private static final String CAUTION = "Computed estimate, to be confirmed on the machine. Not for safety functions"
            + " or explosive atmospheres without the standards for them and competent people.";

    private static final String BOLD = "\u001b[1m";
    private static final String RED = "\u001b[31m";
    private static final String YELLOW = "\u001b[33m";
    private static final String PLAIN = "\u001b[0m";

    private final StringBuilder out = new StringBuilder();
    private final boolean colour;

    private TextReport(boolean colour) {
        this.colour = colour;
    }

    /** How a target compares, and the colour that says so. */
    private record Verdict(String text, String colour) {}

    /**
     * The report, ending with a line break.
     *
     * @param folder where the files were written, if they were
     * @param colour whether to mark headings and verdicts with terminal colours
     */
    public static String of(StudyResult result, Optional<Path> folder, boolean colour) {
        TextReport report = new TextReport(colour);
        report.head(result);
        report.table(result);
        for (TargetResult target : result.targets()) {
            report.paragraph(target.target().label() + ", " + target.reason());
        }
        List<Warning> warnings = Stream.concat(
                        result.warnings().stream(), result.targets().stream().flatMap(t -> t.warnings().stream()))
                .distinct()
                .toList();
        if (!warnings.isEmpty()) {
            report.out.append('\n');
            assumedPermeability(warnings).ifPresent(report::paragraph);
            warnings.stream()
                    .filter(w -> w.kind() != Warning.Kind.PERMEABILITY_ASSUMED)
                    .forEach(w -> report.paragraph("Note, " + w.subject() + ": " + w.text() + "."));
        }
        report.out.append('\n');
        folder.ifPresent(f -> report.out.append("Files: ").append(f).append('\n'));
        report.paragraph(CAUTION);
        return report.out.toString();
    }

    /** One sentence for all materials whose permeability is assumed. */
    private static Optional<String> assumedPermeability(List<Warning> warnings) {
        List<Warning> assumed = warnings.stream()
                .filter(w -> w.kind() == Warning.Kind.PERMEABILITY_ASSUMED)
                .toList();
        if (assumed.isEmpty()) {
            return Optional.empty();
        }
        String all = assumed.stream()
                .map(w -> w.subject() + " " + Labels.significant(w.value(), 3))
                .collect(Collectors.joining(", "));
        return Optional.of(
                "Note, permeability assumed (" + all + "): it differs from piece to piece and falls with frequency.");
    }

    private void head(StudyResult result) {
        for (String line : wrap(result.name(), WIDTH)) {
            out.append(mark(line, BOLD)).append('\n');
        }
        StudyResult.Operating free = result.undamped();
        paragraph(result.model().name() + ": " + Labels.frequency(free.frequency()) + ", "
                + Labels.significant(free.inductance() * Labels.MICROHENRY, 4) + " µH, Q "
                + Labels.significant(free.quality(), 3) + ", trimmed to "
                + Labels.millimetres(result.model().effectiveDistance()) + " mm; output "
                + result.model().output().label() + ".");
        out.append('\n');
    }

    private void table(StudyResult result) {
        out.append(mark(row("target", "on, mm", "off, mm", "factor", "usual", "verdict"), BOLD))
                .append('\n');
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            Verdict verdict = verdict(t);
            List<String> name = wrap(t.target().id(), -COLUMNS[0]);
            String line = row(
                    name.get(0),
                    distance(d.on(), d.onError()),
                    distance(d.off(), d.offError()),
                    Double.isFinite(t.factor()) ? Labels.fixed(t.factor(), 2) : "-",
                    t.band().map(TextReport::band).orElse("-"),
                    verdict.text());
            int start = line.length() - verdict.text().length();
            out.append(line, 0, start)
                    .append(mark(verdict.text(), verdict.colour()))
                    .append('\n');
            name.stream().skip(1).forEach(n -> out.append(n).append('\n'));
        }
        out.append('\n');
    }

    private static String band(FactorBand band) {
        return Labels.fixed(band.low(), 2) + "-" + Labels.fixed(band.high(), 2);
    }

    /** Hundredths of a millimetre; the error is rounded up, so that it never promises too much. */
    private static String distance(double metres, double error) {
        if (!Double.isFinite(metres)) {
            return "-";
        }
        String value = Labels.millimetres(metres);
        double hundredths = Math.ceil(error * Labels.MM * 100 - 1e-9);
        return Double.isFinite(error) ? value + " ± " + Labels.fixed(hundredths / 100, 2) : value;
    }

    /** Against the usual band the numerical error counts in favour. */
    private static Verdict verdict(TargetResult t) {
        String outcome = t.distance().outcome().label();
        if (t.distance().outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Verdict(outcome, RED);
        }
        if (t.band().isEmpty()) {
            return new Verdict(outcome, "");
        }
        FactorBand band = t.band().get();
        if (t.factor() + t.factorError() < band.low()) {
            return new Verdict("below usual", YELLOW);
        }
        if (t.factor() - t.factorError() > band.high()) {
            return new Verdict("above usual", YELLOW);
        }
        return new Verdict("as usual", "");
    }

    private static String row(String... cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            int width = Math.abs(COLUMNS[i]);
            String pad = " ".repeat(Math.max(0, width - cells[i].length()));
            boolean last = i == cells.length - 1;
            line.append(i > 0 ? " " : "").append(COLUMNS[i] > 0 ? pad + cells[i] : last ? cells[i] : cells[i] + pad);
        }
        return line.toString();
    }

    private String mark(String text, String code) {
        return colour && !code.isEmpty() ? code + text + PLAIN : text;
    }

    private void paragraph(String text) {
        wrap(text, WIDTH).forEach(line -> out.append(line).append('\n'));
    }

    /** Lines no longer than the width; a word that is longer is broken. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
