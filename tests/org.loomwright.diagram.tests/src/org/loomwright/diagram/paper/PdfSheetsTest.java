// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.earth.EarthScene;
import org.loomwright.diagram.line.LineScene;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.scene.Fill;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.scene.Veil;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Studied;

class PdfSheetsTest {
    private static final double PT_PER_MM = 72 / 25.4;

    private static SheetSet sheets(Scene scene, PaperSize size, Boolean landscape) {
        return new SheetMaker(PaperDrawings.TYPE).sheets(scene, new PaperChoice(size, landscape), PaperDrawings.title("heron"));
    }

    private static byte[] pdf(SheetSet set) {
        return PdfSheets.write(set, Theme.print(), PaperDrawings.TYPE);
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    /** One of each kind of mark, and a text with kerning, a minus and a sign that the typeface does not have. */
    private static Scene everything() {
        return new SceneBuilder("t", 800, 500).group(null, "all")
                .line(Stroke.dashed(Role.INK, 2, 8.0, 4.0), new Point(20, 30), new Point(400, 30))
                .rectangle(Fill.hatched(Role.HOT), Stroke.solid(Role.INK, 1), 30, 50, 200, 100)
                .rectangle(Fill.dotted(Role.WET), null, 240, 50, 200, 100)
                .disc(Fill.solid(Role.PLATE), Stroke.solid(Veil.selection(), 10), 500, 100, 30)
                .platedText(60, 200, "AVATAR \u2212W12 fi 2.5 mm\u00b2 \u03A9 \u4E00", 12, true, Anchor.START, Role.INK).build();
    }

    @Test
    void theSameDrawingGivesTheSameBytesWhateverTheClockSays() throws InterruptedException {
        byte[] first = pdf(sheets(everything(), PaperSize.A4, true));
        Thread.sleep(3);
        assertArrayEquals(first, pdf(sheets(everything(), PaperSize.A4, true)));
        assertEquals("%PDF-", new String(first, 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void pagesHaveTheSizeOfTheirPaper() throws IOException {
        for (PaperSize size : PaperSize.values()) {
            for (boolean landscape : new boolean[] {true, false}) {
                try (PDDocument document = Loader.loadPDF(pdf(sheets(everything(), size, landscape)))) {
                    PDRectangle box = document.getPage(0).getMediaBox();
                    assertEquals(PT_PER_MM * (landscape ? size.longMm() : size.shortMm()), box.getWidth(), 0.01, size.name());
                    assertEquals(PT_PER_MM * (landscape ? size.shortMm() : size.longMm()), box.getHeight(), 0.01, size.name());
                }
            }
        }
    }

    @Test
    void textCanBeFoundAndCopied() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(sheets(everything(), PaperSize.A4, true)))) {
            String text = text(document, 1);
            for (String each : List.of("AVATAR \u2212W12 fi 2.5 mm\u00b2 \u03A9 \uFFFD", "Survey truck heron", "spread, adopted",
                    "2026-05-04", "heron.vehicle, SHA-256 0f1e2d3c4b5a", "1 / 1", "Isolate the batteries")) {
                assertTrue(text.contains(each), each + " in " + text);
            }
        }
    }

    @Test
    void fontsAreEmbeddedAndNothingIsAnImage() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(sheets(everything(), PaperSize.A4, true)))) {
            PDPage page = document.getPage(0);
            List<String> fonts = new ArrayList<>();
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertTrue(font.isEmbedded(), font.getName());
                fonts.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
            }
            fonts.sort(null);
            assertEquals(List.of("DejaVuSansCondensed", "DejaVuSansCondensed-Bold"), fonts);
            assertEquals(0, PageMarks.of(page).images());
        }
    }

    @Test
    void everyMarkLiesWithinThePaperAndTheDrawingWithinTheFrame() throws IOException {
        DrawingRequest request = Studied.fleet("otter").get(0);
        List<SheetSet> sets = List.of(
                new PlanPlotter(request, PlanView.ABOVE, PaperDrawings.TYPE).sheets(new PaperChoice(PaperSize.A4, true), 10,
                        PaperDrawings.title("otter")),
                sheets(LineScene.of(request, PaperDrawings.TYPE), PaperSize.A4, null),
                sheets(EarthScene.of(request.with(request.study(), "bench"), PaperDrawings.TYPE), PaperSize.A3, null));
        for (SheetSet set : sets) {
            try (PDDocument document = Loader.loadPDF(pdf(set))) {
                assertEquals(set.sheets().size(), document.getNumberOfPages());
                for (PDPage page : document.getPages()) {
                    PDRectangle box = page.getMediaBox();
                    PageMarks marks = PageMarks.of(page);
                    for (Point2D point : marks.marks()) {
                        assertTrue(point.getX() >= 0 && point.getX() <= box.getWidth() && point.getY() >= 0
                                && point.getY() <= box.getHeight(), set.title().title() + " " + point);
                    }
                    assertTrue(marks.letters().size() > 100);
                    double filed = 20 * PT_PER_MM;
                    double border = 10 * PT_PER_MM;
                    for (Point2D letter : marks.letters()) {
                        assertTrue(letter.getX() >= filed && letter.getX() <= box.getWidth() - border && letter.getY() >= border
                                && letter.getY() <= box.getHeight() - border, set.title().title() + " " + letter);
                    }
                }
            }
        }
        assertTrue(sets.get(0).sheets().size() > 1, "1:10 takes more than one A4");
    }

    @Test
    void theDocumentSaysWhatItIsAndWhenItWasDrawn() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(sheets(everything(), PaperSize.A4, true)))) {
            assertEquals("Survey truck heron, Plan, seen from above", document.getDocumentInformation().getTitle());
            assertEquals("Loomwright 0.1.0", document.getDocumentInformation().getCreator());
            assertEquals("2026-05-04T00:00:00Z", document.getDocumentInformation().getCreationDate().toInstant().toString());
        }
    }

    @Test
    void aDarkDrawingCoversThePaper() throws IOException {
        SheetSet set = sheets(everything(), PaperSize.A4, true);
        assertFalse(java.util.Arrays.equals(pdf(set), PdfSheets.write(set, Theme.dark(), PaperDrawings.TYPE)));
        try (PDDocument document = Loader.loadPDF(PdfSheets.write(set, Theme.dark(), PaperDrawings.TYPE))) {
            PageMarks marks = PageMarks.of(document.getPage(0));
            assertTrue(marks.marks().stream().anyMatch(point -> point.getX() == 0 && point.getY() == 0));
        }
    }
}
