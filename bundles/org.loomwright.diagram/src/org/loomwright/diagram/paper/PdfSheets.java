// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.loomwright.diagram.paint.PdfPainter;
import org.loomwright.diagram.paint.PdfType;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.paint.Type;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Role;

/** Writes the sheets of a drawing as one PDF document; the same drawing gives the same bytes. */
public final class PdfSheets {
    private static final double PT_PER_MM = 72 / 25.4;
    private static final float PT_PER_PX = 0.75f;
    private static final int WHITE = 0xFFFFFF;

    private PdfSheets() {
    }

    /** The document. */
    public static byte[] write(SheetSet set, Theme theme, Type type) {
        try (PDDocument document = new PDDocument()) {
            // otherwise made from the clock
            document.setDocumentId(id(set));
            document.setDocumentInformation(information(set.title()));
            PdfType pdfType = PdfType.load(document);
            for (Sheet sheet : set.sheets()) {
                page(document, sheet, theme, type, pdfType);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException memory) {
            throw new UncheckedIOException("the document could not be put together", memory);
        }
    }

    private static long id(SheetSet set) {
        CRC32 sum = new CRC32();
        sum.update((set.title() + set.scale()).getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    private static PDDocumentInformation information(TitleData title) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title.title() + ", " + title.document());
        information.setSubject(title.file());
        information.setAuthor(title.drawnBy());
        information.setCreator(title.program());
        information.setCreationDate(GregorianCalendar.from(title.date().atStartOfDay(ZoneOffset.UTC)));
        return information;
    }

    private static void page(PDDocument document, Sheet sheet, Theme theme, Type type, PdfType pdfType) throws IOException {
        float width = (float) (sheet.paper().widthMm() * PT_PER_MM);
        float height = (float) (sheet.paper().heightMm() * PT_PER_MM);
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            int ground = theme.colour(Role.PAPER);
            if (ground != WHITE) {
                out.setNonStrokingColor((ground >> 16 & 0xFF) / 255f, (ground >> 8 & 0xFF) / 255f, (ground & 0xFF) / 255f);
                out.addRect(0, 0, width, height);
                out.fill();
            }
            out.transform(new Matrix(PT_PER_PX, 0, 0, -PT_PER_PX, 0, height));
            for (Layer layer : sheet.layers()) {
                Bounds at = layer.at();
                float scale = (float) layer.scale();
                out.saveGraphicsState();
                out.addRect((float) at.left(), (float) at.top(), (float) at.width(), (float) at.height());
                out.clip();
                out.transform(new Matrix(scale, 0, 0, scale, (float) (at.left() - scale * layer.view().left()),
                        (float) (at.top() - scale * layer.view().top())));
                PdfPainter.paint(layer.scene(), theme, type, pdfType, out);
                out.restoreGraphicsState();
            }
        }
    }
}
