package eddyreach.kinds.background;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.TexturePaint;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts over the distance of a background. */
final class BackgroundCharts {

    private static final String BACKGROUND = "distance of the background from the active face, mm";
    private static final String SWITCHING = "on and off distance of the target, mm";

    /** Room over the curves for the labels of the zones, over the height. */
    private static final double LABEL_ROOM = 0.1;

    /** The latched band is hatched, as on maps. */
    private static final Paint HATCH = hatch();

    private BackgroundCharts() {}

    private static Paint hatch() {
        int scale = PictureWriter.SCALE;
        int n = 8 * scale;
        BufferedImage tile = new BufferedImage(n, n, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = tile.createGraphics();
        Picture.quality(g);
        g.setColor(new Color(0xf4f2f0));
        g.fillRect(0, 0, n, n);
        g.setColor(new Color(0xd08a78));
        g.setStroke(Theme.line(scale));
        for (int shift = -n; shift <= n; shift += n) {
            g.draw(new Line2D.Double(shift - 1.0, n + 1.0, shift + n + 1.0, -1));
        }
        g.dispose();
        return new TexturePaint(tile, new Rectangle2D.Double(0, 0, 8, 8));
    }

    /** On and off distance of each target, with what it is without a background. */
    static JFreeChart distances(BackgroundResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (BackgroundResult.Series s : result.targets()) {
            XYSeries on = new XYSeries(data.getSeriesCount(), false);
            on.setDescription(
                    s.target().label() + " on, " + Labels.millimetres(s.free().on()) + " mm without background");
            XYSeries off = new XYSeries(data.getSeriesCount() + 1, false);
            off.setDescription(s.target().label() + " off");
            for (int i = 0; i < result.distance().length; i++) {
                SwitchDistance d = s.behind().get(i);
                boolean switches = d.outcome() == SwitchDistance.Outcome.SWITCHES;
                double at = result.distance()[i] * Labels.MM;
                on.add(at, switches ? d.on() * Labels.MM : Double.NaN, false);
                off.add(at, switches ? d.off() * Labels.MM : Double.NaN, false);
            }
            data.addSeries(on);
            data.addSeries(off);
        }
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(BACKGROUND), Theme.axis(SWITCHING));
        NumberAxis range = (NumberAxis) plot.getRangeAxis();
        range.setAutoRangeIncludesZero(false);
        zones(plot, result);
        for (BackgroundResult.Series s : result.targets()) {
            ValueMarker free = new ValueMarker(s.free().on() * Labels.MM, Theme.MUTED, Theme.dashed(0.9, 4, 3));
            plot.addRangeMarker(free, Layer.BACKGROUND);
        }
        return Theme.chart(plot, true);
    }

    /** Amplitude with the background alone, and the thresholds. */
    static JFreeChart amplitude(BackgroundResult result) {
        XYSeries series = new XYSeries(0, false);
        series.setDescription("background alone");
        for (int i = 0; i < result.distance().length; i++) {
            series.add(result.distance()[i] * Labels.MM, result.amplitude()[i], false);
        }
        XYPlot plot = DistanceCharts.lines(
                new XYSeriesCollection(series), Theme.axis(BACKGROUND), Theme.axis(Labels.AMPLITUDE));
        zones(plot, result);
        DistanceCharts.thresholds(plot, result.trimmed());
        return Theme.chart(plot, false);
    }

    /** Where the background alone holds the output on, and the trade's free zone. */
    private static void zones(XYPlot plot, BackgroundResult result) {
        double[] d = result.distance();
        plot.getRangeAxis().setUpperMargin(LABEL_ROOM);
        plot.getDomainAxis().setRange(d[0] * Labels.MM, d[d.length - 1] * Labels.MM);
        if (result.alone().outcome() == SwitchDistance.Outcome.SWITCHES) {
            IntervalMarker latched = new IntervalMarker(0, result.alone().off() * Labels.MM, HATCH);
            latched.setAlpha(1);
            latched.setLabel("latched by the background");
            label(latched, RectangleAnchor.TOP_LEFT, TextAnchor.TOP_LEFT);
            plot.addDomainMarker(latched, Layer.BACKGROUND);
        }
        ValueMarker usual = new ValueMarker(result.usualFront() * Labels.MM, Theme.MUTED, Theme.dashed(1.1, 5, 3));
        usual.setAlpha(1);
        usual.setLabel("usual rule: 3 sn");
        label(usual, RectangleAnchor.TOP_RIGHT, TextAnchor.TOP_LEFT);
        plot.addDomainMarker(usual, Layer.BACKGROUND);
    }

    private static void label(Marker marker, RectangleAnchor at, TextAnchor anchor) {
        marker.setLabelFont(Theme.text(10));
        marker.setLabelPaint(Theme.INK);
        marker.setLabelBackgroundColor(new Color(255, 255, 255, 200));
        marker.setLabelAnchor(at);
        marker.setLabelTextAnchor(anchor);
    }
}
