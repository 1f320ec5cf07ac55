package eddyreach.study;

import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Warning;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Cautions;
import eddyreach.report.words.Labels;
import eddyreach.report.words.SwitchText;
import eddyreach.report.words.Terms;
import eddyreach.report.words.WarningText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The text for the terminal in 80 columns: the answer, the table, the reasons, the warnings, the inputs and where the files are. */
public final class TextReport {

    /** No line is longer, save that of a long path. */
    public static final int WIDTH = TextPage.WIDTH;

    private TextReport() {}

    /**
     * The report, ending with a line break.
     *
     * @param folder where the files were written, if they were
     * @param colour whether to mark headings and verdicts with terminal colours
     */
    public static String of(StudyResult result, Optional<Path> folder, boolean colour) {
        TextPage page = new TextPage(colour);
        for (Warning w : result.switchWarnings()) {
            TextPage.wrap("Warning, " + WarningText.withSubject(w) + ".", WIDTH)
                    .forEach(line -> page.line(page.mark(line, TextPage.RED)));
            page.gap();
        }
        page.heading(result.presentation().answer());
        page.gap();
        result.presentation().write(page);
        List<Warning> warnings = result.allWarnings();
        if (!warnings.isEmpty()) {
            page.gap();
            WarningText.sentences(warnings).forEach(w -> page.paragraph("Note, " + w + "."));
        }
        page.gap();
        result.presentation().inputs().forEach(page::paragraph);
        inputs(result, page);
        folder.ifPresent(f -> page.line("Files: " + f));
        folder.ifPresent(f -> page.line("To send on: page.html (two pages). Full record: record.html."));
        page.paragraph(Cautions.SHORT);
        return page.text();
    }

    private static void inputs(StudyResult result, TextPage page) {
        page.paragraph("Study: " + result.name() + ".");
        for (StudyResult r : result.members()) {
            Operating free = r.undamped();
            page.paragraph("Switch: " + SwitchText.name(r.model()) + ", trimmed to "
                    + Labels.millimetres(r.model().effectiveDistance()) + " mm, output "
                    + Terms.of(r.model().output()) + "; " + Labels.frequency(free.frequency()) + ", "
                    + Labels.significant(free.inductance() * Labels.MICROHENRY, 4) + " µH, Q "
                    + Labels.significant(free.quality(), 3) + " without a target.");
        }
    }
}
