// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.paint.Theme;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.workbench.live.FleetCopy;

/** The drawings of the editor on a display. Pictures go to the folder named by loomwright.screenshots. */
class DrawingPaneTest {
    private static final long MOST_MS = 60_000;
    @TempDir
    private Path folder;
    private Display display;
    private Shell shell;
    private VehicleDocument document;
    private DrawingPane pane;

    @BeforeEach
    void window() {
        display = Display.getDefault();
        shell = new Shell(display, SWT.SHELL_TRIM);
        shell.setLayout(new FillLayout());
        shell.setBounds(0, 0, 1280, 860);
    }

    @AfterEach
    void close() {
        if (document != null) {
            document.dispose();
        }
        shell.dispose();
    }

    private void open(String vehicle) throws IOException {
        document = VehicleDocument.open(FleetCopy.vehicle(folder, vehicle), new DisplayThread(display));
        pane = new DrawingPane(shell, document);
        shell.open();
        analysed();
        drawn(DrawingKind.PLAN);
    }

    private void until(String what, BooleanSupplier reached) {
        long end = System.currentTimeMillis() + MOST_MS;
        while (!reached.getAsBoolean()) {
            assertTrue(System.currentTimeMillis() < end, what);
            if (!display.readAndDispatch()) {
                rest();
            }
        }
    }

    /** Leaves the processor to the jobs that are waited for. */
    private static void rest() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private void analysed() {
        until("an analysis", document::fresh);
        assertTrue(document.analysis().worked());
    }

    private void drawn(DrawingKind kind) {
        pane.drawing(kind);
        until("the drawing " + kind, () -> pane.idle() && !pane.canvas().scene().groups().isEmpty());
    }

    private void picture(String name) throws IOException {
        String to = System.getProperty("loomwright.screenshots");
        if (to == null) {
            return;
        }
        long end = System.currentTimeMillis() + 400;
        until("time", () -> System.currentTimeMillis() > end);
        Files.createDirectories(Path.of(to));
        Rectangle room = shell.getBounds();
        Image image = new Image(display, room.width, room.height);
        GC gc = new GC(display);
        gc.copyArea(image, room.x, room.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData(100)};
        loader.save(Path.of(to, name + ".png").toString(), SWT.IMAGE_PNG);
        image.dispose();
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "otter", "beaver"})
    void everyDrawingOfAVehicleShowsItsDevices(String vehicle) throws IOException {
        open(vehicle);
        for (DrawingKind kind : DrawingKind.values()) {
            drawn(kind);
            assertTrue(pane.canvas().hits().elements().size() > 5, kind + " of " + vehicle);
            assertTrue(pane.canvas().scene().groups().stream().filter(group -> group.element() != null)
                    .map(Group::element).allMatch(id -> document.element(id) != null), "elements of " + kind);
            picture(vehicle + "-" + kind.name().toLowerCase(java.util.Locale.ROOT));
        }
    }

    @Test
    void overlaysAndTheDarkThemeAreDrawn() throws IOException {
        open("heron");
        document.showCase(document.analysis().context().plan().cases().get(1).name());
        for (OverlayKind overlay : OverlayKind.values()) {
            pane.overlay(overlay);
            drawn(DrawingKind.PLAN);
            assertTrue(pane.canvas().scene().groups().stream().anyMatch(group -> group.name() != null
                    && group.name().contains(overlay.words())), "legend of " + overlay);
        }
        pane.theme(Theme.dark());
        picture("heron-plan-dark");
        drawn(DrawingKind.LINE);
        picture("heron-line-dark");
    }

    @Test
    void aDraggedPlaceMovesInMillimetresAndUndoPutsItBack() throws IOException {
        open("otter");
        byte[] before = document.file().resource().toBytes();
        String id = "siren";
        Place place = (Place) document.element(id);
        BigDecimal x = place.getXMm();
        Bounds room = pane.canvas().hits().groups(id).stream().filter(group -> group.kind() == Group.Kind.PORT).findFirst()
                .orElseThrow().shape();
        Point from = pane.canvas().viewport().toScreen(room.centre());
        mouse(SWT.MouseDown, from.x(), from.y());
        assertEquals(Set.of(id), pane.canvas().selection());
        mouse(SWT.MouseMove, from.x() + 20, from.y());
        mouse(SWT.MouseMove, from.x() + 60, from.y());
        assertEquals(x, place.getXMm(), "nothing is written before the button is let go");
        mouse(SWT.MouseUp, from.x() + 60, from.y());
        assertTrue(place.getXMm().compareTo(x) > 0);
        assertTrue(document.dirty());
        analysed();
        document.domain().getCommandStack().undo();
        assertArrayEquals(before, document.file().resource().toBytes());
        assertFalse(document.dirty());
    }

    @Test
    void escapeGivesUpADrag() throws IOException {
        open("otter");
        String id = pane.canvas().hits().elements().stream().filter(each -> document.element(each) instanceof Device).findFirst()
                .orElseThrow();
        Point from = pane.canvas().viewport().toScreen(pane.canvas().hits().bounds(id).centre());
        mouse(SWT.MouseDown, from.x(), from.y());
        mouse(SWT.MouseMove, from.x() + 60, from.y());
        Event key = new Event();
        key.keyCode = SWT.ESC;
        pane.canvas().notifyListeners(SWT.KeyDown, key);
        mouse(SWT.MouseUp, from.x() + 60, from.y());
        assertFalse(document.dirty());
    }

    @Test
    void aFindingIsSeenOnTheDrawingAndGoesAfterUndo() throws IOException {
        open("heron");
        int badges = badges();
        Cable cable = document.arrangement().getCables().stream()
                .filter(each -> each.getSectionMm2() != null && each.getSectionMm2().doubleValue() >= 10).findFirst()
                .orElseThrow();
        document.run("thinner", () -> cable.setSectionMm2(new BigDecimal("0.75")));
        analysed();
        drawn(DrawingKind.PLAN);
        assertTrue(badges() > badges);
        String element = document.findings().get(0).element();
        document.reveal(element);
        pane.showCard(element);
        picture("heron-plan-findings");
        pane.hover(null, null);
        document.domain().getCommandStack().undo();
        analysed();
        drawn(DrawingKind.PLAN);
        assertEquals(badges, badges());
    }

    @Test
    void searchSelectsWhatItFinds() throws IOException {
        open("heron");
        pane.find("M41");
        assertEquals("M41", document.selection().single().substring(document.selection().single().lastIndexOf('/') + 1));
    }

    @Test
    void zoomStaysUnderThePointer() throws IOException {
        open("otter");
        Point pointer = new Point(300, 200);
        Point sheet = pane.canvas().viewport().toSheet(pointer);
        Event wheel = new Event();
        wheel.x = 300;
        wheel.y = 200;
        wheel.count = 3;
        wheel.stateMask = SWT.MOD1;
        double scale = pane.canvas().viewport().scale();
        pane.canvas().notifyListeners(SWT.MouseVerticalWheel, wheel);
        assertNotEquals(scale, pane.canvas().viewport().scale());
        assertEquals(sheet.x(), pane.canvas().viewport().toSheet(pointer).x(), 1e-6);
        assertEquals(sheet.y(), pane.canvas().viewport().toSheet(pointer).y(), 1e-6);
    }

    private int badges() {
        return (int) pane.canvas().scene().groups().stream().filter(group -> group.kind() == Group.Kind.BADGE).count();
    }

    private void mouse(int type, double x, double y) {
        Event event = new Event();
        event.x = (int) x;
        event.y = (int) y;
        event.button = type == SWT.MouseMove ? 0 : 1;
        pane.canvas().notifyListeners(type, event);
    }
}
