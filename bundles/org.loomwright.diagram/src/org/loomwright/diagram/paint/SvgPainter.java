// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Tone;

/** Writes a scene as SVG 1.1. Text keeps its measured length when the reader has another font. */
public final class SvgPainter implements Painter {
    private final Map<Fill, String> patterns = new LinkedHashMap<>();
    private final StringBuilder out = new StringBuilder();
    private final Theme theme;
    private final Type type;
    private final String ids;

    private SvgPainter(Theme theme, Type type, String ids) {
        this.theme = theme;
        this.type = type;
        this.ids = ids;
    }

    /** The document. */
    public static String paint(Scene scene, Theme theme, Type type) {
        SvgPainter painter = new SvgPainter(theme, type, "");
        painter.head(scene);
        scene.groups().forEach(painter::paint);
        painter.out.append("</svg>\n");
        return painter.out.toString();
    }

    /**
     * A part of a scene as an element to be put into a document; what lies beyond the part is not seen.
     *
     * @param view part of the scene, px
     * @param at   where it lies in the document
     * @param ids  begins the names of its patterns, which are common to the document
     */
    public static String part(Scene scene, Bounds view, Bounds at, Theme theme, Type type, String ids) {
        SvgPainter painter = new SvgPainter(theme, type, ids);
        painter.out.append("<svg x=\"").append(number(at.left())).append("\" y=\"").append(number(at.top())).append("\" width=\"")
                .append(number(at.width())).append("\" height=\"").append(number(at.height())).append("\" viewBox=\"")
                .append(number(view.left())).append(' ').append(number(view.top())).append(' ').append(number(view.width()))
                .append(' ').append(number(view.height())).append("\" preserveAspectRatio=\"none\">\n");
        painter.defs(scene);
        scene.groups().forEach(painter::paint);
        painter.out.append("</svg>\n");
        return painter.out.toString();
    }

    private void head(Scene scene) {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(number(scene.widthPx())).append("\" height=\"").append(number(scene.heightPx()))
                .append("\" viewBox=\"0 0 ").append(number(scene.widthPx())).append(' ').append(number(scene.heightPx()))
                .append("\" font-family=\"").append(Type.FAMILIES).append("\">\n<title>").append(escaped(scene.title()))
                .append("</title>\n");
        defs(scene);
        out.append("<rect width=\"100%\" height=\"100%\" fill=\"").append(colour(Role.PAPER)).append("\"/>\n");
    }

    private void defs(Scene scene) {
        out.append("<defs>\n");
        patterns(scene).forEach((fill, id) -> pattern(fill, id));
        out.append("</defs>\n");
    }

    private Map<Fill, String> patterns(Scene scene) {
        for (Group group : scene.groups()) {
            for (Mark mark : group.marks()) {
                Fill fill = mark instanceof Mark.Area area ? area.fill() : mark instanceof Mark.Disc disc ? disc.fill() : null;
                if (fill != null && fill.pattern() != Fill.Pattern.SOLID) {
                    patterns.putIfAbsent(fill, ids + fill.pattern().name().toLowerCase(Locale.ROOT) + "-" + (patterns.size() + 1));
                }
            }
        }
        return patterns;
    }

    private void pattern(Fill fill, String id) {
        boolean hatched = fill.pattern() == Fill.Pattern.HATCHED;
        String size = number(hatched ? Patterns.HATCH_PX : Patterns.DOTS_PX);
        out.append("<pattern id=\"").append(id).append("\" width=\"").append(size).append("\" height=\"").append(size)
                .append("\" patternUnits=\"userSpaceOnUse\"").append(hatched ? " patternTransform=\"rotate(45)\">" : ">");
        if (hatched) {
            out.append("<path d=\"M0 0V").append(size).append("\" stroke=\"").append(colour(fill.tone()))
                    .append("\" stroke-width=\"").append(number(Patterns.HATCH_LINE_PX)).append("\"/></pattern>\n");
        } else {
            out.append("<circle cx=\"").append(number(Patterns.DOTS_PX / 2)).append("\" cy=\"").append(number(Patterns.DOTS_PX / 2))
                    .append("\" r=\"").append(number(Patterns.DOT_PX)).append("\" fill=\"").append(colour(fill.tone()))
                    .append("\"/></pattern>\n");
        }
    }

    @Override
    public void begin(Group group) {
        out.append("<g");
        if (group.element() != null) {
            out.append(" data-element=\"").append(escaped(group.element())).append('"');
        }
        if (group.kind() != Group.Kind.GROUND) {
            out.append(" class=\"").append(group.kind().name().toLowerCase(Locale.ROOT)).append('"');
        }
        out.append('>');
        if (group.name() != null) {
            out.append("<title>").append(escaped(group.name())).append("</title>");
        }
        out.append('\n');
    }

    @Override
    public void line(Mark.Line line) {
        out.append("<polyline points=\"").append(points(line.points())).append("\" fill=\"none\"").append(stroke(line.stroke()))
                .append("/>\n");
    }

    @Override
    public void area(Mark.Area area) {
        out.append("<polygon points=\"").append(points(area.points())).append('"').append(fill(area.fill()))
                .append(stroke(area.stroke())).append("/>\n");
    }

    @Override
    public void disc(Mark.Disc disc) {
        out.append("<circle cx=\"").append(number(disc.centre().x())).append("\" cy=\"").append(number(disc.centre().y()))
                .append("\" r=\"").append(number(disc.radiusPx())).append('"').append(fill(disc.fill()))
                .append(stroke(disc.stroke())).append("/>\n");
    }

    @Override
    public void text(Mark.Text text) {
        if (text.plated()) {
            Bounds plate = Plates.under(type.bounds(text));
            out.append("<rect x=\"").append(number(plate.left())).append("\" y=\"").append(number(plate.top()))
                    .append("\" width=\"").append(number(plate.width())).append("\" height=\"").append(number(plate.height()))
                    .append("\" fill=\"").append(colour(Role.PAPER)).append("\"/>\n");
        }
        out.append("<text x=\"").append(number(text.at().x())).append("\" y=\"").append(number(text.at().y()))
                .append("\" font-size=\"").append(number(text.sizePx())).append('"');
        if (text.anchor() != Mark.Anchor.START) {
            out.append(" text-anchor=\"").append(text.anchor().name().toLowerCase(Locale.ROOT)).append('"');
        }
        if (text.bold()) {
            out.append(" font-weight=\"bold\"");
        }
        out.append(" fill=\"").append(colour(text.tone())).append("\" textLength=\"")
                .append(number(type.widthPx(text.text(), text.sizePx(), text.bold()))).append("\" lengthAdjust=\"spacingAndGlyphs\">")
                .append(escaped(text.text())).append("</text>\n");
    }

    @Override
    public void end(Group group) {
        out.append("</g>\n");
    }

    private String fill(Fill fill) {
        if (fill == null) {
            return " fill=\"none\"";
        }
        String opacity = fill.tone().opacity() < 1 ? " fill-opacity=\"" + number(fill.tone().opacity()) + "\"" : "";
        return (fill.pattern() == Fill.Pattern.SOLID ? " fill=\"" + colour(fill.tone()) + "\""
                : " fill=\"url(#" + patterns.get(fill) + ")\"") + opacity;
    }

    private String stroke(Stroke stroke) {
        if (stroke == null) {
            return "";
        }
        String dash = stroke.dashPx().isEmpty() ? ""
                : " stroke-dasharray=\"" + stroke.dashPx().stream().map(SvgPainter::number).collect(Collectors.joining(" ")) + "\"";
        if (stroke.tone().opacity() < 1) {
            dash += " stroke-opacity=\"" + number(stroke.tone().opacity()) + "\"";
        }
        return " stroke=\"" + colour(stroke.tone()) + "\" stroke-width=\"" + number(stroke.widthPx()) + "\"" + dash;
    }

    private static String points(List<Point> points) {
        return points.stream().map(point -> number(point.x()) + "," + number(point.y())).collect(Collectors.joining(" "));
    }

    private String colour(Tone tone) {
        return colour(theme, tone);
    }

    /** A colour as SVG writes it. */
    public static String colour(Theme theme, Tone tone) {
        return String.format(Locale.ROOT, "#%06X", theme.colour(tone));
    }

    /** A length as SVG writes it: hundredths of a px are finer than any medium shows. */
    public static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** A text that may stand in an element or an attribute. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
