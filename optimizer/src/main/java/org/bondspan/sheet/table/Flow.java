package org.bondspan.sheet.table;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Blocks set into columns, one after the other; what finds no room is left for another sheet. */
public final class Flow {
    /** Between two blocks of a column, in points. */
    public static final double GAP = 10;

    /** So many rows are kept together. */
    private static final int SHORT = 8;

    private record Placed(Band band, double x, double y) {}

    private final List<Placed> set = new ArrayList<>();
    private final List<Block> left = new ArrayList<>();
    private final List<Rectangle2D> columns;
    private int column;
    private double y;

    private Flow(List<Rectangle2D> columns) {
        this.columns = columns;
        this.y = columns.isEmpty() ? 0 : columns.get(0).getMinY();
    }

    /** Sets the blocks into the columns in their order. */
    public static Flow of(List<Block> blocks, List<Rectangle2D> columns) {
        Flow flow = new Flow(columns);
        blocks.stream().filter(block -> !block.rows().isEmpty()).forEach(flow::add);
        return flow;
    }

    /** Each list of blocks into a column of its own; the columns are long enough. */
    public static Flow inColumns(List<List<Block>> blocks, List<Rectangle2D> columns) {
        Flow flow = new Flow(columns);
        for (int i = 0; i < blocks.size(); i++) {
            flow.column = i;
            flow.y = columns.get(i).getMinY();
            blocks.get(i).forEach(flow::add);
        }
        return flow;
    }

    /** What found no room. */
    public List<Block> left() {
        return List.copyOf(left);
    }

    public void paint(Graphics2D g) {
        set.forEach(placed -> placed.band().paint(g, placed.x(), placed.y()));
    }

    private void add(Block block) {
        if (!left.isEmpty()) {
            left.add(block);
            return;
        }
        int next = 0;
        while (next < block.rows().size()) {
            if (column >= columns.size()) {
                left.add(block.from(next));
                return;
            }
            if (!isAtTop() && isBetterTogether(block, next)) {
                nextColumn();
                continue;
            }
            block.head().forEach(this::put);
            do {
                put(block.rows().get(next));
                next++;
            } while (next < block.rows().size() && fits(block.rows().get(next).height()) && !leavesOne(block, next));
            y += GAP;
            if (next < block.rows().size()) {
                nextColumn();
            }
        }
    }

    /** Whether what is left of the block had better begin the next column: short ones are not torn apart. */
    private boolean isBetterTogether(Block block, int next) {
        if (block.rows().size() - next <= SHORT) {
            return !fits(block.from(next).height());
        }
        return !fits(block.headHeight()
                + block.rows().subList(next, next + 2).stream()
                        .mapToDouble(Band::height)
                        .sum());
    }

    /** Whether the last row alone would begin the next column, were this one filled. */
    private boolean leavesOne(Block block, int next) {
        int size = block.rows().size();
        return next == size - 2
                && !fits(block.rows().get(next).height()
                        + block.rows().get(size - 1).height());
    }

    private boolean fits(double height) {
        return y + height <= columns.get(column).getMaxY();
    }

    private boolean isAtTop() {
        return y <= columns.get(column).getMinY();
    }

    private void nextColumn() {
        column++;
        if (column < columns.size()) {
            y = columns.get(column).getMinY();
        }
    }

    private void put(Band band) {
        set.add(new Placed(band, columns.get(column).getMinX(), y));
        y += band.height();
    }
}
