package eddyreach.study;

import eddyreach.report.words.Program;
import java.time.LocalDate;

/**
 * What tells one page from another.
 *
 * @param date the day on which it was written
 * @param program name and version of the program
 * @param reference what the asker calls it, such as "enquiry 4711"; empty if nothing
 */
public record Stamp(LocalDate date, String program, String reference) {

    /** Today's, by this program. */
    public static Stamp today(String reference) {
        return new Stamp(LocalDate.now(), Program.title(), reference.strip());
    }

    /** One line for the head of a page. */
    String line() {
        return (reference.isEmpty() ? "" : "Reference: " + reference + ". ") + date + ", " + program + ".";
    }
}
