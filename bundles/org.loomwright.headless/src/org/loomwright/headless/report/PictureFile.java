// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.loomwright.diagram.paint.PngPainter;
import org.loomwright.diagram.paint.SvgPainter;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.headless.BadInputException;
import org.loomwright.headless.EnumWord;
import org.loomwright.headless.OutputFile;

/** A picture to be written, SVG or PNG by the ending of its name. */
public final class PictureFile {
    private static final double LARGEST_SCALE = 10;
    private final Path target;
    private final boolean png;

    /** Ground of a drawing. */
    public enum Ground {
        LIGHT, DARK;

        /** Its word on the command line. */
        public static final class Word extends EnumWord<Ground> {
            public Word() {
                super(Ground.class);
            }
        }

        Theme theme() {
            return this == DARK ? Theme.dark() : Theme.light();
        }
    }

    /**
     * A picture.
     *
     * @throws BadInputException when the name has another ending, or the file has no place
     */
    public PictureFile(Path target) {
        this.target = target;
        String name = target.toString().toLowerCase(Locale.ROOT);
        png = name.endsWith(".png");
        if (!png && !name.endsWith(".svg")) {
            throw new BadInputException("cannot write " + target + ": its name must end with .svg or .png");
        }
        new OutputFile(target).checkPlace();
    }

    /**
     * Checks the option {@code --scale}.
     *
     * @throws BadInputException when it is not above 0 and at most 10
     */
    public static void checkScale(double scale) {
        if (!(scale > 0) || scale > LARGEST_SCALE) {
            throw new BadInputException("--scale must be above 0 and at most 10, not " + scale);
        }
    }

    /**
     * Writes a scene.
     *
     * @param scale pixels of a PNG for each pixel of the drawing
     */
    public void write(Scene scene, Type type, Ground ground, double scale) {
        new OutputFile(target).write(out -> {
            if (png) {
                PngPainter.write(scene, ground.theme(), type, scale, out);
            } else {
                out.write(SvgPainter.paint(scene, ground.theme(), type).getBytes(StandardCharsets.UTF_8));
            }
        });
    }
}
