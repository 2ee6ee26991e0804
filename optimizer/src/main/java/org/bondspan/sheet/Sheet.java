package org.bondspan.sheet;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.table.Flow;

/** One sheet: border, title block, views if it has any, schedules. */
record Sheet(SheetContent content, SheetSize size, Heading heading, Flow schedules, List<PlanViews> views)
        implements Drawing {
    Sheet {
        views = List.copyOf(views);
    }

    /** Its number, its title, and the title of the plan on it. */
    record Heading(String number, String title, String viewTitle) {}

    @Override
    public String title() {
        return content.site().name() + ": " + heading.title();
    }

    @Override
    public double width() {
        return size.width();
    }

    @Override
    public double height() {
        return size.height();
    }

    @Override
    public void paint(Graphics2D g) {
        double margin = size.margin();
        g.setColor(Palette.LIGHT.of(Tint.INK));
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Rectangle2D.Double(margin, margin, width() - 2 * margin, height() - 2 * margin));
        views.forEach(view -> view.paint(g, heading.viewTitle()));
        schedules.paint(g);
        Rectangle2D block = new Rectangle2D.Double(
                width() - margin - size.titleBlock(), margin, size.titleBlock(), height() - 2 * margin);
        String scale = views.isEmpty() ? "none" : views.get(0).scale().words() + " unless noted";
        new TitleBlock(content, block, size.text()).paint(g, heading.number(), heading.title(), scale);
    }
}
