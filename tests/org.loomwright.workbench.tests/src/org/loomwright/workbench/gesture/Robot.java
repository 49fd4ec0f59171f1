// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.loomwright.diagram.scene.Point;
import org.loomwright.workbench.app.Ui;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.editor.DrawingPane;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/**
 * A person at the running workbench: moves the mouse of the screen over elements of a drawing, presses its buttons and the keys
 * of the keyboard, and looks at what comes of it. Every step waits for the window to have got it, never for a time.
 */
final class Robot implements AutoCloseable {
    private static final int[] INPUT = {SWT.MouseMove, SWT.MouseDown, SWT.MouseUp, SWT.MouseDoubleClick, SWT.KeyDown, SWT.KeyUp,
        SWT.Show, SWT.Hide, SWT.Selection};
    private final Display display;
    private final XServer server;
    private final VehicleDocument document;
    private final DrawingPane pane;
    private final List<Event> seen = new ArrayList<>();
    private final Listener watch = seen::add;

    /** At the drawings of an open vehicle. */
    Robot(VehicleDocument document, DrawingPane pane) throws IOException {
        this.document = document;
        this.pane = pane;
        display = pane.getDisplay();
        server = XServer.open();
        for (int type : INPUT) {
            display.addFilter(type, watch);
        }
    }

    SceneCanvas canvas() {
        return pane.canvas();
    }

    /** Waits until what is drawn and found is that of the model as it is. */
    void settled() {
        Ui.await("the drawing", () -> document.fresh() && pane.idle());
    }

    /** A point of the window at which an element can be pressed. */
    Point spot(String id) {
        return new Spots(canvas()).of(id);
    }

    /** Moves the pointer onto an element. */
    void moveTo(String id) {
        Point at = null;
        // till it stays there: the window may still be finding its room
        while (!spot(id).equals(at)) {
            at = spot(id);
            moveTo(at);
        }
    }

    /** Moves the pointer to a point of the canvas, px of the window. */
    void moveTo(Point at) {
        moveTo(canvas(), at.x(), at.y());
    }

    /** Moves the pointer to a point of a control. */
    void moveTo(Control control, double x, double y) {
        org.eclipse.swt.graphics.Point to = control.toDisplay((int) StrictMath.rint(x), (int) StrictMath.rint(y));
        if (display.getCursorLocation().equals(to)) {
            return;
        }
        // one step short of it first: a pointer that comes out of another window only enters, it is not told to move
        server.pointer(to.x - 1, to.y);
        expect("the pointer", () -> server.pointer(to.x, to.y), event -> event.type == SWT.MouseMove
                && event.widget instanceof Control over && over.toDisplay(event.x, event.y).equals(to));
    }

    void press() {
        press(1);
    }

    void press(int button) {
        expect("the button", () -> server.button(button, true), event -> event.type == SWT.MouseDown);
    }

    void release() {
        release(1);
    }

    void release(int button) {
        expect("the button let go", () -> server.button(button, false), event -> event.type == SWT.MouseUp);
    }

    void click() {
        press();
        release();
    }

    void click(String id) {
        moveTo(id);
        click();
    }

    void shiftClick(String id) {
        moveTo(id);
        server.key(server.stroke(Keyboard.symbol(SWT.SHIFT)).code(), true);
        click();
        server.key(server.stroke(Keyboard.symbol(SWT.SHIFT)).code(), false);
        drain();
    }

    /** Both clicks are sent before the window gets the first, so that a slow machine cannot pull them apart. */
    void doubleClick(String id) {
        moveTo(id);
        seen.clear();
        for (int times = 0; times < 2; times++) {
            server.button(1, true);
            server.button(1, false);
        }
        Ui.await("a double click to arrive", () -> seen.stream().anyMatch(event -> event.type == SWT.MouseDoubleClick)
                && seen.get(seen.size() - 1).type == SWT.MouseUp);
        drain();
    }

    /** Drags from an element by px of the window, in steps as a hand does. */
    void dragBy(String id, double dx, double dy) {
        moveTo(id);
        Point from = spot(id);
        drag(from, new Point(from.x() + dx, from.y() + dy));
    }

    /** Drags from an element onto another. */
    void drag(String id, String onto) {
        moveTo(id);
        drag(spot(id), spot(onto));
    }

    void drag(Point from, Point to) {
        moveTo(from);
        press();
        for (int step = 1; step <= 4; step++) {
            moveTo(new Point(from.x() + (to.x() - from.x()) * step / 4, from.y() + (to.y() - from.y()) * step / 4));
        }
        release();
    }

    /** Drags the end of an edge that lies at one element onto another. */
    void dragEnd(String edge, String at, String onto) {
        drag(new Spots(canvas()).end(edge, at), spot(onto));
    }

    /** Presses a key with modifiers held: SWT's codes, or a lower-case character. */
    void key(int key, int... modifiers) {
        stroke(server.stroke(Keyboard.symbol(key)).code(), modifiers);
    }

    /** Writes a text. */
    void type(String text) {
        for (char letter : text.toCharArray()) {
            XServer.Stroke stroke = server.stroke(letter);
            stroke(stroke.code(), stroke.shift() ? new int[] {SWT.SHIFT} : new int[0]);
        }
    }

    /** Keys of commands never arrive as pressed, since the workbench takes them; but all are let go. */
    private void stroke(int code, int... modifiers) {
        seen.clear();
        for (int modifier : modifiers) {
            server.key(server.stroke(Keyboard.symbol(modifier)).code(), true);
        }
        server.key(code, true);
        server.key(code, false);
        for (int modifier : modifiers) {
            server.key(server.stroke(Keyboard.symbol(modifier)).code(), false);
        }
        Ui.await("the key to arrive", () -> seen.stream().filter(event -> event.type == SWT.KeyUp).count() > modifiers.length);
        drain();
    }

    /** Walks over the elements of the drawing by keys until one is selected. */
    void walkTo(String id) {
        int most = canvas().hits().elements().size() + 1;
        for (int step = 0; step < most; step++) {
            if (canvas().selection().equals(Set.of(id))) {
                return;
            }
            key(SWT.TAB);
        }
        throw new AssertionError("Tab does not lead to " + id);
    }

    /** Walks by keys of a gesture until it is aimed at an element. */
    void aimAt(String id) {
        int most = 2 * canvas().hits().elements().size() + 2;
        for (int step = 0; step < most; step++) {
            key(SWT.TAB);
            if (id.equals(canvas().aim())) {
                return;
            }
        }
        throw new AssertionError("Tab does not aim at " + id);
    }

    /** Presses the button of a tool beside the drawing. */
    void choose(String slug) {
        String tip = Words.of("tool." + slug);
        for (ToolItem item : controls(pane, ToolBar.class).get(0).getItems()) {
            if (tip.equals(item.getToolTipText())) {
                Rectangle room = item.getBounds();
                moveTo(item.getParent(), room.x + room.width / 2.0, room.y + room.height / 2.0);
                click();
                return;
            }
        }
        throw new AssertionError("no tool " + tip);
    }

    /** Writes into the field in which parts are sought, with the mouse to get there. */
    void seek(String words) {
        Text field = controls(pane.palette(), Text.class).get(0);
        moveTo(field, 20, field.getSize().y / 2.0);
        click();
        type(words);
    }

    private Tree parts() {
        return controls(pane.palette(), Tree.class).get(0);
    }

    private Point part(int index) {
        List<TreeItem> leaves = new ArrayList<>();
        for (TreeItem head : parts().getItems()) {
            leaves.addAll(List.of(head.getItems()));
        }
        Rectangle room = leaves.get(index).getBounds();
        return new Point(room.x + room.width / 2.0, room.y + room.height / 2.0);
    }

    /** Clicks one of the parts that are found. */
    void clickPart(int index) {
        Point at = part(index);
        moveTo(parts(), at.x(), at.y());
        click();
    }

    /** Drags one of the parts that are found onto an element. */
    void dragPart(int index, String onto) {
        Point at = part(index);
        Point to = spot(onto);
        moveTo(parts(), at.x(), at.y());
        press();
        moveTo(parts(), at.x() + 12, at.y());
        moveTo(new Point(to.x() - 9, to.y()));
        moveTo(to);
        release();
    }

    /** The field on the canvas in which a name is written. */
    Text field() {
        return controls(canvas(), Text.class).get(0);
    }

    private static <T extends Control> List<T> controls(Composite parent, Class<T> type) {
        List<T> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(controls(composite, type));
            }
        }
        return found;
    }

    /** Opens the menu of an element with the mouse, and walks to one of its entries. */
    void menu(String id, String entry) {
        moveTo(id);
        Menu menu = canvas().getMenu();
        seen.clear();
        server.button(3, true);
        server.button(3, false);
        Ui.await("the menu", () -> seen.stream().anyMatch(event -> event.type == SWT.Show && event.widget == menu));
        drain();
        int steps = 0;
        for (MenuItem item : menu.getItems()) {
            if ((item.getStyle() & SWT.SEPARATOR) == 0 && item.isEnabled()) {
                steps++;
            }
            if (item.getText().replace("&", "").split("\t")[0].equals(entry)) {
                int down = server.stroke(Keyboard.symbol(SWT.ARROW_DOWN)).code();
                for (int step = 0; step < steps; step++) {
                    server.key(down, true);
                    server.key(down, false);
                    drain();
                }
                int enter = server.stroke(Keyboard.symbol(SWT.CR)).code();
                server.key(enter, true);
                server.key(enter, false);
                Ui.await("the menu to close", () -> seen.stream().anyMatch(event -> event.type == SWT.Hide
                        && event.widget == menu));
                drain();
                return;
            }
        }
        throw new AssertionError("no entry " + entry);
    }

    void undo() {
        key('z', SWT.CTRL);
    }

    void redo() {
        key('z', SWT.CTRL, SWT.SHIFT);
    }

    void save() {
        key('s', SWT.CTRL);
        await("the file saved", () -> !document.dirty());
    }

    void await(String what, BooleanSupplier holds) {
        Ui.await(what, holds);
    }

    /** Handles all events that have arrived. */
    private void drain() {
        boolean more = true;
        while (more) {
            more = display.readAndDispatch();
        }
    }

    private void expect(String what, Runnable input, Predicate<Event> comes) {
        seen.clear();
        input.run();
        Ui.await(what + " to arrive", () -> seen.stream().anyMatch(comes));
        drain();
    }

    @Override
    public void close() throws IOException {
        for (int type : INPUT) {
            display.removeFilter(type, watch);
        }
        server.close();
    }
}
