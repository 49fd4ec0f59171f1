// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.TextMeasure;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.SheetChoices;
import org.loomwright.model.vehicle.DiagramKind;

/**
 * Puts the heaviest body into the middle, the bodies that hang on it to its right and left, those that hang on them further out;
 * straps of the tree run level in the gaps between the columns, others through lanes at the gaps' inner side and below all.
 * Groups of bodies that nothing joins lie below each other. What a person has put somewhere stays there.
 */
final class EarthLayout {
    private static final double LANE_PX = 12;
    private static final double LANE_ROW_PX = 58;
    private static final double BETWEEN_PX = 34;
    private static final double GROUPS_PX = 48;

    final List<EarthCell> cells = new ArrayList<>();
    /** Way of each join, from its end at a. */
    final Map<EarthContent.Join, List<Point>> ways = new LinkedHashMap<>();
    /** Where the label of a join begins: left end of the room beside its line, on the line. */
    final Map<EarthContent.Join, Point> labels = new LinkedHashMap<>();
    private final EarthContent content;
    private final EarthTree tree;
    private final EarthLabels texts;
    private final int[] side;
    private final int[] depth;

    EarthLayout(DrawingRequest request, EarthState state, EarthContent content, EarthLabels texts, TextMeasure type, double x,
            double y, boolean asPlaced) {
        this.content = content;
        this.texts = texts;
        tree = new EarthTree(content);
        side = new int[content.bodies().size()];
        depth = new int[side.length];
        for (int b = 0; b < side.length; b++) {
            cells.add(new EarthCell(content, b, state, request.study(), type));
        }
        double top = y;
        for (int root : tree.roots) {
            top = group(root, x, top) + GROUPS_PX;
        }
        if (asPlaced) {
            keep(request);
        }
        routes();
    }

    /** The room of everything. */
    Bounds room() {
        Bounds all = null;
        for (EarthCell cell : cells) {
            all = cell.room().with(all);
        }
        for (Map.Entry<EarthContent.Join, List<Point>> way : ways.entrySet()) {
            Point label = labels.get(way.getKey());
            all = Bounds.of(way.getValue()).grown(16).with(all)
                    .with(new Bounds(label.x(), label.y() - 28, label.x() + texts.widthPx(way.getKey()), label.y() + 28));
        }
        return all;
    }

    private double group(int root, double x, double top) {
        sides(root);
        double rootTop = top + StrictMath.max(reach(root), 0);
        cells.get(root).top = rootTop;
        double bottom = StrictMath.max(hang(root, 1), hang(root, -1));
        extras(root);
        bottom = StrictMath.max(bottom, cells.get(root).room().bottom());
        columns(root, x);
        double lanes = bottom + 12;
        for (EarthContent.Join join : tree.extra) {
            if (tree.rootOf(join.a()) == root) {
                lanes += LANE_ROW_PX;
            }
        }
        return lanes;
    }

    /** How far anything on the first row reaches above the upper rim of a body. */
    private double reach(int body) {
        double most = cells.get(body).aboveHeight();
        for (int way : new int[] {1, -1}) {
            List<Integer> first = hanging(body, way);
            most = first.isEmpty() ? most : StrictMath.max(most, reach(first.get(0)));
        }
        return most;
    }

    private void sides(int root) {
        List<Integer> order = new ArrayList<>(tree.children.get(root));
        order.sort((a, b) -> Integer.compare(size(b), size(a)));
        int right = 0;
        int left = 0;
        for (int child : order) {
            int to = right <= left ? 1 : -1;
            right += to > 0 ? size(child) : 0;
            left += to < 0 ? size(child) : 0;
            assign(child, to, 1);
        }
    }

    private int size(int body) {
        int sum = 1 + content.studsOf(body).size();
        for (int child : tree.children.get(body)) {
            sum += size(child);
        }
        return sum;
    }

    private void assign(int body, int to, int level) {
        side[body] = to;
        depth[body] = level;
        tree.children.get(body).forEach(child -> assign(child, to, level + 1));
    }

    private List<Integer> hanging(int body, int way) {
        return tree.children.get(body).stream().filter(child -> side[child] == way).toList();
    }

    /** Places what hangs on one side of a body; gives the lowest point. */
    private double hang(int body, int way) {
        EarthCell cell = cells.get(body);
        double bottom = cell.room().bottom();
        double next = cell.top;
        boolean first = true;
        for (int child : hanging(body, way)) {
            EarthCell hung = cells.get(child);
            hung.top = first ? next : next + reach(child);
            first = false;
            for (EarthContent.Join join : tree.toParent(child)) {
                double row = hung.reserveRow(join, cell.above.isEmpty() ? 0 : EarthCell.FIRST_ROW_PX + 24);
                double at = hung.top + row - cell.top;
                cell.rows.put(join, at);
                cell.height = StrictMath.max(cell.height, at + EarthCell.FIRST_ROW_PX + (cell.below.isEmpty() ? 0 : 4));
            }
            double low = hang(child, way);
            next = low + BETWEEN_PX;
            bottom = StrictMath.max(bottom, low);
        }
        if (depth[body] > 0) {
            extras(body);
        }
        return StrictMath.max(bottom, cell.room().bottom());
    }

    /** Rows for the joins beside the tree, below those of what hangs there. */
    private void extras(int body) {
        EarthCell cell = cells.get(body);
        for (EarthContent.Join join : tree.extraAt(body)) {
            cell.reserveRow(join, cell.height - EarthCell.FIRST_ROW_PX + 20);
        }
    }

    private void columns(int root, double x) {
        Map<Integer, Double> widths = new LinkedHashMap<>();
        Map<Integer, Double> gaps = new LinkedHashMap<>();
        int most = 0;
        int least = 0;
        for (int b = 0; b < cells.size(); b++) {
            if (tree.rootOf(b) == root) {
                int column = side[b] * depth[b];
                most = StrictMath.max(most, column);
                least = StrictMath.min(least, column);
                widths.merge(column, cells.get(b).width, StrictMath::max);
                for (EarthContent.Join join : tree.toParent(b)) {
                    gaps.merge(column, texts.widthPx(join) + 34, StrictMath::max);
                }
            }
        }
        double lanes = lanesPx(root);
        double at = x + (tree.extra.isEmpty() || least == 0 ? 0 : lanes);
        for (int column = least; column <= most; column++) {
            double width = widths.getOrDefault(column, 0.0);
            for (int b = 0; b < cells.size(); b++) {
                if (tree.rootOf(b) == root && side[b] * depth[b] == column) {
                    cells.get(b).width = width;
                    cells.get(b).left = at;
                }
            }
            at += width + (column < 0 ? gaps.getOrDefault(column, 0.0) : gaps.getOrDefault(column + 1, 0.0)) + lanes;
        }
    }

    private double lanesPx(int root) {
        long extra = tree.extra.stream().filter(join -> tree.rootOf(join.a()) == root).count();
        return extra == 0 ? 0 : LANE_PX * (2 * extra + 1);
    }

    private void keep(DrawingRequest request) {
        SheetChoices choices = SheetChoices.of(request.vehicle(), request.arrangement(), DiagramKind.EARTH);
        for (EarthCell cell : cells) {
            Point chosen = choices.position(cell.body.id());
            if (chosen != null) {
                cell.left = chosen.x();
                cell.top = chosen.y();
            }
        }
    }

    private void routes() {
        for (EarthContent.Join join : content.joins()) {
            if (!tree.extra.contains(join)) {
                level(join);
            }
        }
        Map<Integer, Double> low = new LinkedHashMap<>();
        for (EarthCell cell : cells) {
            low.merge(tree.rootOf(cell.index), cell.room().bottom(), StrictMath::max);
        }
        Map<Integer, Integer> lane = new LinkedHashMap<>();
        for (EarthContent.Join join : tree.extra) {
            int root = tree.rootOf(join.a());
            low.merge(root, LANE_ROW_PX, Double::sum);
            int nth = lane.merge(root, 2, Integer::sum) - 2;
            around(join, low.get(root) - LANE_ROW_PX / 2 + 12, nth);
        }
    }

    private void level(EarthContent.Join join) {
        EarthCell a = cells.get(join.a());
        EarthCell b = cells.get(join.b());
        boolean rightwards = b.rectangle().centre().x() > a.rectangle().centre().x();
        Point from = new Point(rightwards ? a.right() : a.left, a.top + a.rows.get(join));
        Point to = new Point(rightwards ? b.left : b.right(), b.top + b.rows.get(join));
        double inner = StrictMath.min(from.x(), to.x()) + lanesPx(tree.rootOf(join.a())) * (side[outer(join)] > 0 ? 1 : 0);
        labels.put(join, new Point(inner + 14, depth[join.a()] > depth[join.b()] ? from.y() : to.y()));
        double middle = (from.x() + to.x()) / 2;
        ways.put(join, StrictMath.abs(from.y() - to.y()) < 0.01 ? List.of(from, to)
                : List.of(from, new Point(middle, from.y()), new Point(middle, to.y()), to));
    }

    private int outer(EarthContent.Join join) {
        return depth[join.a()] > depth[join.b()] ? join.a() : join.b();
    }

    private void around(EarthContent.Join join, double y, int nth) {
        EarthCell a = cells.get(join.a());
        EarthCell b = cells.get(join.b());
        boolean rightA = (side[join.a()] != 0 ? side[join.a()] : side[join.b()]) >= 0;
        boolean rightB = (side[join.b()] != 0 ? side[join.b()] : side[join.a()]) >= 0;
        Point from = new Point(rightA ? a.right() : a.left, a.top + a.rows.get(join));
        Point to = new Point(rightB ? b.right() : b.left, b.top + b.rows.get(join));
        double xa = from.x() + (rightA ? 1 : -1) * LANE_PX * (nth + 1);
        double xb = to.x() + (rightB ? 1 : -1) * LANE_PX * (nth + 2);
        ways.put(join, List.of(from, new Point(xa, from.y()), new Point(xa, y), new Point(xb, y), new Point(xb, to.y()), to));
        boolean beside = StrictMath.abs(xa - xb) < texts.widthPx(join) + 20;
        labels.put(join, new Point(beside ? StrictMath.max(xa, xb) + 10 : StrictMath.min(xa, xb) + 10, y));
    }
}
