// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.loomwright.diagram.scene.Point;

/**
 * Sections side by side and below each other: one after the other, each as high as there is room for it, then as far to the left.
 *
 * @param corners upper left corner of each section
 * @param width   px
 * @param height  px
 */
record Packing(List<Point> corners, double width, double height) {
    private static final double COLUMN_GAP_PX = 48;
    private static final double ROW_GAP_PX = 30;
    private static final int WIDTHS = 24;
    private static final int SHUFFLES = 100;
    /** Widths tried, over the width of a sheet that would be filled without a gap. */
    private static final double WIDEST = 1.4;
    /** Another order or width is taken when it saves so much of the sheet's side. */
    private static final double WORTH_A_CHANGE = 0.995;

    /**
     * The placing that needs the smallest sheet.
     *
     * @param aroundWidth  what the sheet needs beside the sections
     * @param aroundHeight what the sheet needs above and below them
     */
    static Packing of(List<SectionLayout> sections, double aroundWidth, double aroundHeight) {
        double[] widths = sections.stream().mapToDouble(each -> each.width() + COLUMN_GAP_PX).toArray();
        double[] heights = sections.stream().mapToDouble(each -> each.height() + ROW_GAP_PX).toArray();
        double area = IntStream.range(0, widths.length).mapToDouble(i -> widths[i] * heights[i]).sum();
        double widest = IntStream.range(0, widths.length).mapToDouble(i -> widths[i]).max().orElse(0);
        double full = StrictMath.sqrt(StrictMath.sqrt(2) * area);
        Packing best = null;
        double smallest = Double.POSITIVE_INFINITY;
        for (int[] order : orders(sections)) {
            for (int i = 0; i < WIDTHS; i++) {
                double most = StrictMath.max(widest, full * (1 + (WIDEST - 1) * i / (WIDTHS - 1)));
                Packing packing = new Rim(most).place(order, widths, heights);
                double side = SheetSize.around(packing.width + aroundWidth, packing.height + aroundHeight).heightPx();
                if (best == null || side < smallest * WORTH_A_CHANGE) {
                    smallest = side;
                    best = packing;
                }
            }
        }
        return best;
    }

    /** The order of supply; the sources first, then the wide or the tall ones, or by chance, the same chance each time. */
    private static List<int[]> orders(List<SectionLayout> sections) {
        List<Integer> natural = IntStream.range(0, sections.size()).boxed().toList();
        List<List<Integer>> orders = new ArrayList<>(List.of(natural));
        if (sections.size() > 2) {
            for (ToDoubleFunction<SectionLayout> size : List.<ToDoubleFunction<SectionLayout>>of(SectionLayout::width,
                    SectionLayout::height)) {
                Comparator<Integer> largest = Comparator.comparingDouble(i -> -size.applyAsDouble(sections.get(i)));
                orders.add(rest(natural, list -> list.sort(largest)));
            }
            Random chance = new Random(1);
            for (int i = 0; i < SHUFFLES; i++) {
                orders.add(rest(natural, list -> Collections.shuffle(list, chance)));
            }
        }
        return orders.stream().map(order -> order.stream().mapToInt(Integer::intValue).toArray()).toList();
    }

    private static List<Integer> rest(List<Integer> natural, Consumer<List<Integer>> change) {
        List<Integer> list = new ArrayList<>(natural.subList(1, natural.size()));
        change.accept(list);
        list.add(0, 0);
        return list;
    }

    /** The lower rim of what was placed already: stretches from left to right, each at its height. */
    private static final class Rim {
        private static final double NEAR = 1e-6;
        private final double most;
        private double[] left = {0};
        private double[] y = {0};

        Rim(double most) {
            this.most = most;
        }

        Packing place(int[] order, double[] widths, double[] heights) {
            Point[] corners = new Point[order.length];
            double right = 0;
            double bottom = 0;
            for (int index : order) {
                int from = best(widths[index]);
                double x = left[from];
                double top = level(from, x + widths[index]);
                corners[index] = new Point(x, top);
                right = StrictMath.max(right, x + widths[index]);
                bottom = StrictMath.max(bottom, top + heights[index]);
                lower(from, x + widths[index], top + heights[index]);
            }
            return new Packing(List.of(corners), right - COLUMN_GAP_PX, bottom - ROW_GAP_PX);
        }

        private int best(double width) {
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < left.length && left[i] + width <= most + NEAR; i++) {
                double level = level(i, left[i] + width);
                if (level < least - NEAR) {
                    least = level;
                    best = i;
                }
            }
            return best;
        }

        private double level(int from, double end) {
            double level = 0;
            for (int i = from; i < left.length && left[i] < end - NEAR; i++) {
                level = StrictMath.max(level, y[i]);
            }
            return level;
        }

        private void lower(int from, double end, double level) {
            int next = from;
            while (next + 1 < left.length && left[next + 1] <= end + NEAR) {
                next++;
            }
            boolean rest = end < (next + 1 < left.length ? left[next + 1] : most) - NEAR;
            int keep = rest ? next : next + 1;
            double[] newLeft = new double[from + 1 + left.length - keep];
            double[] newY = new double[newLeft.length];
            System.arraycopy(left, 0, newLeft, 0, from);
            System.arraycopy(y, 0, newY, 0, from);
            newLeft[from] = left[from];
            newY[from] = level;
            System.arraycopy(left, keep, newLeft, from + 1, left.length - keep);
            System.arraycopy(y, keep, newY, from + 1, left.length - keep);
            if (rest) {
                newLeft[from + 1] = end;
            }
            left = newLeft;
            y = newY;
        }
    }
}
