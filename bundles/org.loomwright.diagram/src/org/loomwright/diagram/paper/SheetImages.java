// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.loomwright.diagram.paint.PngPainter;
import org.loomwright.diagram.paint.SvgPainter;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Role;

/** Writes one sheet of a drawing as SVG or PNG, or paints it, for example on a printer. */
public final class SheetImages {
    private static final double SCREEN_DPI = 96;

    private SheetImages() {
    }

    /** SVG 1.1 in the size of the paper, UTF-8. */
    public static byte[] svg(Sheet sheet, Theme theme, Type type) {
        Paper paper = sheet.paper();
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(paper.widthMm()).append("mm\" height=\"")
                .append(paper.heightMm()).append("mm\" viewBox=\"0 0 ").append(SvgPainter.number(paper.widthPx())).append(' ')
                .append(SvgPainter.number(paper.heightPx())).append("\" font-family=\"").append(Type.FAMILIES)
                .append("\">\n<title>").append(SvgPainter.escaped(sheet.title())).append("</title>\n<rect width=\"100%\" ")
                .append("height=\"100%\" fill=\"").append(SvgPainter.colour(theme, Role.PAPER)).append("\"/>\n");
        for (int i = 0; i < sheet.layers().size(); i++) {
            Layer layer = sheet.layers().get(i);
            out.append(SvgPainter.part(layer.scene(), layer.view(), layer.at(), theme, type, "layer-" + (i + 1) + "-"));
        }
        return out.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * PNG.
     *
     * @param dpi pixels an inch of paper, 96 for a screen at 100 %
     */
    public static byte[] png(Sheet sheet, Theme theme, Type type, double dpi) {
        double scale = dpi / SCREEN_DPI;
        BufferedImage image = new BufferedImage((int) StrictMath.rint(sheet.paper().widthPx() * scale),
                (int) StrictMath.rint(sheet.paper().heightPx() * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = PngPainter.fine(image, theme);
        graphics.scale(scale, scale);
        paint(sheet, theme, type, graphics);
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
        } catch (IOException memory) {
            throw new UncheckedIOException("the picture could not be put together", memory);
        }
        return out.toByteArray();
    }

    /** Paints a sheet with a graphics whose unit is a px of the paper at 96 dpi; what lies below stays as it is. */
    public static void paint(Sheet sheet, Theme theme, Type type, Graphics2D graphics) {
        for (Layer layer : sheet.layers()) {
            Shape clip = graphics.getClip();
            AffineTransform before = graphics.getTransform();
            Bounds at = layer.at();
            graphics.clip(new Rectangle2D.Double(at.left(), at.top(), at.width(), at.height()));
            graphics.translate(at.left(), at.top());
            graphics.scale(layer.scale(), layer.scale());
            graphics.translate(-layer.view().left(), -layer.view().top());
            PngPainter.paint(layer.scene(), theme, type, graphics);
            graphics.setTransform(before);
            graphics.setClip(clip);
        }
    }
}
