package eddyreach.report.draw;

import eddyreach.report.words.Labels;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;

/** A horizontal logarithmic axis of lengths in m, a label with its unit at each decade. */
public final class LengthAxis extends LogAxis {

    private static final long serialVersionUID = 1L;

    public LengthAxis(String label) {
        super(label);
        setBase(10);
        setTickUnit(new NumberTickUnit(1));
        setMinorTickMarksVisible(true);
        setMinorTickCount(9);
        Theme.style(this);
    }

    /** The same ticks with plain labels, which stand on one line; the original ones are centred by their ink. */
    @Override
    public List<ValueTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<ValueTick> ticks = new ArrayList<>();
        for (Object o : super.refreshTicks(g, state, area, edge)) {
            ValueTick tick = (ValueTick) o;
            String text = tick.getTickType() == TickType.MAJOR ? Labels.length(tick.getValue()) : "";
            ticks.add(new NumberTick(
                    tick.getTickType(),
                    tick.getValue(),
                    text,
                    tick.getTextAnchor(),
                    tick.getRotationAnchor(),
                    tick.getAngle()));
        }
        return ticks;
    }
}
