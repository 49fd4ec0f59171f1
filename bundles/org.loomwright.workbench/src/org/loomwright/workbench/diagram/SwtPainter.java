// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Transform;
import org.loomwright.diagram.paint.Painter;
import org.loomwright.diagram.paint.Plates;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;
import org.loomwright.diagram.scene.Viewport;

/** Paints the marks of a scene with a graphics context of the toolkit. To be closed. */
public final class SwtPainter implements Painter, AutoCloseable {
    private static final float HATCH_LINE_PX = 1.5f;
    private static final float MITER = 10;
    private static final int OPAQUE = 255;

    private final GC gc;
    private final Theme theme;
    private final Typeface typeface;
    private final Viewport viewport;
    private final Transform sheet;
    private final Map<Integer, Color> colours = new HashMap<>();

    /** A painter onto the part of the sheet that a viewport shows. */
    public SwtPainter(GC gc, Theme theme, Typeface typeface, Viewport viewport) {
        this.gc = gc;
        this.theme = theme;
        this.typeface = typeface;
        this.viewport = viewport;
        sheet = transform(viewport, 0, 0);
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setTransform(sheet);
    }

    /** Paints what can be seen of a scene, its paper included. */
    public void paint(Scene scene) {
        Bounds seen = viewport.seen();
        fill(Fill.solid(Role.PAPER), rectangle(seen));
        for (Group group : scene.groups()) {
            Bounds room = group.shape();
            // a text's room takes measuring, so groups with texts are always painted
            boolean texts = group.marks().stream().anyMatch(mark -> mark instanceof Mark.Text);
            if (texts || room != null && room.grown(1).meets(seen)) {
                paint(group);
            }
        }
    }

    /** Paints groups elsewhere on the sheet. */
    public void paint(List<Group> groups, double dx, double dy) {
        Transform moved = transform(viewport, dx, dy);
        gc.setTransform(moved);
        for (Group group : groups) {
            for (Mark mark : group.marks()) {
                if (mark instanceof Mark.Text text) {
                    text(text.moved(dx, dy));
                    gc.setTransform(moved);
                } else if (mark instanceof Mark.Line line) {
                    line(line);
                } else if (mark instanceof Mark.Area area) {
                    area(area);
                } else if (mark instanceof Mark.Disc disc) {
                    disc(disc);
                }
            }
        }
        gc.setTransform(sheet);
        moved.dispose();
    }

    @Override
    public void begin(Group group) {
        // pixels know no groups
    }

    @Override
    public void end(Group group) {
        // pixels know no groups
    }

    @Override
    public void line(Mark.Line line) {
        Path path = path(line.points(), false);
        stroke(path, line.stroke());
        path.dispose();
    }

    @Override
    public void area(Mark.Area area) {
        Path path = path(area.points(), true);
        fill(area.fill(), area.points());
        stroke(path, area.stroke());
        path.dispose();
    }

    @Override
    public void disc(Mark.Disc disc) {
        Path path = new Path(gc.getDevice());
        float radius = (float) disc.radiusPx();
        path.addArc((float) disc.centre().x() - radius, (float) disc.centre().y() - radius, 2 * radius, 2 * radius, 0, 360);
        path.close();
        if (disc.fill() != null) {
            gc.setBackground(colour(disc.fill().tone()));
            gc.setAlpha(alpha(disc.fill().tone()));
            gc.fillPath(path);
            gc.setAlpha(OPAQUE);
        }
        stroke(path, disc.stroke());
        path.dispose();
    }

    @Override
    public void text(Mark.Text text) {
        Bounds room = typeface.type().bounds(text);
        if (text.plated()) {
            fill(Fill.solid(Role.PAPER), rectangle(Plates.under(room)));
        }
        if (!room.meets(viewport.seen()) || text.text().isEmpty()) {
            return;
        }
        gc.setFont(typeface.oversize(text.sizePx(), text.bold()));
        gc.setForeground(colour(text.tone()));
        gc.setAlpha(alpha(text.tone()));
        double down = (double) (gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading()) / Typeface.OVERSIZE;
        Transform tenth = transform(viewport, 0, 0);
        tenth.translate((float) room.left(), (float) (text.at().y() - down));
        float shrink = 1f / Typeface.OVERSIZE;
        tenth.scale(shrink, shrink);
        gc.setTransform(tenth);
        gc.drawText(text.text(), 0, 0, SWT.DRAW_TRANSPARENT);
        gc.setTransform(sheet);
        tenth.dispose();
        gc.setAlpha(OPAQUE);
    }

    @Override
    public void close() {
        gc.setTransform(null);
        sheet.dispose();
        colours.values().forEach(Color::dispose);
    }

    private Transform transform(Viewport at, double dx, double dy) {
        float scale = (float) at.scale();
        return new Transform(gc.getDevice(), scale, 0, 0, scale, (float) (at.x() + dx * at.scale()),
                (float) (at.y() + dy * at.scale()));
    }

    private void fill(Fill fill, List<Point> points) {
        if (fill == null) {
            return;
        }
        Path path;
        gc.setAlpha(alpha(fill.tone()));
        gc.setBackground(colour(fill.tone()));
        switch (fill.pattern()) {
            case SOLID -> {
                path = path(points, true);
                gc.fillPath(path);
            }
            case HATCHED -> {
                path = new Path(gc.getDevice());
                Patterns.hatch(path, points);
                gc.setForeground(colour(fill.tone()));
                gc.setLineAttributes(new LineAttributes(HATCH_LINE_PX));
                gc.drawPath(path);
            }
            default -> {
                path = new Path(gc.getDevice());
                Patterns.dots(path, points);
                gc.fillPath(path);
            }
        }
        path.dispose();
        gc.setAlpha(OPAQUE);
    }

    private void stroke(Path path, Stroke stroke) {
        if (stroke == null) {
            return;
        }
        float[] dash = null;
        if (!stroke.dashPx().isEmpty()) {
            dash = new float[stroke.dashPx().size()];
            for (int i = 0; i < dash.length; i++) {
                dash[i] = stroke.dashPx().get(i).floatValue();
            }
        }
        gc.setForeground(colour(stroke.tone()));
        gc.setAlpha(alpha(stroke.tone()));
        gc.setLineAttributes(new LineAttributes((float) stroke.widthPx(), SWT.CAP_FLAT, SWT.JOIN_MITER,
                dash == null ? SWT.LINE_SOLID : SWT.LINE_CUSTOM, dash, 0, MITER));
        gc.drawPath(path);
        gc.setAlpha(OPAQUE);
    }

    private Path path(List<Point> points, boolean closed) {
        Path path = new Path(gc.getDevice());
        path.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        for (Point point : points.subList(1, points.size())) {
            path.lineTo((float) point.x(), (float) point.y());
        }
        if (closed) {
            path.close();
        }
        return path;
    }

    private static List<Point> rectangle(Bounds room) {
        return List.of(new Point(room.left(), room.top()), new Point(room.right(), room.top()),
                new Point(room.right(), room.bottom()), new Point(room.left(), room.bottom()));
    }

    private Color colour(Tone tone) {
        return colours.computeIfAbsent(theme.colour(tone),
                rgb -> new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
    }

    private static int alpha(Tone tone) {
        return (int) StrictMath.rint(OPAQUE * tone.opacity());
    }
}
