// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/** Paints a scene as pixels, without a display. */
public final class PngPainter implements Painter {
    private final Graphics2D graphics;
    private final Theme theme;
    private final Type type;

    private PngPainter(Graphics2D graphics, Theme theme, Type type) {
        this.graphics = graphics;
        this.theme = theme;
        this.type = type;
    }

    /**
     * Writes the picture.
     *
     * @param scale pixels for each px of the scene, for example 2 for 200 %
     * @param out   where to write; not closed
     */
    public static void write(Scene scene, Theme theme, Type type, double scale, OutputStream out) throws IOException {
        ImageIO.setUseCache(false);
        ImageIO.write(image(scene, theme, type, scale), "png", out);
    }

    /** The picture. */
    public static BufferedImage image(Scene scene, Theme theme, Type type, double scale) {
        BufferedImage image = new BufferedImage((int) StrictMath.ceil(scene.widthPx() * scale),
                (int) StrictMath.ceil(scene.heightPx() * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = fine(image, theme);
        graphics.scale(scale, scale);
        paint(scene, theme, type, graphics);
        graphics.dispose();
        return image;
    }

    /** Graphics of an image that is all ground. */
    public static Graphics2D fine(BufferedImage image, Theme theme) {
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(new Color(theme.colour(Role.PAPER)));
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return graphics;
    }

    /** Paints the marks of a scene with the transform and the clip that the graphics has; its ground stays as it is. */
    public static void paint(Scene scene, Theme theme, Type type, Graphics2D graphics) {
        PngPainter painter = new PngPainter(graphics, theme, type);
        scene.groups().forEach(painter::paint);
    }

    @Override
    public void begin(Group group) {
        // pixels know no groups
    }

    @Override
    public void line(Mark.Line line) {
        stroke(path(line.points(), false), line.stroke());
    }

    @Override
    public void area(Mark.Area area) {
        filled(path(area.points(), true), area.fill(), area.stroke());
    }

    @Override
    public void disc(Mark.Disc disc) {
        double r = disc.radiusPx();
        filled(new Ellipse2D.Double(disc.centre().x() - r, disc.centre().y() - r, 2 * r, 2 * r), disc.fill(), disc.stroke());
    }

    @Override
    public void text(Mark.Text text) {
        Bounds bounds = type.bounds(text);
        if (text.plated()) {
            Bounds plate = Plates.under(bounds);
            graphics.setColor(colour(Role.PAPER));
            graphics.fill(new Rectangle2D.Double(plate.left(), plate.top(), plate.width(), plate.height()));
        }
        graphics.setColor(colour(text.tone()));
        graphics.setFont(type.font(text.sizePx(), text.bold()));
        graphics.drawString(text.text(), (float) bounds.left(), (float) text.at().y());
    }

    @Override
    public void end(Group group) {
        // pixels know no groups
    }

    private void filled(Shape shape, Fill fill, Stroke stroke) {
        if (fill != null && fill.pattern() == Fill.Pattern.SOLID) {
            graphics.setColor(colour(fill.tone()));
            graphics.fill(shape);
        } else if (fill != null && fill.pattern() == Fill.Pattern.HATCHED) {
            hatch(shape, fill);
        } else if (fill != null) {
            dots(shape, fill);
        }
        stroke(shape, stroke);
    }

    private void hatch(Shape shape, Fill fill) {
        Shape before = graphics.getClip();
        graphics.clip(shape);
        graphics.setColor(colour(fill.tone()));
        graphics.setStroke(new BasicStroke((float) Patterns.HATCH_LINE_PX));
        for (Patterns.Line line : Patterns.hatch(bounds(shape))) {
            graphics.draw(new Line2D.Double(line.from().x(), line.from().y(), line.to().x(), line.to().y()));
        }
        graphics.setClip(before);
    }

    private void dots(Shape shape, Fill fill) {
        Shape before = graphics.getClip();
        graphics.clip(shape);
        graphics.setColor(colour(fill.tone()));
        double r = Patterns.DOT_PX;
        for (Point dot : Patterns.dots(bounds(shape))) {
            graphics.fill(new Ellipse2D.Double(dot.x() - r, dot.y() - r, 2 * r, 2 * r));
        }
        graphics.setClip(before);
    }

    private static Bounds bounds(Shape shape) {
        Rectangle2D all = shape.getBounds2D();
        return new Bounds(all.getMinX(), all.getMinY(), all.getMaxX(), all.getMaxY());
    }

    private void stroke(Shape shape, Stroke stroke) {
        if (stroke == null) {
            return;
        }
        float[] dash = new float[stroke.dashPx().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = stroke.dashPx().get(i).floatValue();
        }
        graphics.setColor(colour(stroke.tone()));
        graphics.setStroke(new BasicStroke((float) stroke.widthPx(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10,
                dash.length == 0 ? null : dash, 0));
        graphics.draw(shape);
    }

    private static Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.x(), point.y()));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private Color colour(Tone tone) {
        return new Color(theme.colour(tone) | (int) StrictMath.rint(255 * tone.opacity()) << 24, true);
    }
}
