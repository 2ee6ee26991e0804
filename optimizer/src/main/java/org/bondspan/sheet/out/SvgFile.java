package org.bondspan.sheet.out;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.bondspan.sheet.plan.Typeface;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as SVG 1.1, with its text as text. */
public final class SvgFile {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private SvgFile() {}

    /** The file, UTF-8. */
    public static byte[] of(Drawing drawing) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(3);
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height())));
        drawing.paint(g);
        Element root = g.getRoot();
        root.setAttributeNS(null, "width", String.format(Locale.ROOT, "%.2fpt", drawing.width()));
        root.setAttributeNS(null, "height", String.format(Locale.ROOT, "%.2fpt", drawing.height()));
        root.setAttributeNS(
                null, "viewBox", String.format(Locale.ROOT, "0 0 %.2f %.2f", drawing.width(), drawing.height()));
        Element title = document.createElementNS(SVG, "title");
        title.setAttributeNS(null, "id", "title");
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-labelledby", "title");
        title.setTextContent(Typeface.printable(drawing.title()));
        root.insertBefore(title, root.getFirstChild());
        return text(g, root).getBytes(StandardCharsets.UTF_8);
    }

    private static String text(SVGGraphics2D g, Element root) {
        StringWriter out = new StringWriter();
        try {
            g.stream(root, out, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // Faces of the same widths, for those who have no Liberation Sans; no document type, which readers would fetch.
        return out.toString()
                .replace("'" + Typeface.FAMILY + "'", "'" + Typeface.FAMILY + "', Arial, Helvetica, sans-serif")
                .replace("\r\n", "\n")
                .replaceFirst("<!DOCTYPE[^>]*>\\s*", "");
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }
}
