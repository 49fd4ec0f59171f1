// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Display;
import org.loomwright.diagram.paint.Type;

/**
 * The typeface of the drawings on a display: measured by its own metrics, drawn with the bundled files. Fonts are made ten times
 * as large as they are drawn, since the toolkit rounds the advance of every glyph; drawn at a tenth they keep their widths.
 */
public final class Typeface {
    /** How much larger than drawn the fonts are. */
    public static final int OVERSIZE = 10;
    private static final double POINTS_PER_INCH = 72;
    private static final String FAMILY = "DejaVu Sans Condensed";
    private static final String KEY = Typeface.class.getName();

    private final Display display;
    private final Type type;
    private final Map<String, Font> fonts = new HashMap<>();

    private Typeface(Display display) {
        this.display = display;
        // metrics of the font file are read without a window system of their own
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
        type = Type.load();
        load("DejaVuSansCondensed.ttf");
        load("DejaVuSansCondensed-Bold.ttf");
    }

    /** The typeface of a display; made once, gone with it. */
    public static Typeface of(Display display) {
        if (display.getData(KEY) instanceof Typeface known) {
            return known;
        }
        Typeface made = new Typeface(display);
        display.setData(KEY, made);
        display.disposeExec(made::dispose);
        return made;
    }

    /** Its metrics. */
    public Type type() {
        return type;
    }

    /** The font of a size, {@link #OVERSIZE} times as large. */
    Font oversize(double sizePx, boolean bold) {
        return font(sizePx * OVERSIZE, bold);
    }

    /** The font of a size as it is. */
    public Font font(double sizePx, boolean bold) {
        return fonts.computeIfAbsent(sizePx + (bold ? "b" : ""), key -> {
            FontData data = new FontData(FAMILY, 10, bold ? SWT.BOLD : SWT.NORMAL);
            data.height = (float) (sizePx * POINTS_PER_INCH / display.getDPI().y);
            return new Font(display, data);
        });
    }

    private void load(String file) {
        // the toolkit reads font files from disk only
        try (InputStream in = Type.class.getResourceAsStream("/fonts/" + file)) {
            Path copy = Files.createTempFile("loomwright-", "-" + file);
            copy.toFile().deleteOnExit();
            Files.copy(in, copy, StandardCopyOption.REPLACE_EXISTING);
            if (!display.loadFont(copy.toString())) {
                ILog.of(Typeface.class).warn("the display did not take the bundled font " + file);
            }
        } catch (IOException e) {
            ILog.of(Typeface.class).warn("the bundled font " + file + " could not be unpacked; another one is shown", e);
        }
    }

    private void dispose() {
        fonts.values().forEach(Font::dispose);
        fonts.clear();
    }
}
