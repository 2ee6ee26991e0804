package org.bondspan.report.document;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.regex.Pattern;
import org.bondspan.sheet.out.SvgFile;
import org.bondspan.sheet.table.Schedule;

/** A report as one HTML file that needs nothing else; all text is escaped. */
public final class HtmlDocument {
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}\\u0080-\\u009f\\p{Cf}\\p{Cs}&&[^\\n\\t]]");
    private static final String STYLE = """
            body{font:15px/1.45 "Liberation Sans",Arial,Helvetica,sans-serif;color:#111;background:#fff;max-width:62rem;\
            margin:2rem auto;padding:0 1rem}
            h1{font-size:1.6rem;margin:0}h2{font-size:1.15rem;border-bottom:1px solid #111;margin:2.2rem 0 .6rem}
            .sub{color:#555;margin:.2rem 0 1.2rem}.verdict{border-left:5px solid #0072b2;background:#f3f6f9;\
            padding:.7rem 1rem;font-size:1.1rem}
            .wide{overflow-x:auto}table{border-collapse:collapse;width:100%;margin:.6rem 0}
            caption{text-align:left;font-weight:bold;padding:.3rem 0}
            th,td{text-align:left;vertical-align:top;padding:.25rem .6rem .25rem 0;border-bottom:1px solid #ddd}
            th{color:#555;font-weight:normal;border-bottom:1px solid #111}
            .n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}td{overflow-wrap:break-word}
            .w{white-space:nowrap}td:first-child{white-space:nowrap;max-width:16rem;overflow:hidden;text-overflow:ellipsis}
            figure{margin:1rem 0}figure img{width:100%;border:1px solid #ccc}
            @media print{body{max-width:none;margin:0;font-size:11px}tr,figure{break-inside:avoid}}
            """;

    private final StringBuilder html = new StringBuilder();

    private HtmlDocument() {}

    /** The file, UTF-8. */
    public static byte[] of(Document document) {
        HtmlDocument file = new HtmlDocument();
        file.write(document);
        return file.html.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void write(Document document) {
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src data:; ")
                .append("style-src 'unsafe-inline'\">\n");
        element("title", "", document.title());
        html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
        element("h1", "", document.title());
        element("p", "sub", document.subtitle());
        document.parts().forEach(this::write);
        html.append("</main>\n</body>\n</html>\n");
    }

    private void write(Part part) {
        if (part instanceof Part.Heading heading) {
            element("h2", "", heading.text());
        } else if (part instanceof Part.Paragraph paragraph) {
            element("p", "", paragraph.text());
        } else if (part instanceof Part.Verdict verdict) {
            element("p", "verdict", verdict.text());
        } else if (part instanceof Part.Table table) {
            write(table.schedule());
        } else if (part instanceof Part.Figure figure) {
            String data = Base64.getEncoder().encodeToString(SvgFile.of(figure.drawing()));
            html.append("<figure><img alt=\"")
                    .append(escaped(figure.drawing().title()))
                    .append("\" src=\"data:image/svg+xml;base64,")
                    .append(data)
                    .append("\"></figure>\n");
        }
    }

    private void write(Schedule schedule) {
        List<String> headings = schedule.headings();
        html.append("<div class=\"wide\"><table>\n");
        if (!schedule.title().isEmpty()) {
            element("caption", "", schedule.title());
        }
        html.append("<thead><tr>");
        for (String heading : headings) {
            element("th", Schedule.isRight(heading) ? "n" : "", Schedule.words(heading));
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : schedule.rows()) {
            html.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                element("td", style(headings.get(i)), row.get(i));
            }
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table></div>\n");
    }

    /** Numbers stand to the right; narrow columns are not broken. */
    private static String style(String heading) {
        return Schedule.isRight(heading) ? "n" : Schedule.isWide(heading) ? "" : "w";
    }

    private void element(String name, String style, String words) {
        html.append('<').append(name);
        if (!style.isEmpty()) {
            html.append(" class=\"").append(style).append('"');
        }
        html.append('>').append(escaped(words)).append("</").append(name).append(">\n");
    }

    static String escaped(String words) {
        return UNPRINTABLE
                .matcher(words)
                .replaceAll("?")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
