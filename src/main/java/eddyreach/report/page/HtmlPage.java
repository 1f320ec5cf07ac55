package eddyreach.report.page;

import eddyreach.report.page.Page.Block;
import java.util.Base64;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Writes a page as HTML that needs no other file: pictures are embedded. It is well-formed XML too, and its looks stand at each element,
 * since programs for mail drop style sheets; only what matters in print is in one.
 */
public final class HtmlPage {

    private static final String INK = "#202428";
    private static final String MUTED = "#5f666d";
    private static final String RULE = "#dcdfe2";

    private static final String BODY = "margin:0;padding:24px 16px;background:#ffffff;color:" + INK
            + ";font-family:'Helvetica Neue',Arial,sans-serif;font-size:15px;line-height:1.5";
    private static final String MAIN = "max-width:900px;margin:0 auto";
    private static final String TITLE = "font-size:24px;line-height:1.25;margin:0 0 12px";
    private static final String SECTION =
            "font-size:18px;line-height:1.3;margin:30px 0 8px;padding-bottom:4px;border-bottom:1px solid " + RULE;
    private static final String PART = "font-size:15px;margin:20px 0 6px";
    private static final String TEXT = "margin:0 0 10px";
    private static final String ANSWER =
            "margin:0 0 14px;padding:12px 14px;background:#f1f4f6;border-left:4px solid #0f5c8a;font-size:16px";
    private static final String CAUTION =
            "margin:0 0 10px;padding:10px 14px;background:#fbf4e6;border-left:4px solid #c98a10;page-break-inside:avoid";
    private static final String LIST = "margin:0 0 10px;padding-left:22px";
    private static final String TABLE = "border-collapse:collapse;margin:0 0 12px;font-size:14px";
    private static final String LEFT = "padding:4px 12px 4px 4px;border-bottom:1px solid " + RULE + ";text-align:left";
    private static final String RIGHT =
            "padding:4px 12px 4px 4px;border-bottom:1px solid " + RULE + ";text-align:right";
    private static final String HEAD = ";font-size:13px;color:" + MUTED + ";vertical-align:bottom";
    private static final String BODY_CELL = ";vertical-align:top";
    private static final String UNBROKEN = ";white-space:nowrap";
    private static final String MARKED = "font-weight:bold;background:#fbe9e4";
    private static final String FIGURE = "margin:0 0 22px;page-break-inside:avoid";
    private static final String IMAGE = "display:block;width:100%;max-width:700px;height:auto";
    private static final String CAPTION = "margin:4px 0 0;font-size:13px;color:" + MUTED;

    private HtmlPage() {}

    /**
     * The page.
     *
     * @param png the bytes of a picture, by its name without ending
     */
    public static String of(Page page, Function<String, byte[]> png) {
        StringBuilder out = new StringBuilder("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <title>%s</title>
                <style>
                @media print { @page { size: A4; margin: 14mm; } body { padding: 0 !important; }
                p, li, td, th { font-size: 11.5px !important; line-height: 1.35 !important; }
                h2 { font-size: 15px !important; margin-top: 14px !important; } h2, h3 { page-break-after: avoid; }
                tr { page-break-inside: avoid; } .figure { display: inline-block; width: 49%%; vertical-align: top; } }
                @media (max-width: 600px) { table { display: block; overflow-x: auto; } }
                </style>
                </head>
                <body style="%s">
                <div style="%s">
                """.formatted(escape(page.title()), BODY, MAIN));
        out.append(element("h1", TITLE, escape(page.title())));
        page.blocks().forEach(b -> out.append(block(b, png)));
        return out.append("</div>\n</body>\n</html>\n").toString();
    }

    private static String block(Block block, Function<String, byte[]> png) {
        if (block instanceof Block.Heading h) {
            return element("h" + h.level(), h.level() == 2 ? SECTION : PART, escape(h.text()));
        }
        if (block instanceof Block.Paragraph p) {
            return element("p", TEXT, escape(p.text()));
        }
        if (block instanceof Block.Answer a) {
            return element("p", ANSWER, escape(a.text()));
        }
        if (block instanceof Block.Items i) {
            String items =
                    i.items().stream().map(t -> "<li>" + escape(t) + "</li>\n").collect(Collectors.joining());
            return element("ul", LIST, "\n" + items);
        }
        if (block instanceof Block.Table t) {
            return table(t);
        }
        if (block instanceof Block.Figure f) {
            String image = "<img alt=\"" + escape(f.title()) + "\" style=\"" + IMAGE + "\" src=\"data:image/png;base64,"
                    + Base64.getEncoder().encodeToString(png.apply(f.name())) + "\"/>\n";
            // a plain div: some programs for mail do not know figures
            return "<div class=\"figure\" style=\"" + FIGURE + "\">\n" + image
                    + element("p", CAPTION, escape(f.caption())) + "</div>\n";
        }
        return element("p", CAUTION, escape(((Block.Caution) block).text()));
    }

    private static String table(Block.Table t) {
        StringBuilder out = new StringBuilder("\n<tr>");
        for (int i = 0; i < t.heads().size(); i++) {
            out.append("<th style=\"").append(style(t, i)).append(HEAD).append("\">");
            out.append(escape(t.heads().get(i))).append("</th>");
        }
        out.append("</tr>\n");
        for (Page.Row row : t.rows()) {
            out.append(row.marked() ? "<tr style=\"" + MARKED + "\">" : "<tr>");
            List<String> cells = row.cells();
            for (int i = 0; i < cells.size(); i++) {
                out.append("<td style=\"").append(style(t, i)).append(BODY_CELL);
                out.append(t.numbers().contains(i) ? UNBROKEN : "").append("\">");
                out.append(escape(cells.get(i))).append("</td>");
            }
            out.append("</tr>\n");
        }
        return element("table", TABLE, out.toString());
    }

    private static String style(Block.Table t, int column) {
        return t.numbers().contains(column) ? RIGHT : LEFT;
    }

    private static String element(String name, String style, String content) {
        return "<" + name + " style=\"" + style + "\">" + content + "</" + name + ">\n";
    }

    /** Signs of markup as entities; control characters, which no XML may hold, as a space. */
    static String escape(String text) {
        return text.replaceAll("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\ufffe\\uffff]", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
