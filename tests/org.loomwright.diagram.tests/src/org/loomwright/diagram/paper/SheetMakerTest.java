// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.loomwright.diagram.earth.EarthScene;
import org.loomwright.diagram.line.LineScene;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.plan.PlanScene;
import org.loomwright.diagram.plan.PlanView;
import org.loomwright.diagram.plan.PlotScale;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Mark;
import org.loomwright.diagram.scene.Mark.Anchor;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.scene.Role;
import org.loomwright.diagram.scene.Scene;
import org.loomwright.diagram.scene.SceneBuilder;
import org.loomwright.diagram.scene.SceneCheck;
import org.loomwright.diagram.scene.Stroke;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.diagram.services.Studied;

class SheetMakerTest {
    private static final TitleData TITLE = PaperDrawings.title("heron");

    private static Scene wide(double widthPx, double heightPx) {
        return new SceneBuilder("wide", widthPx, heightPx).group(Group.Kind.EDGE, "W1", null)
                .line(Stroke.solid(Role.INK, 1), new Point(10, 10), new Point(widthPx - 10, heightPx - 10)).build();
    }

    private static SheetSet sheets(Scene scene, PaperSize size, Boolean landscape) {
        return new SheetMaker(PaperDrawings.TYPE).sheets(scene, new PaperChoice(size, landscape), TITLE);
    }

    private static List<String> texts(Layer layer) {
        return layer.scene().groups().stream().flatMap(group -> group.marks().stream()).filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text()).toList();
    }

    @Test
    void aSmallDrawingIsNotMadeLargerAndLiesWithinTheField() {
        SheetSet set = sheets(wide(400, 300), PaperSize.A4, true);
        assertEquals(1, set.sheets().size());
        Layer drawing = set.sheets().get(0).layers().get(0);
        assertEquals(1, drawing.scale(), 1e-9);
        assertTrue(set.sheets().get(0).paper().field().holds(drawing.at()));
    }

    @Test
    void textIsNotMadeSmallerThanItsLeastSizeOnPaper() {
        for (double width : new double[] {400, 900, 1100, 1500, 3000, 9000}) {
            for (Sheet sheet : sheets(wide(width, 600), PaperSize.A4, null).sheets()) {
                double pt = 12 * 0.75 * sheet.layers().get(0).scale();
                assertTrue(pt >= 7.2 - 1e-9, width + " px: " + pt + " pt");
            }
        }
    }

    @Test
    void sheetsOverlapAndTellTheirNeighbours() {
        SheetSet set = sheets(wide(3000, 400), PaperSize.A4, true);
        assertTrue(set.sheets().size() > 2);
        for (int i = 1; i < set.sheets().size(); i++) {
            Layer left = set.sheets().get(i - 1).layers().get(0);
            Layer right = set.sheets().get(i).layers().get(0);
            double overlapMm = (left.view().right() - right.view().left()) * left.scale() / Paper.PX_PER_MM;
            assertEquals(Tile.OVERLAP_MM, overlapMm, 1e-6);
            assertTrue(texts(set.sheets().get(i).layers().get(1)).contains("\u25C0 sheet " + i));
            assertTrue(texts(set.sheets().get(i).layers().get(1)).contains((i + 1) + " / " + set.sheets().size()));
            assertTrue(texts(set.sheets().get(i - 1).layers().get(1)).contains("sheet " + (i + 1) + " \u25B6"));
        }
    }

    @Test
    void allOfADrawingIsOnItsSheetsAndEmptySheetsAreLeftOut() {
        Scene scene = wide(4000, 3000);
        SheetSet set = sheets(scene, PaperSize.A4, true);
        Bounds field = set.sheets().get(0).paper().field();
        int grid = Tile.count(0.8 * 3982, field.width(), Tile.OVERLAP_MM * Paper.PX_PER_MM)
                * Tile.count(0.8 * 2982, field.height(), Tile.OVERLAP_MM * Paper.PX_PER_MM);
        assertTrue(set.sheets().size() <= grid);
        for (int i = 0; i <= 100; i++) {
            Point on = new Point(10 + i / 100.0 * 3980, 10 + i / 100.0 * 2980);
            assertTrue(set.sheets().stream().anyMatch(sheet -> sheet.layers().get(0).view().holds(on)), on.toString());
        }
        Scene corners = new SceneBuilder("corners", 4000, 3000).group(Group.Kind.NODE, "A", null)
                .rectangle(null, Stroke.solid(Role.INK, 1), 10, 10, 50, 50).group(Group.Kind.NODE, "B", null)
                .rectangle(null, Stroke.solid(Role.INK, 1), 3900, 2900, 50, 50).build();
        assertEquals(2, sheets(corners, PaperSize.A4, true).sheets().size());
    }

    @Test
    void withoutASizeTheSmallestPaperThatTakesItIsTaken() {
        assertEquals(PaperSize.A4, sheets(wide(900, 400), null, null).sheets().get(0).paper().size());
        assertEquals(PaperSize.A2, sheets(wide(2000, 1000), null, null).sheets().get(0).paper().size());
        assertFalse(sheets(wide(400, 900), null, null).sheets().get(0).paper().landscape());
        assertTrue(sheets(wide(20000, 12000), null, null).sheets().size() > 1);
    }

    @Test
    void frameAndTitleBlockOfTheScreenAreLeftOutAndNothingElse() {
        DrawingRequest request = Studied.fleet("otter").get(0).with(Studied.fleet("otter").get(0).study(), "bench");
        for (Scene scene : List.of(PlanScene.of(request, PaperDrawings.TYPE), LineScene.of(request, PaperDrawings.TYPE),
                EarthScene.of(request, PaperDrawings.TYPE))) {
            Scene bare = BareScene.of(scene);
            Bounds ground = BareScene.ground(bare, PaperDrawings.TYPE);
            boolean fields = scene.groups().stream().anyMatch(group -> "fields of the sheet".equals(group.name()));
            assertTrue(fields || ground.left() > 21 && ground.top() > 21 && ground.right() < scene.widthPx() - 21
                    && ground.bottom() < scene.heightPx() - 21, scene.title() + " " + ground);
            int before = scene.groups().stream().filter(group -> !"title block".equals(group.name()))
                    .mapToInt(group -> group.marks().size()).sum();
            assertEquals(fields ? before : before - 1, bare.groups().stream().mapToInt(group -> group.marks().size()).sum(), scene.title());
        }
    }

    @Test
    void theBorderIsLegibleOnEverySizeOfPaper() {
        for (PaperSize size : PaperSize.values()) {
            for (boolean landscape : new boolean[] {true, false}) {
                for (Sheet sheet : sheets(wide(12000, 9000), size, landscape).sheets()) {
                    assertEquals(List.of(), SceneCheck.of(sheet.layers().get(1).scene(), PaperDrawings.TYPE), sheet.paper().toString());
                }
                Layer border = sheets(wide(400, 300), size, landscape).sheets().get(0).layers().get(1);
                assertTrue(texts(border).contains("Survey truck heron"), texts(border).toString());
                assertTrue(String.join(" ", texts(border)).contains("licensed practice come first."), size + " " + landscape);
            }
        }
    }

    @Test
    void aPlanIsToScaleAndItsTextKeepsItsSize() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        PlanPlotter plotter = new PlanPlotter(request, PlanView.ABOVE, PaperDrawings.TYPE);
        for (int scale : new int[] {10, 20, 25}) {
            SheetSet set = plotter.sheets(new PaperChoice(PaperSize.A1, true), scale, TITLE);
            assertEquals("1:" + scale, set.scale());
            Layer drawing = set.sheets().get(0).layers().get(0);
            assertEquals(6200.0 / scale, lengthMm(drawing), 0.01, "length of the vehicle on paper, mm");
            assertTrue(drawing.scale() >= 0.8 && drawing.scale() <= 1, "px of text " + drawing.scale());
        }
    }

    /** Length of the vehicle on paper: the level dimension line, the longest thin line that ends at two arrows. */
    private static double lengthMm(Layer drawing) {
        double longest = 0;
        for (Group group : drawing.scene().groups()) {
            if ("dimensions".equals(group.name())) {
                for (Mark mark : group.marks()) {
                    if (mark instanceof Mark.Line line && line.points().get(0).y() == line.points().get(1).y()) {
                        longest = StrictMath.max(longest, line.points().get(0).distance(line.points().get(1)));
                    }
                }
            }
        }
        return longest * drawing.scale() / Paper.PX_PER_MM;
    }

    @Test
    void theLargestScaleThatFitsIsChosenAndLargerPaperTakesALargerOne() {
        PlanPlotter plotter = new PlanPlotter(Studied.fleet("heron").get(0), PlanView.ABOVE, PaperDrawings.TYPE);
        SheetSet a3 = plotter.sheets(new PaperChoice(PaperSize.A3, true), 0, TITLE);
        SheetSet a0 = plotter.sheets(new PaperChoice(PaperSize.A0, true), 0, TITLE);
        assertEquals(List.of(1, "1:20"), List.of(a3.sheets().size(), a3.scale()));
        assertEquals(List.of(1, "1:10"), List.of(a0.sheets().size(), a0.scale()));
    }

    @Test
    void aPlotThatIsTooSmallForTheVehicleIsNoDrawingAndOneThatNeverFitsIsRefused() {
        DrawingRequest request = Studied.fleet("heron").get(0);
        assertFalse(PlanScene.takes(new PlotScale(1200, 800, 1), request, PlanView.ABOVE));
        assertNull(PlanScene.at(new PlotScale(1200, 500, 0.05), request, PlanView.ABOVE, PaperDrawings.TYPE));
        assertNotNull(PlanScene.at(new PlotScale(2400, 1600, 0.19), request, PlanView.ABOVE, PaperDrawings.TYPE));
        PlanPlotter plotter = new PlanPlotter(request, PlanView.ABOVE, PaperDrawings.TYPE);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> plotter.sheets(new PaperChoice(PaperSize.A4, true), 1, TITLE));
        assertTrue(refused.getMessage().contains("smaller scale than 1:1"), refused.getMessage());
        IllegalArgumentException crowded = assertThrows(IllegalArgumentException.class,
                () -> plotter.sheets(new PaperChoice(PaperSize.A4, true), 200, TITLE));
        assertTrue(crowded.getMessage().contains("larger scale"), crowded.getMessage());
    }

    @Test
    void plansOfTheFleetAreLegibleOnPaper() {
        for (String name : List.of("heron", "otter", "beaver")) {
            PlanView view = name.equals("beaver") ? PlanView.SIDE : PlanView.ABOVE;
            for (Sheet sheet : new PlanPlotter(Studied.fleet(name).get(0), view, PaperDrawings.TYPE)
                    .sheets(new PaperChoice(PaperSize.A3, null), 0, TITLE).sheets()) {
                assertEquals(List.of(), SceneCheck.of(sheet.layers().get(0).scene(), PaperDrawings.TYPE), name + " " + view);
            }
        }
    }

    @Test
    void svgHasTheSizeOfThePaperAndPngItsPixels() throws IOException {
        Sheet sheet = sheets(wide(400, 300), PaperSize.A4, true).sheets().get(0);
        String svg = new String(SheetImages.svg(sheet, Theme.print(), PaperDrawings.TYPE), StandardCharsets.UTF_8);
        assertTrue(svg.contains("width=\"297mm\" height=\"210mm\" viewBox=\"0 0 1122.52 793.7\""), svg.substring(0, 300));
        assertTrue(svg.contains("data-element=\"W1\"") && svg.contains(">Survey truck heron<"));
        BufferedImage png = ImageIO.read(new ByteArrayInputStream(SheetImages.png(sheet, Theme.print(), PaperDrawings.TYPE, 192)));
        assertEquals(List.of(2245, 1587), List.of(png.getWidth(), png.getHeight()));
        assertEquals(0xFFFFFF, png.getRGB(3, 3) & 0xFFFFFF);
    }

    @Test
    void whatLiesBeyondAPartOfADrawingIsNotSeen() throws IOException {
        Scene scene = new SceneBuilder("t", 400, 300).group(Group.Kind.EDGE, "W1", null)
                .line(Stroke.solid(Role.INK, 20), new Point(0, 100), new Point(400, 100))
                .text(20, 50, "seen", 12, false, Anchor.START, Role.INK).build();
        Sheet sheet = new Sheet(new Paper(PaperSize.A4, true), "part",
                List.of(new Layer(scene, new Bounds(0, 0, 200, 150), new Bounds(100, 100, 300, 250))));
        BufferedImage png = ImageIO.read(new ByteArrayInputStream(SheetImages.png(sheet, Theme.print(), PaperDrawings.TYPE, 96)));
        assertEquals(0x1B1F24, png.getRGB(200, 200) & 0xFFFFFF);
        assertEquals(0xFFFFFF, png.getRGB(310, 200) & 0xFFFFFF);
    }
}
