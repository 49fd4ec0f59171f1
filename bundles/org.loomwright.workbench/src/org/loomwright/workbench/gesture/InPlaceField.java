// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.function.Predicate;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.workbench.diagram.SceneCanvas;

/**
 * A field on a drawing in which a name is written where it is shown. Enter takes the name, Escape gives it up, and so does
 * pressing elsewhere with a name that cannot be; undo is the field's own while it has the keyboard.
 */
public final class InPlaceField {
    private static final int ROOM_PX = 12;
    private static final int LEAST_PX = 90;
    private final Text text;
    private final TextHistory history;
    private final Predicate<String> take;
    private final Runnable done;
    private boolean closed;

    /**
     * Opens a field.
     *
     * @param room where the element is shown, px of the sheet
     * @param name what it is called now
     * @param says what the field is for, for those who do not see it
     * @param take takes the name; false to keep the field open
     * @param done is told when the field has gone
     */
    InPlaceField(SceneCanvas canvas, Bounds room, String name, String says, Predicate<String> take, Runnable done) {
        this.take = take;
        this.done = done;
        text = new Text(canvas, SWT.BORDER | SWT.SINGLE);
        text.setText(name);
        text.selectAll();
        history = new TextHistory(text);
        place(canvas, room);
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = says;
            }
        });
        text.addListener(SWT.Modify, event -> place(canvas, room));
        text.addListener(SWT.Traverse, this::traverse);
        text.addListener(SWT.FocusOut, event -> left());
        text.setFocus();
    }

    private void place(SceneCanvas canvas, Bounds room) {
        Bounds seen = canvas.viewport().toScreen(room);
        Point size = text.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        int wide = Math.max(LEAST_PX, size.x + ROOM_PX);
        int left = (int) StrictMath.max(0, StrictMath.min(seen.centre().x() - wide / 2.0, canvas.getSize().x - wide));
        int top = (int) StrictMath.max(0, StrictMath.min(seen.centre().y() - size.y / 2.0, canvas.getSize().y - size.y));
        text.setBounds(left, top, wide, size.y);
    }

    private void traverse(Event event) {
        if (event.detail == SWT.TRAVERSE_RETURN) {
            event.doit = false;
            if (take.test(text.getText())) {
                close();
            }
        } else if (event.detail == SWT.TRAVERSE_ESCAPE) {
            event.doit = false;
            close();
        }
    }

    private void left() {
        // not within the change of focus: what takes the name may open and close things
        text.getDisplay().asyncExec(() -> {
            if (!closed && !text.isDisposed() && !text.isFocusControl()) {
                take.test(text.getText());
                close();
            }
        });
    }

    /** Undo of what is written. */
    IAction undo() {
        return history.undo();
    }

    /** Redo of what is written. */
    IAction redo() {
        return history.redo();
    }

    /** Takes the field away. */
    void close() {
        if (!closed) {
            closed = true;
            if (!text.isDisposed()) {
                text.dispose();
            }
            done.run();
        }
    }
}
