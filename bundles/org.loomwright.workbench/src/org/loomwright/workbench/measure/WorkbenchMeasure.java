// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.measure;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.loomwright.diagram.scene.Group;
import org.loomwright.diagram.scene.Point;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Device;
import org.loomwright.workbench.app.Ids;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.editor.DrawingKind;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.VehicleEditor;

/**
 * Measures in the running workbench what a person waits for: from an edit to its findings and to the drawing that shows them, the
 * frames of a drag, and how long a copy of the work holds up the window. Prints a table, then ends the workbench; nothing is saved.
 */
public final class WorkbenchMeasure {
    /** Option before the vehicle files to measure with. */
    public static final String OPTION = "--measure";
    private static final int WARM = 10;
    private static final int EDITS = 30;
    private static final int FRAMES = 400;
    private static final int ROUND = 100;
    private static final long PATIENCE_NS = 120_000_000_000L;

    private final IWorkbenchPage page;
    private final Display display = Display.getCurrent();

    private WorkbenchMeasure(IWorkbenchPage page) {
        this.page = page;
    }

    /** Measures with the files named after the option, if it is there. */
    public static void ifAsked(IWorkbenchPage page, List<String> arguments) {
        int at = arguments.indexOf(OPTION);
        if (at < 0) {
            return;
        }
        try {
            for (String file : arguments.subList(at + 1, arguments.size())) {
                new WorkbenchMeasure(page).measure(Path.of(file).toAbsolutePath());
            }
        } catch (PartInitException | IOException | RuntimeException problem) {
            System.out.println("not measured: " + problem);
        }
        // what was changed for measuring is not to be asked about
        page.closeAllEditors(false);
        PlatformUI.getWorkbench().close();
    }

    private void measure(Path file) throws PartInitException, IOException {
        VehicleEditor editor = (VehicleEditor) IDE.openEditor(page, file.toUri(), Ids.EDITOR, true);
        VehicleDocument document = editor.document();
        await("the first analysis", () -> document.fresh() && editor.pane().idle());
        System.out.println(file.getFileName() + ": " + all(document, Device.class).size() + " devices, "
                + all(document, Cable.class).size() + " cables");
        edits(editor);
        for (DrawingKind kind : new DrawingKind[] {DrawingKind.PLAN, DrawingKind.LINE}) {
            drag(editor, kind);
        }
    }

    private static <T> List<T> all(VehicleDocument document, Class<T> type) {
        List<T> found = new ArrayList<>();
        document.vehicle().eAllContents().forEachRemaining(each -> {
            if (type.isInstance(each)) {
                found.add(type.cast(each));
            }
        });
        return found;
    }

    private void edits(VehicleEditor editor) throws IOException {
        VehicleDocument document = editor.document();
        Times findings = new Times();
        Times drawn = new Times();
        Times copies = new Times();
        List<Cable> cables = all(document, Cable.class);
        for (int edit = 0; edit < WARM + EDITS; edit++) {
            Cable cable = cables.get(edit * 7 % cables.size());
            BigDecimal section = edit % 2 == 0 ? new BigDecimal("1.5") : new BigDecimal("16");
            // every third edit follows another whose analysis has begun and is given up
            if (edit % 3 == 2) {
                document.run("edit", () -> cable.setSectionMm2(new BigDecimal("2.5")));
                long until = System.nanoTime() + 80_000_000L;
                await("an edit in between", () -> System.nanoTime() > until);
            }
            long start = System.nanoTime();
            document.run("edit", () -> cable.setSectionMm2(section));
            await("the findings", document::fresh);
            long found = System.nanoTime();
            await("the drawing", () -> document.fresh() && editor.pane().idle());
            long seen = System.nanoTime();
            document.content();
            long copied = System.nanoTime();
            if (edit >= WARM) {
                findings.add(found - start);
                drawn.add(seen - start);
                copies.add(copied - seen);
            }
        }
        print("from an edit to its findings", findings);
        print("from an edit to the drawing with them", drawn);
        print("content for the recovery copy, in the window's thread", copies);
    }

    private void drag(VehicleEditor editor, DrawingKind kind) {
        editor.pane().drawing(kind);
        await("the drawing", () -> editor.document().fresh() && editor.pane().idle());
        SceneCanvas canvas = editor.pane().canvas();
        canvas.fit();
        Point from = canvas.hits().elements().stream()
                .filter(id -> editor.document().element(id) instanceof Device)
                .flatMap(id -> canvas.hits().groups(id).stream()).filter(group -> group.kind() == Group.Kind.NODE)
                .map(group -> canvas.viewport().toScreen(group.shape().centre())).findFirst().orElseThrow();
        long[] painted = new long[1];
        canvas.addListener(SWT.Paint, event -> painted[0] = System.nanoTime());
        mouse(canvas, SWT.MouseDown, from.x(), from.y());
        Times frames = new Times();
        for (int frame = 0; frame < WARM + FRAMES; frame++) {
            double turn = 2 * StrictMath.PI * frame / ROUND;
            long before = painted[0];
            long start = System.nanoTime();
            mouse(canvas, SWT.MouseMove, from.x() + 120 * StrictMath.sin(turn), from.y() + 40 + 40 * StrictMath.cos(turn));
            await("a frame", () -> painted[0] != before);
            if (frame >= WARM) {
                frames.add(painted[0] - start);
            }
        }
        Event escape = new Event();
        escape.keyCode = SWT.ESC;
        canvas.notifyListeners(SWT.KeyDown, escape);
        mouse(canvas, SWT.MouseUp, from.x(), from.y());
        print("frame of a drag, " + kind.name().toLowerCase(Locale.ROOT), frames);
    }

    private static void mouse(SceneCanvas canvas, int type, double x, double y) {
        Event event = new Event();
        event.x = (int) x;
        event.y = (int) y;
        event.button = type == SWT.MouseMove ? 0 : 1;
        canvas.notifyListeners(type, event);
    }

    private void await(String what, BooleanSupplier reached) {
        long end = System.nanoTime() + PATIENCE_NS;
        while (!reached.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("waited in vain for " + what);
            }
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }

    private static void print(String what, Times times) {
        System.out.printf(Locale.ROOT, "  %-54s median %7.1f ms   99 %% %7.1f ms   longest %7.1f ms   of %d%n", what, times.ms(0.5),
                times.ms(0.99), times.ms(1), times.count());
    }
}
