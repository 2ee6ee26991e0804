package org.bondspan.report.document;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.sheet.table.Band;
import org.bondspan.sheet.table.Block;
import org.bondspan.sheet.table.Flow;
import org.bondspan.sheet.table.Painted;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.sheet.table.SchedulePainter;

/** A report as PDF, letter size, standing. */
public final class PdfDocument {
    private static final double WIDTH = 612;
    private static final double HEIGHT = 792;
    private static final double MARGIN = 54;
    private static final double TEXT = 8.5;
    private static final int MOST_TITLE_LINES = 6;

    /** A figure may take a page of its own, under its heading. */
    private static final double TALLEST_FIGURE = HEIGHT - 2 * MARGIN - 3 * TEXT;

    private final Document document;
    private final SchedulePainter painter = new SchedulePainter(WIDTH - 2 * MARGIN, TEXT);

    private PdfDocument(Document document) {
        this.document = document;
    }

    /** The file. */
    public static byte[] of(Document document) {
        return PdfFile.of(new PdfDocument(document).pages());
    }

    private List<Drawing> pages() {
        List<Block> left = blocks();
        List<Flow> flows = new ArrayList<>();
        Rectangle2D column = new Rectangle2D.Double(MARGIN, MARGIN, painter.width(), HEIGHT - 2 * MARGIN);
        while (!left.isEmpty()) {
            Flow flow = Flow.of(left, List.of(column));
            flows.add(flow);
            left = flow.left();
        }
        List<Drawing> pages = new ArrayList<>();
        for (int i = 0; i < flows.size(); i++) {
            pages.add(new Page(document.title(), flows.get(i), i + 1, flows.size()));
        }
        return pages;
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Band> underTitle = new ArrayList<>();
        underTitle.add(painter.paragraph(document.subtitle(), TEXT));
        if (document.words().anyMatch(Typeface::lacksSomeOf)) {
            underTitle.add(painter.paragraph(Typeface.LACKING, TEXT));
        }
        blocks.add(new Block(List.of(painter.heading(document.title(), 2 * TEXT, MOST_TITLE_LINES)), underTitle));
        List<Band> head = new ArrayList<>();
        for (Part part : document.parts()) {
            if (part instanceof Part.Heading heading) {
                head.add(painter.title(heading.text()));
            } else {
                blocks.add(block(head, part));
                head = new ArrayList<>();
            }
        }
        return blocks;
    }

    private Block block(List<Band> head, Part part) {
        if (part instanceof Part.Table table) {
            Block block = table(table.schedule());
            List<Band> both = new ArrayList<>(head);
            both.addAll(block.head());
            return new Block(both, block.rows());
        }
        if (part instanceof Part.Figure figure) {
            return new Block(
                    head,
                    figure.drawing().listStrips().stream().map(this::figure).toList());
        }
        if (part instanceof Part.Verdict verdict) {
            return new Block(head, List.of(painter.paragraph(verdict.text(), 1.35 * TEXT)));
        }
        return new Block(head, List.of(painter.paragraph(((Part.Paragraph) part).text(), TEXT)));
    }

    /** A table whose title is empty has none. */
    private Block table(Schedule schedule) {
        Block block = painter.block(schedule);
        return schedule.title().isEmpty()
                ? new Block(block.head().subList(1, block.head().size()), block.rows())
                : block;
    }

    private Band figure(Drawing drawing) {
        double scale = Math.min(painter.width() / drawing.width(), TALLEST_FIGURE / drawing.height());
        return new Painted(drawing.height() * scale, (g, x, y) -> {
            AffineTransform before = g.getTransform();
            g.translate(x, y);
            g.scale(scale, scale);
            drawing.paint(g);
            g.setTransform(before);
        });
    }

    /** One page with its foot line. */
    private record Page(String title, Flow flow, int number, int count) implements Drawing {
        @Override
        public double width() {
            return WIDTH;
        }

        @Override
        public double height() {
            return HEIGHT;
        }

        @Override
        public void paint(Graphics2D g) {
            flow.paint(g);
            double y = HEIGHT - MARGIN * 0.6;
            g.setColor(Palette.LIGHT.of(Tint.GREY));
            g.setStroke(new BasicStroke(0.5f));
            g.draw(new Line2D.Double(MARGIN, y - 10, WIDTH - MARGIN, y - 10));
            String page = "page " + number + " of " + count;
            Typeface.draw(g, Typeface.fitted(Typeface.printable(title), 7, 400), MARGIN, y, 7);
            Typeface.draw(g, page, WIDTH - MARGIN - Typeface.width(page, 7), y, 7);
        }
    }
}
