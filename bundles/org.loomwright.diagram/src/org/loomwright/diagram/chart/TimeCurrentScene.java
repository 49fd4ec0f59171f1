// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.loomwright.diagram.chart.TimeCurrentChart.At;
import org.loomwright.diagram.chart.TimeCurrentChart.Band;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;

/**
 * Lays out a time-current chart on an A4 sheet: log-log plane at the left, legend and verdicts at the right, title block below.
 * Everything is told by shape or pattern as well as by colour.
 */
public final class TimeCurrentScene {
    static final double WIDTH = 1123;
    static final double HEIGHT = 794;
    private static final double LEFT = 108;
    private static final double RIGHT = 760;
    private static final double TOP = 140;
    private static final double BOTTOM = 680;
    private static final double SIDE = 800;
    private static final double SIDE_END = 1083;
    private static final double LONGEST_S = 10_000;
    private static final double SHORTEST_S = 0.001;

    private final TimeCurrentChart chart;
    private final Type type;
    private final SceneBuilder scene;
    private final LogAxis amps;
    private final LogAxis seconds;

    private TimeCurrentScene(TimeCurrentChart chart, Type type) {
        this.chart = chart;
        this.type = type;
        scene = new SceneBuilder(chart.title(), WIDTH, HEIGHT);
        amps = ampsAxis(chart);
        seconds = new LogAxis(SHORTEST_S, LONGEST_S, BOTTOM, TOP);
    }

    /** The scene of a chart. */
    public static Scene of(TimeCurrentChart chart, Type type) {
        TimeCurrentScene layout = new TimeCurrentScene(chart, type);
        layout.head();
        layout.grid();
        layout.bands();
        layout.limits();
        layout.markers();
        layout.frame();
        new ChartSide(layout.scene, type, SIDE, SIDE_END).write(chart, TOP - 16);
        new TitleBlock(layout.scene, type).write(chart.footer(), WIDTH, HEIGHT);
        return layout.scene.build();
    }

    private static LogAxis ampsAxis(TimeCurrentChart chart) {
        double[] all = DoubleStream.concat(
                chart.bands().stream().flatMap(band -> band.fastest().stream())
                        .filter(at -> at.seconds() >= SHORTEST_S).mapToDouble(At::amps),
                DoubleStream.concat(chart.faults().stream().mapToDouble(TimeCurrentChart.Current::amps), DoubleStream.concat(
                        chart.loads().stream().mapToDouble(TimeCurrentChart.Current::amps),
                        chart.inrushes().stream().mapToDouble(TimeCurrentChart.Spot::amps))))
                .filter(value -> value > 0 && Double.isFinite(value)).toArray();
        double least = DoubleStream.of(all).min().orElse(1);
        double most = DoubleStream.of(all).max().orElse(1000);
        return new LogAxis(step(least / 1.3, false), step(most * 1.6, true), LEFT, RIGHT);
    }

    /** The next 1, 2 or 5 of a decade below or above. */
    private static double step(double value, boolean up) {
        int decade = (int) StrictMath.floor(StrictMath.log10(value));
        double best = up ? Double.POSITIVE_INFINITY : 0;
        for (int d = decade - 1; d <= decade + 1; d++) {
            for (int digit : new int[] {1, 2, 5}) {
                double here = Double.parseDouble(digit + "e" + d);
                if (up && here >= value) {
                    best = StrictMath.min(best, here);
                } else if (!up && here <= value) {
                    best = StrictMath.max(best, here);
                }
            }
        }
        return best;
    }

    private void head() {
        scene.group(null, chart.title());
        scene.rectangle(null, Stroke.solid(Role.INK2, 1), 20, 20, WIDTH - 40, HEIGHT - 40);
        scene.text(40, 53, chart.title(), 20, true, Mark.Anchor.START, Role.INK);
        scene.text(40, 73, chart.subtitle(), 12, false, Mark.Anchor.START, Role.INK2);
    }

    private void grid() {
        scene.group(null, "axes");
        for (double value : amps.all()) {
            scene.line(Stroke.solid(Role.HAIR, 0.5), new Point(amps.px(value), TOP), new Point(amps.px(value), BOTTOM));
        }
        for (double value : seconds.decades()) {
            scene.line(Stroke.solid(Role.HAIR, 0.75), new Point(LEFT, seconds.px(value)), new Point(RIGHT, seconds.px(value)));
            scene.text(LEFT - 10, seconds.px(value) + 4, time(value), 12, false, Mark.Anchor.END, Role.INK);
        }
        double free = LEFT - 30;
        for (double value : amps.oneTwoFive()) {
            String text = AxisText.plain(value);
            double half = type.widthPx(text, 12, false) / 2;
            scene.line(Stroke.solid(Role.INK, 0.75), new Point(amps.px(value), BOTTOM), new Point(amps.px(value), BOTTOM + 5));
            if (amps.px(value) - half > free + 6) {
                scene.text(amps.px(value), BOTTOM + 21, text, 12, false, Mark.Anchor.MIDDLE, Role.INK);
                free = amps.px(value) + half;
            }
        }
        scene.text(LEFT - 10, TOP - 14, "time", 12, false, Mark.Anchor.END, Role.INK2);
        scene.text((LEFT + RIGHT) / 2, BOTTOM + 43, "current in A", 12, false, Mark.Anchor.MIDDLE, Role.INK2);
    }

    private static String time(double value) {
        return value >= 1 ? AxisText.plain(value) + " s" : AxisText.plain(value * 1000) + " ms";
    }

    private void bands() {
        for (int i = 0; i < chart.bands().size(); i++) {
            Band band = chart.bands().get(i);
            List<Point> outline = new ArrayList<>(curve(band.fastest()));
            List<Point> back = curve(band.slowest());
            if (!outline.isEmpty() && !back.isEmpty() && outline.get(outline.size() - 1).x() < RIGHT
                    && back.get(back.size() - 1).x() >= RIGHT) {
                outline.add(new Point(RIGHT, BOTTOM));
            }
            for (int k = back.size() - 1; k >= 0; k--) {
                outline.add(back.get(k));
            }
            if (outline.size() > 2) {
                scene.group(band.element(), band.name());
                scene.area(bandFill(i), null, outline);
                scene.line(bandStroke(i), curve(band.fastest()));
                scene.line(bandStroke(i), back);
            }
        }
    }

    static Fill bandFill(int index) {
        return index % 2 == 0 ? Fill.solid(Role.FILL) : Fill.hatched(Role.INK3);
    }

    static Stroke bandStroke(int index) {
        return index % 2 == 0 ? Stroke.solid(Role.INK, 1.5) : Stroke.solid(Role.INK2, 1.25);
    }

    static Stroke limitStroke() {
        return Stroke.dashed(Role.INK, 3, 12.0, 4.0, 3.0, 4.0);
    }

    static Stroke faultStroke() {
        return Stroke.dashed(Role.WHAT_IF, 1.5, 2.0, 3.0);
    }

    /** The part of a curve inside the plane; a curve that begins inside is led up to the longest time. */
    private List<Point> curve(List<At> points) {
        List<Point> drawn = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            At at = points.get(i);
            if (i == 0 && at.seconds() < LONGEST_S) {
                drawn.add(new Point(amps.px(amps.clamped(at.amps())), TOP));
            }
            if (i > 0) {
                addCut(drawn, points.get(i - 1), at);
            }
            if (inside(at)) {
                drawn.add(new Point(amps.px(at.amps()), seconds.px(at.seconds())));
            }
        }
        return drawn;
    }

    private boolean inside(At at) {
        return amps.holds(at.amps()) && seconds.holds(at.seconds());
    }

    /** Where a piece of a curve crosses the rim of the plane. */
    private void addCut(List<Point> drawn, At from, At to) {
        if (inside(from) == inside(to)) {
            return;
        }
        At in = inside(from) ? from : to;
        At out = inside(from) ? to : from;
        double x0 = amps.px(in.amps());
        double y0 = seconds.px(in.seconds());
        double x1 = amps.px(StrictMath.max(out.amps(), 1e-6));
        double y1 = seconds.px(StrictMath.min(StrictMath.max(out.seconds(), 1e-9), 1e12));
        double share = 1;
        if (x1 > RIGHT || x1 < LEFT) {
            share = StrictMath.min(share, ((x1 > RIGHT ? RIGHT : LEFT) - x0) / (x1 - x0));
        }
        if (y1 > BOTTOM || y1 < TOP) {
            share = StrictMath.min(share, ((y1 > BOTTOM ? BOTTOM : TOP) - y0) / (y1 - y0));
        }
        drawn.add(new Point(x0 + share * (x1 - x0), y0 + share * (y1 - y0)));
    }

    private void limits() {
        for (TimeCurrentChart.Limit limit : chart.limits()) {
            List<Point> line = curve(limit.points());
            if (line.size() > 1) {
                scene.group(limit.element(), limit.name());
                scene.line(limitStroke(), line);
            }
        }
    }

    private void markers() {
        scene.group(null, "currents");
        LabelRow labels = new LabelRow(type, LEFT, RIGHT);
        for (TimeCurrentChart.Current fault : chart.faults()) {
            double x = amps.px(amps.clamped(fault.amps()));
            scene.line(faultStroke(), new Point(x, TOP), new Point(x, BOTTOM));
            scene.area(Fill.solid(Role.WHAT_IF), Stroke.solid(Role.INK, 1),
                    List.of(new Point(x - 6, TOP - 10), new Point(x + 6, TOP - 10), new Point(x, TOP)));
            labels.add(fault.name(), x);
        }
        labels.write(scene, TOP - 18, 15);
        for (TimeCurrentChart.Spot spot : chart.inrushes()) {
            double x = amps.px(amps.clamped(spot.amps()));
            double y = seconds.px(seconds.clamped(spot.seconds()));
            scene.disc(Fill.solid(Role.PLATE), Stroke.solid(Role.INK, 1.5), x, y, 9);
            scene.disc(Fill.solid(Role.INK), null, x, y, 4);
        }
        int line = 0;
        for (TimeCurrentChart.Current load : chart.loads()) {
            double x = amps.px(amps.clamped(load.amps()));
            double y = BOTTOM - 12 - 20 * line++;
            scene.line(Stroke.solid(Role.INK, 1), new Point(x, y - 6), new Point(x, BOTTOM));
            scene.area(Fill.solid(Role.INK), null,
                    List.of(new Point(x - 3.5, BOTTOM - 7), new Point(x + 3.5, BOTTOM - 7), new Point(x, BOTTOM)));
            boolean toRight = x + 10 + type.widthPx(load.name(), 12, false) < RIGHT;
            double from = toRight ? x + 7 : x - 7 - type.widthPx(load.name(), 12, false);
            scene.rectangle(Fill.solid(Role.PLATE), null, from - 2, y - 11, type.widthPx(load.name(), 12, false) + 4, 15);
            scene.text(from, y, load.name(), 12, false, Mark.Anchor.START, Role.INK);
        }
    }

    private void frame() {
        scene.group(null, null);
        scene.rectangle(null, Stroke.solid(Role.INK, 1.25), LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP);
    }
}
