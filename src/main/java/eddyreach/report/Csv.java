package eddyreach.report;

import eddyreach.study.Curve;
import eddyreach.study.StudyResult;
import eddyreach.study.SwitchDistance;
import eddyreach.study.TargetResult;

/** Tables as comma-separated values (RFC 4180): numbers with a point, missing ones empty. */
final class Csv {

    private static final int DIGITS = 9;

    private final StringBuilder text = new StringBuilder();

    private Csv(String... header) {
        row((Object[]) header);
    }

    /** Where each target switches: {@code target, on_mm, off_mm, factor, error_mm}; the error is that of on_mm. */
    static String distances(StudyResult result) {
        Csv csv = new Csv("target", "on_mm", "off_mm", "factor", "error_mm");
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            csv.row(t.target().id(), d.on() * Labels.MM, d.off() * Labels.MM, t.factor(), d.onError() * Labels.MM);
        }
        return csv.text.toString();
    }

    /** What the coil sees: {@code target, distance_mm, frequency_hz, dr_ohm, dl_h, dz_error_ohm}. */
    static String impedance(StudyResult result) {
        Csv csv = new Csv("target", "distance_mm", "frequency_hz", "dr_ohm", "dl_h", "dz_error_ohm");
        for (TargetResult t : result.targets()) {
            Curve c = t.curve();
            for (int i = 0; i < c.distance().length; i++) {
                csv.row(
                        t.target().id(),
                        c.distance()[i] * Labels.MM,
                        c.frequency()[i],
                        c.lossResistance()[i],
                        c.inductanceChange()[i],
                        c.impedanceError()[i]);
            }
        }
        return csv.text.toString();
    }

    private void row(Object... fields) {
        for (int i = 0; i < fields.length; i++) {
            text.append(i > 0 ? "," : "");
            text.append(fields[i] instanceof Double d ? number(d) : quoted(fields[i].toString()));
        }
        text.append("\r\n");
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Labels.significant(value, DIGITS) : "";
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
