package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Csv;
import eddyreach.report.words.Labels;

/** Tables of targets that come nearer. */
public final class ApproachTables {

    private ApproachTables() {}

    /** Where each target switches: {@code target, on_mm, off_mm, factor, error_mm}; the error is that of on_mm. */
    public static Csv distances(ApproachResult result) {
        Csv csv = new Csv("target", "on_mm", "off_mm", "factor", "error_mm");
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            csv.row(t.target().id(), d.on() * Labels.MM, d.off() * Labels.MM, t.factor(), d.onError() * Labels.MM);
        }
        return csv;
    }

    /** What the coil sees: {@code target, distance_mm, frequency_hz, dr_ohm, dl_h, dz_error_ohm}. */
    static Csv impedance(ApproachResult result) {
        Csv csv = new Csv("target", "distance_mm", "frequency_hz", "dr_ohm", "dl_h", "dz_error_ohm");
        for (TargetResult t : result.targets()) {
            Curve c = t.curve();
            for (int i = 0; i < c.size(); i++) {
                csv.row(
                        t.target().id(),
                        c.distance(i) * Labels.MM,
                        c.frequency(i),
                        c.lossResistance(i),
                        c.inductanceChange(i),
                        c.impedanceError(i));
            }
        }
        return csv;
    }
}
