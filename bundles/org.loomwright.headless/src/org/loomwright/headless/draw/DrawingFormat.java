// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.nio.file.Path;
import java.util.Locale;
import org.loomwright.headless.BadInputException;

/** Formats of drawings on paper. */
enum DrawingFormat {
    SVG, PNG, PDF;

    /**
     * The format that the name of a file says.
     *
     * @throws BadInputException when it says none
     */
    static DrawingFormat of(Path target) {
        String name = target.toString().toLowerCase(Locale.ROOT);
        for (DrawingFormat format : values()) {
            if (name.endsWith("." + format.name().toLowerCase(Locale.ROOT))) {
                return format;
            }
        }
        throw new BadInputException("cannot write " + target + ": its name must end with .svg, .png or .pdf");
    }
}
