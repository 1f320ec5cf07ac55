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

    /** Where each target switches in the mount, and in free air. */
    static Csv mounted(ApproachResult result, InMount in) {
        Csv csv = new Csv(
                "target",
                "on_mm",
                "off_mm",
                "error_mm",
                "free_air_on_mm",
                "free_air_off_mm",
                "assured_on_mm",
                "assured_off_mm");
        for (TargetResult t : result.targets()) {
            InMount.Found f = in.of(t.target());
            csv.row(
                    t.target().id(),
                    f.distance().on() * Labels.MM,
                    f.distance().off() * Labels.MM,
                    f.distance().onError() * Labels.MM,
                    t.distance().on() * Labels.MM,
                    t.distance().off() * Labels.MM,
                    f.assurance().map(a -> a.assuredOn() * Labels.MM).orElse(Double.NaN),
                    f.assurance().map(a -> a.assuredOff() * Labels.MM).orElse(Double.NaN));
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
