package eddyreach.report.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * The look shared by all pictures: white ground, thin grid, one typeface, series told apart by lightness, dash and
 * marker as well as by hue, so that they survive grey printing and colour blindness.
 */
public final class Theme {

    public static final Color INK = new Color(0x202428);
    public static final Color MUTED = new Color(0x5f666d);
    public static final Color GRID = new Color(0xdcdfe2);
    public static final Color BAND = new Color(0xd3d8dc);

    private static final List<Color> SERIES = List.of(
            new Color(0x16191c),
            new Color(0x0f5c8a),
            new Color(0xb4472b),
            new Color(0x1f9484),
            new Color(0x7d5aa8),
            new Color(0xc98a10),
            new Color(0x66a3cc),
            new Color(0xbf7f9d),
            new Color(0x7a7f85),
            new Color(0x2f3f9e),
            new Color(0x7c2a1c),
            new Color(0x4f7d22),
            new Color(0xb03fb0),
            new Color(0x6b5410),
            new Color(0x2fb7d6),
            new Color(0xe07a5f));

    /** Lines that can be told apart at a glance; more should go to several charts. */
    public static final int SERIES_COUNT = 8;

    /** Lines of which no two share colour and marker. */
    public static final int DISTINCT = SERIES.size();

    private static final float[][] DASHES = {
        null, {9, 3}, {3, 2.5f}, {11, 3, 2, 3}, {6, 2, 2, 2, 2, 2}, {14, 4}, {2, 2}, {7, 2.5f, 7, 2.5f, 2, 2.5f}
    };

    private static final List<Shape> MARKERS = List.of(
            polygon(
                    -1.3, -4, 1.3, -4, 1.3, -1.3, 4, -1.3, 4, 1.3, 1.3, 1.3, 1.3, 4, -1.3, 4, -1.3, 1.3, -4, 1.3, -4,
                    -1.3, -1.3, -1.3),
            new Rectangle2D.Double(-3, -3, 6, 6),
            polygon(0, -3.8, 3.6, 3, -3.6, 3),
            polygon(0, -4.2, 4.2, 0, 0, 4.2, -4.2, 0),
            polygon(0, 3.8, 3.6, -3, -3.6, -3),
            polygon(-4.4, -2, 4.4, -2, 4.4, 2, -4.4, 2),
            polygon(-3.8, 0, 3, -3.6, 3, 3.6),
            polygon(-2, -4.4, 2, -4.4, 2, 4.4, -2, 4.4));

    private Theme() {}

    public static Color series(int i) {
        return SERIES.get(i % SERIES.size());
    }

    public static Shape marker(int i) {
        Shape marker = MARKERS.get(i % MARKERS.size());
        return i / MARKERS.size() % 2 == 0 ? marker : hollow(marker);
    }

    /** The outline of a marker, for the second round. */
    private static Shape hollow(Shape marker) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.append(marker, false);
        path.append(AffineTransform.getScaleInstance(0.5, 0.5).createTransformedShape(marker), false);
        return path;
    }

    /** Dash pattern of a series. */
    public static Stroke stroke(int i) {
        float[] dash = DASHES[i % DASHES.length];
        return dash == null
                ? new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(1.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    public static Stroke line(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    public static Stroke dashed(double width, double on, double off) {
        float[] dash = {(float) on, (float) off};
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    public static Font text(double size) {
        return Fonts.get().regular().deriveFont((float) size);
    }

    public static Font medium(double size) {
        return Fonts.get().medium().deriveFont((float) size);
    }

    /** A chart around a plot, without a title: the page's heading is drawn by {@link Picture}. */
    public static JFreeChart chart(Plot plot, boolean legend) {
        JFreeChart chart = new JFreeChart(null, text(11), plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        if (legend) {
            LegendTitle title = new LegendTitle(plot);
            title.setItemFont(text(10.5));
            title.setItemPaint(INK);
            title.setFrame(BlockBorder.NONE);
            title.setBackgroundPaint(null);
            title.setPosition(RectangleEdge.BOTTOM);
            title.setItemLabelPadding(new RectangleInsets(1, 3, 1, 12));
            chart.addLegend(title);
        }
        return chart;
    }

    public static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        DecimalFormat format = new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT));
        axis.setStandardTickUnits(new NumberTickUnitSource(false, format));
        axis.setAutoRangeIncludesZero(false);
        style(axis);
        return axis;
    }

    /** A logarithmic axis with a label at each decade. */
    public static LogAxis decades(String label) {
        LogAxis axis = new LogAxis(label);
        axis.setBase(10);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        axis.setMinorTickMarksVisible(true);
        axis.setMinorTickCount(9);
        style(axis);
        return axis;
    }

    public static void style(Axis axis) {
        axis.setLabelFont(text(11));
        axis.setLabelPaint(INK);
        axis.setTickLabelFont(text(10.5));
        axis.setTickLabelPaint(INK);
        axis.setAxisLinePaint(MUTED);
        axis.setTickMarkPaint(MUTED);
    }

    public static void style(XYPlot plot) {
        ground(plot);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setDomainGridlineStroke(line(0.6));
        plot.setRangeGridlineStroke(line(0.6));
        plot.setDomainZeroBaselineVisible(false);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    public static void style(CategoryPlot plot) {
        ground(plot);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(GRID);
        plot.setRangeGridlineStroke(line(0.6));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    public static void ground(Plot plot) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setInsets(new RectangleInsets(4, 2, 2, 14));
        plot.setNoDataMessageFont(text(11));
    }

    /**
     * Lines with markers at some of their points, so that lines stay apart in grey.
     *
     * @param marked which points carry a marker, by series and point
     */
    public static XYLineAndShapeRenderer lines(boolean[][] marked) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean getItemShapeVisible(int series, int item) {
                return marked[series][item];
            }
        };
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new Line2D.Double(-19, 0, 19, 0));
        for (int i = 0; i < marked.length; i++) {
            renderer.setSeriesPaint(i, series(i));
            renderer.setSeriesStroke(i, stroke(i));
            renderer.setSeriesShape(i, marker(i));
        }
        return renderer;
    }

    private static Path2D polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
