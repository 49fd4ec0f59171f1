// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.draw;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.paper.PdfSheets;
import org.loomwright.diagram.paper.Sheet;
import org.loomwright.diagram.paper.SheetImages;
import org.loomwright.diagram.paper.SheetSet;
import org.loomwright.headless.OutputFile;

/** Writes the sheets of a drawing: one PDF, or an SVG or PNG for each sheet. */
final class SheetFiles {
    private static final double SCREEN_DPI = 96;
    private final Path target;
    private final DrawingFormat format;

    /** Files of a name and the format that the name says; the folder is checked before any work begins. */
    SheetFiles(Path target) {
        this.target = target;
        format = DrawingFormat.of(target);
        new OutputFile(target).checkPlace();
    }

    /**
     * Writes them.
     *
     * @param scale pixels of a PNG for each pixel of the paper at 96 dpi
     * @return the files, in the order of the sheets
     */
    List<Path> write(SheetSet set, Theme theme, Type type, double scale) {
        if (format == DrawingFormat.PDF) {
            byte[] document = PdfSheets.write(set, theme, type);
            new OutputFile(target).write(out -> out.write(document));
            return List.of(target);
        }
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < set.sheets().size(); i++) {
            Sheet sheet = set.sheets().get(i);
            byte[] picture = format == DrawingFormat.SVG ? SheetImages.svg(sheet, theme, type)
                    : SheetImages.png(sheet, theme, type, scale * SCREEN_DPI);
            Path file = set.sheets().size() == 1 ? target : numbered(i + 1);
            new OutputFile(file).write(out -> out.write(picture));
            files.add(file);
        }
        return files;
    }

    private Path numbered(int sheet) {
        String name = target.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return target.resolveSibling(name.substring(0, dot) + "-" + sheet + name.substring(dot));
    }
}
