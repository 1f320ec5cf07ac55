package eddyreach.cli;

import eddyreach.report.page.Csv;
import picocli.CommandLine.Option;

/** What the files of a result are like, for all commands that write some. */
final class FileOptions {

    @Option(
            names = "--csv-decimal",
            paramLabel = "MARK",
            description = "decimal mark of the tables: point, or comma with ; between the cells; point unless given")
    private Csv.Decimal decimal = Csv.Decimal.POINT;

    @Option(
            names = "--reference",
            paramLabel = "TEXT",
            description = "a line for the head of the pages, such as \"enquiry 4711\"")
    private String reference = "";

    Csv.Decimal decimal() {
        return decimal;
    }

    String reference() {
        return reference;
    }
}
