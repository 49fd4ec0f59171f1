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
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final Font regular;
    private final Font bold;

    private Type(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /** Loads the typeface. */
    public static Type load() {
        return new Type(font("DejaVuSansCondensed.ttf"), font("DejaVuSansCondensed-Bold.ttf"));
    }

    /** The font in a size, px. */
    public Font font(double sizePx, boolean strong) {
        return (strong ? bold : regular).deriveFont((float) sizePx);
    }

    @Override
    public double widthPx(String text, double sizePx, boolean strong) {
        return font(sizePx, strong).getStringBounds(text, EXACT).getWidth();
    }

    private static Font font(String file) {
        try (InputStream in = Type.class.getResourceAsStream("/fonts/" + file)) {
            return Font.createFont(Font.TRUETYPE_FONT, in)
                    .deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON));
        } catch (IOException | FontFormatException damaged) {
            throw new IllegalStateException("the bundled font " + file + " is damaged", damaged);
        }
    }
}
