// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/**
 * Paints a scene as lines, areas and text of a PDF page. The caller has set the transform so that the page is measured as the
 * scene is: px, y downwards.
 */
public final class PdfPainter implements Painter {
    /** Distance of the control points of a quarter circle from its ends, as a share of the radius. */
    private static final double ROUND = 0.5522847498;
    private static final float LONGEST_MITRE = 10;
    private final Map<Double, PDExtendedGraphicsState> veils = new TreeMap<>();
    private final PDPageContentStream out;
    private final Theme theme;
    private final Type type;
    private final PdfType pdfType;

    private PdfPainter(PDPageContentStream out, Theme theme, Type type, PdfType pdfType) {
        this.out = out;
        this.theme = theme;
        this.type = type;
        this.pdfType = pdfType;
    }

    /** Paints the marks of a scene; its ground stays as it is. */
    public static void paint(Scene scene, Theme theme, Type type, PdfType pdfType, PDPageContentStream out) throws IOException {
        PdfPainter painter = new PdfPainter(out, theme, type, pdfType);
        try {
            out.setMiterLimit(LONGEST_MITRE);
            scene.groups().forEach(painter::paint);
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    /** A piece of the page's content; writing to it may fail. */
    private interface Piece {
        void write() throws IOException;
    }

    private static void write(Piece piece) {
        try {
            piece.write();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void begin(Group group) {
        // the page has no groups
    }

    @Override
    public void line(Mark.Line line) {
        write(() -> drawn(null, line.stroke(), () -> trace(line.points(), false), null));
    }

    @Override
    public void area(Mark.Area area) {
        write(() -> drawn(area.fill(), area.stroke(), () -> trace(area.points(), true), Bounds.of(area.points())));
    }

    @Override
    public void disc(Mark.Disc disc) {
        write(() -> drawn(disc.fill(), disc.stroke(), () -> circle(disc.centre(), disc.radiusPx()),
                Bounds.around(disc.centre(), disc.radiusPx())));
    }

    @Override
    public void text(Mark.Text text) {
        write(() -> {
            Bounds bounds = type.bounds(text);
            if (text.plated()) {
                Bounds plate = Plates.under(bounds);
                colour(Role.PAPER, false);
                out.addRect((float) plate.left(), (float) plate.top(), (float) plate.width(), (float) plate.height());
                out.fill();
            }
            if (!text.text().isEmpty()) {
                letters(text, bounds);
            }
        });
    }

    @Override
    public void end(Group group) {
        // the page has no groups
    }

    /** The letters stand upright on a page that is measured downwards, as wide as the layout has measured them with kerning. */
    private void letters(Mark.Text text, Bounds bounds) throws IOException {
        String shown = pdfType.shown(text.text(), text.bold());
        double plain = pdfType.font(text.bold()).getStringWidth(shown) / 1000 * text.sizePx();
        colour(text.tone(), false);
        out.beginText();
        out.setFont(pdfType.font(text.bold()), (float) text.sizePx());
        out.setHorizontalScaling(plain == 0 ? 100 : (float) (100 * bounds.width() / plain));
        out.setTextMatrix(new Matrix(1, 0, 0, -1, (float) bounds.left(), (float) text.at().y()));
        out.showText(shown);
        out.endText();
    }

    private void drawn(Fill fill, Stroke stroke, Piece trace, Bounds area) throws IOException {
        if (fill != null && fill.pattern() == Fill.Pattern.SOLID) {
            veiled(fill.tone(), () -> {
                colour(fill.tone(), false);
                trace.write();
                out.fill();
            });
        } else if (fill != null) {
            out.saveGraphicsState();
            trace.write();
            out.clip();
            veiled(fill.tone(), () -> pattern(fill, area));
            out.restoreGraphicsState();
        }
        if (stroke != null) {
            veiled(stroke.tone(), () -> {
                pen(stroke);
                trace.write();
                out.stroke();
            });
        }
    }

    private void pen(Stroke stroke) throws IOException {
        float[] dash = new float[stroke.dashPx().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = stroke.dashPx().get(i).floatValue();
        }
        colour(stroke.tone(), true);
        out.setLineWidth((float) stroke.widthPx());
        out.setLineDashPattern(dash, 0);
    }

    private void pattern(Fill fill, Bounds area) throws IOException {
        if (fill.pattern() == Fill.Pattern.HATCHED) {
            pen(Stroke.solid(fill.tone(), Patterns.HATCH_LINE_PX));
            for (Patterns.Line line : Patterns.hatch(area)) {
                trace(List.of(line.from(), line.to()), false);
            }
            out.stroke();
        } else {
            colour(fill.tone(), false);
            for (Point dot : Patterns.dots(area)) {
                circle(dot, Patterns.DOT_PX);
            }
            out.fill();
        }
    }

    /** Writes what lets show through what lies below it. */
    private void veiled(Tone tone, Piece piece) throws IOException {
        if (tone.opacity() >= 1) {
            piece.write();
            return;
        }
        PDExtendedGraphicsState veil = veils.computeIfAbsent(tone.opacity(), opacity -> {
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setNonStrokingAlphaConstant(opacity.floatValue());
            state.setStrokingAlphaConstant(opacity.floatValue());
            return state;
        });
        out.saveGraphicsState();
        out.setGraphicsStateParameters(veil);
        piece.write();
        out.restoreGraphicsState();
    }

    private void trace(List<Point> points, boolean closed) throws IOException {
        out.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        for (Point point : points.subList(1, points.size())) {
            out.lineTo((float) point.x(), (float) point.y());
        }
        if (closed) {
            out.closePath();
        }
    }

    private void circle(Point middle, double radius) throws IOException {
        float x = (float) middle.x();
        float y = (float) middle.y();
        float r = (float) radius;
        float k = (float) (ROUND * radius);
        out.moveTo(x + r, y);
        out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
        out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
        out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
        out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
        out.closePath();
    }

    private void colour(Tone tone, boolean stroking) throws IOException {
        int rgb = theme.colour(tone);
        float red = (rgb >> 16 & 0xFF) / 255f;
        float green = (rgb >> 8 & 0xFF) / 255f;
        float blue = (rgb & 0xFF) / 255f;
        if (stroking) {
            out.setStrokingColor(red, green, blue);
        } else {
            out.setNonStrokingColor(red, green, blue);
        }
    }
}
