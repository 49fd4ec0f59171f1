// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.FittedText;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.engine.compare.ArrangementComparison;
import org.loomwright.engine.compare.ArrangementFigures.LoadVoltage;
import org.loomwright.engine.result.Designations;

/** A panel of the loads with the lowest voltages: a mark for each arrangement on one axis, and what each load works from. */
final class VoltagePanel {
    /** Arrangements that can be told apart by their marks. */
    static final int MOST = 6;
    private static final double NAMES = 212;
    private static final double ROW = 27;
    private static final double VALUE_ROOM = 40;
    private static final double RIGHT_ROOM = 76;
    private static final double RADIUS = 5.5;
    private final SceneBuilder scene;
    private final Type type;
    private final double left;
    private final double right;
    private List<List<LoadVoltage>> rows;
    private boolean oneLevel;
    private double low;
    private double high;

    VoltagePanel(SceneBuilder scene, Type type, double left, double right) {
        this.scene = scene;
        this.type = type;
        this.left = left;
        this.right = right;
    }

    void write(ArrangementComparison comparison, List<String> names, double top, double bottom) {
        int most = (int) ((bottom - top - 27 - 62) / ROW);
        List<List<LoadVoltage>> all = new ArrayList<>(comparison.loads().values());
        all.sort(Comparator.comparingDouble(VoltagePanel::least));
        rows = all.subList(0, StrictMath.min(most, all.size()));
        oneLevel = all.stream().flatMap(List::stream).mapToDouble(LoadVoltage::nominalV).distinct().count() <= 1;
        scene.group(null, "Lowest voltage of each load");
        StackedBars.PanelHead.write(scene, all.size() > rows.size() ? "Lowest voltage, the " + rows.size() + " loads with least of "
                + all.size() : "Lowest voltage of each load", oneLevel ? "V" : "% of nominal", left, right, top);
        if (rows.isEmpty()) {
            return;
        }
        double step = range();
        double end = top + 27 + rows.size() * ROW;
        for (int i = 0; low + i * step <= high + step / 100; i++) {
            double value = low + i * step;
            scene.line(Stroke.solid(Role.HAIR, 0.75), new Point(px(value), top + 22), new Point(px(value), end));
            scene.text(px(value), end + 15, ChartNumber.of(value), 12, false, Mark.Anchor.MIDDLE, Role.INK);
        }
        Designations shown = new Designations(comparison.arrangements().get(0).arrangement());
        for (int i = 0; i < rows.size(); i++) {
            row(rows.get(i), shown, top + 27 + (i + 0.5) * ROW);
        }
        legend(names, end + 42);
    }

    private static double least(List<LoadVoltage> row) {
        return row.stream().mapToDouble(load -> load.volts() / load.nominalV()).min().orElse(1);
    }

    private double value(LoadVoltage load, double volts) {
        return oneLevel ? volts : 100 * volts / load.nominalV();
    }

    private double px(double value) {
        double from = left + NAMES + VALUE_ROOM;
        return from + (value - low) / (high - low) * (right - RIGHT_ROOM - from);
    }

    /** Ends of the axis at multiples of the step that is returned. */
    private double range() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (List<LoadVoltage> row : rows) {
            for (LoadVoltage load : row) {
                least = StrictMath.min(least, value(load, load.volts()));
                least = load.leastV() > 0 ? StrictMath.min(least, value(load, load.leastV())) : least;
                most = StrictMath.max(most, value(load, load.volts()));
            }
        }
        double span = StrictMath.max(most - least, oneLevel ? 0.1 : 1);
        double decade = Double.parseDouble("1e" + (int) StrictMath.floor(StrictMath.log10(span / 5)));
        double step = span / 5 <= 2 * decade ? 2 * decade : span / 5 <= 5 * decade ? 5 * decade : 10 * decade;
        low = StrictMath.floor(least / step) * step;
        high = StrictMath.ceil(most / step) * step;
        high = high > low ? high : low + step;
        return step;
    }

    private void row(List<LoadVoltage> loads, Designations shown, double y) {
        String id = shown.shown(loads.get(0).load());
        scene.text(left, y + 4.5, id, 12, true, Mark.Anchor.START, Role.INK);
        double from = left + StrictMath.max(46, type.widthPx(id, 12, true) + 6);
        scene.text(from, y + 4.5, FittedText.of(type, loads.get(0).label(), 12, false, left + NAMES - from), 12, false, Mark.Anchor.START, Role.INK);
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (LoadVoltage load : loads) {
            first = StrictMath.min(first, value(load, load.volts()));
            last = StrictMath.max(last, value(load, load.volts()));
        }
        scene.line(Stroke.solid(Role.INK2, 1.25), new Point(px(first), y), new Point(px(last), y));
        String text = number(first);
        double leftEnd = px(first) - RADIUS - 4;
        double leastPx = loads.get(0).leastV() > 0 ? px(value(loads.get(0), loads.get(0).leastV())) : Double.NaN;
        boolean meets = leastPx + 10 > leftEnd - type.widthPx(text, 12, false);
        if (!Double.isNaN(leastPx)) {
            bracket(leastPx, y);
        }
        String both = number(last).equals(text) ? text : meets ? text + " \u2013 " + number(last) : number(last);
        if (!meets && !number(last).equals(text)) {
            scene.platedText(leftEnd, y + 4.5, text, 12, false, Mark.Anchor.END, Role.INK2);
        }
        scene.platedText(px(last) + RADIUS + 4, y + 4.5, both, 12, false, Mark.Anchor.START, Role.INK2);
        for (int i = 0; i < loads.size(); i++) {
            marker(i, px(value(loads.get(i), loads.get(i).volts())), y);
        }
    }

    private String number(double value) {
        return String.format(Locale.ROOT, oneLevel ? "%.2f" : "%.1f", value);
    }

    private void bracket(double x, double y) {
        scene.line(Stroke.solid(Role.INK2, 1.25), List.of(new Point(x + 5, y - 8), new Point(x, y - 8), new Point(x, y + 8),
                new Point(x + 5, y + 8)));
    }

    /** Open and filled circles, squares, triangles: told apart without colour. */
    private void marker(int arrangement, double x, double y) {
        Fill fill = Fill.solid(arrangement % 2 == 0 ? Role.PAPER : Role.INK);
        Stroke rim = Stroke.solid(Role.INK, 1.75);
        switch (arrangement / 2) {
            case 0 -> scene.disc(fill, rim, x, y, RADIUS);
            case 1 -> scene.rectangle(fill, rim, x - RADIUS + 0.5, y - RADIUS + 0.5, 2 * RADIUS - 1, 2 * RADIUS - 1);
            default -> scene.area(fill, rim, List.of(new Point(x, y - RADIUS), new Point(x + RADIUS, y + RADIUS - 1),
                    new Point(x - RADIUS, y + RADIUS - 1)));
        }
    }

    private void legend(List<String> names, double y) {
        double x = left;
        double line = y;
        for (int i = 0; i <= names.size(); i++) {
            String text = i < names.size() ? names.get(i) : "what the load works from";
            double width = 20 + type.widthPx(text, 12, false);
            if (x > left && x + width > right) {
                x = left;
                line += 20;
            }
            if (i < names.size()) {
                marker(i, x + RADIUS + 1, line);
            } else {
                bracket(x + 4, line);
            }
            scene.text(x + 20, line + 4.5, text, 12, false, Mark.Anchor.START, Role.INK2);
            x += width + 18;
        }
    }
}
