// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.loomwright.diagram.scene.TextMeasure;

/**
 * The one typeface of all drawings, DejaVu Sans Condensed, from the bundle. All layout measures with its own fractional
 * metrics, so that a drawing is the same in every medium.
 */
public final class Type implements TextMeasure {
    /** Families for media that name a font, the bundled one first. */
    public static final String FAMILIES = "'DejaVu Sans Condensed','DejaVu Sans',sans-serif";
    /** File of the regular face. */
    static final String REGULAR = "DejaVuSansCondensed.ttf";
    /** File of the bold face. */
    static final String BOLD = "DejaVuSansCondensed-Bold.ttf";
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final Font regular;
    private final Font bold;

    private Type(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /** Loads the typeface. */
    public static Type load() {
        return new Type(font(REGULAR), font(BOLD));
    }

    /** The font in a size, px. */
    public Font font(double sizePx, boolean strong) {
        return (strong ? bold : regular).deriveFont((float) sizePx);
    }

    @Override
    public double widthPx(String text, double sizePx, boolean strong) {
        return font(sizePx, strong).getStringBounds(text, EXACT).getWidth();
    }

    /** A file of the typeface. */
    static InputStream file(String name) {
        return Type.class.getResourceAsStream("/fonts/" + name);
    }

    private static Font font(String file) {
        try (InputStream in = file(file)) {
            return Font.createFont(Font.TRUETYPE_FONT, in)
                    .deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON));
        } catch (IOException | FontFormatException damaged) {
            throw new IllegalStateException("the bundled font " + file + " is damaged", damaged);
        }
    }
}
