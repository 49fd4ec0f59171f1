// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paint;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The typeface of drawings within a PDF document: those of its characters that are used are embedded. */
public final class PdfType {
    private static final String UNKNOWN = "\uFFFD";
    private final Face regular;
    private final Face bold;

    private PdfType(Face regular, Face bold) {
        this.regular = regular;
        this.bold = bold;
    }

    private record Face(PDType0Font font, CmapLookup characters) {
        static Face load(PDDocument document, String file) throws IOException {
            try (InputStream in = Type.file(file)) {
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
                // letters stay letters: a ligature would not be found by a search
                face.setEnableGsub(false);
                return new Face(PDType0Font.load(document, face, true), face.getUnicodeCmapLookup());
            }
        }
    }

    /** Loads the typeface into a document, which keeps it until it is closed. */
    public static PdfType load(PDDocument document) throws IOException {
        return new PdfType(Face.load(document, Type.REGULAR), Face.load(document, Type.BOLD));
    }

    PDType0Font font(boolean strong) {
        return (strong ? bold : regular).font();
    }

    /** The text with a sign in place of each character that the typeface does not have. */
    String shown(String text, boolean strong) {
        CmapLookup known = (strong ? bold : regular).characters();
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(character -> shown.append(known.getGlyphId(character) == 0 ? UNKNOWN
                : Character.toString(character)));
        return shown.toString();
    }
}
