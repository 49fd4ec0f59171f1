// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.loomwright.diagram.edit.DrawnVehicle;
import org.loomwright.diagram.edit.Outcome;
import org.loomwright.diagram.edit.Step;
import org.loomwright.diagram.edit.View;
import org.loomwright.diagram.scene.Bounds;
import org.loomwright.diagram.tool.Alignment;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.edits.WiringFragment;
import org.loomwright.workbench.diagram.SceneCanvas;
import org.loomwright.workbench.editor.VehicleDocument;
import org.loomwright.workbench.editor.Words;

/**
 * Makes what gestures on a drawing ask for: each as one step of the vehicle that can be undone. Between a change and the drawing
 * that shows it, what is asked for waits, since a gesture means what is seen.
 */
public final class Gestures {
    /** What the gestures' window does beside. */
    public interface Surroundings {
        /** Tells the person what came of a gesture. */
        default void tell(String text) {
        }

        /** Tells the person what was refused, and why. */
        default void refuse(String text) {
        }

        /** A field has the keyboard, with undo and redo of its own. */
        default void inField(InPlaceField field) {
        }

        /** The field has gone. */
        default void outOfField() {
        }
    }

    private final VehicleDocument document;
    private final SceneCanvas canvas;
    private final Deque<EditRequest> waiting = new ArrayDeque<>();
    private Surroundings around = new Surroundings() { };
    private DrawnVehicle drawn;
    private InPlaceField field;
    private boolean stale = true;
    private boolean snapping = true;
    private boolean toSight;
    private String told = "";

    /** Gestures on a canvas. */
    public Gestures(VehicleDocument document, SceneCanvas canvas) {
        this.document = document;
        this.canvas = canvas;
    }

    /** In a window. */
    public void in(Surroundings surroundings) {
        around = surroundings;
    }

    /** The model is no longer what is drawn. */
    public void stale() {
        stale = true;
    }

    /**
     * A drawing is shown.
     *
     * @param view   which
     * @param latest it shows the model as it is now
     */
    public void shown(View view, boolean latest) {
        drawn = DrawnVehicle.of(document.vehicle(), document.arrangement(), view, canvas.hits());
        canvas.advice(drawn, snapping ? drawn.gridPx() : 0);
        if (latest) {
            stale = false;
            if (toSight) {
                toSight = false;
                canvas.bringIntoSight(canvas.selection());
            }
            while (!stale && !waiting.isEmpty()) {
                edit(waiting.poll());
            }
        }
    }

    /** Does what was asked for, now or as soon as the drawing shows the model as it is. */
    public void edit(EditRequest request) {
        if (stale || drawn == null) {
            waiting.add(request);
            return;
        }
        try {
            if (request instanceof EditRequest.Rename rename) {
                rename(rename.element());
            } else if (request instanceof EditRequest.Copy copy) {
                VehicleClipboard.of(canvas.getDisplay()).put(drawn.clip(copy.elements()));
                tell(Words.of("edit.copied", copy.elements().size()));
            } else if (request instanceof EditRequest.Cut cut) {
                VehicleClipboard.of(canvas.getDisplay()).put(drawn.clip(cut.elements()));
                change(drawn.step(cut));
            } else if (request instanceof EditRequest.Paste paste) {
                paste(paste.target());
            } else {
                change(drawn.step(request));
            }
        } catch (IllegalArgumentException refused) {
            refuse(refused);
        }
    }

    private void refuse(IllegalArgumentException refused) {
        refuse(Words.of("edit.refused", refused.getMessage()));
        // what was dragged goes back to where it stands
        canvas.redraw();
    }

    private void change(Step step) {
        Outcome[] made = new Outcome[1];
        String label = Words.of("edit." + step.verb(), step.subject()).strip();
        document.run(label, () -> made[0] = step.run());
        if (made[0].selection() != null) {
            toSight = true;
            document.selection().set(made[0].selection());
        }
        tell(made[0].told().isEmpty() ? label : String.join("; ", made[0].told()));
    }

    private void paste(String target) {
        WiringFragment fragment = VehicleClipboard.of(canvas.getDisplay()).get();
        if (fragment == null) {
            refuse(Words.of("edit.nothing"));
        } else {
            change(drawn.paste(fragment, target));
        }
    }

    private void rename(String id) {
        String name = drawn.name(id);
        Bounds room = canvas.hits().bounds(id);
        if (name == null || room == null) {
            refuse(Words.of("edit.noname", drawn.label(id)));
            return;
        }
        canvas.bringIntoSight(Set.of(id));
        if (field != null) {
            field.close();
        }
        field = new InPlaceField(canvas, room, name, Words.of("edit.field", drawn.label(id)), text -> named(id, name, text),
                this::renamed);
        around.inField(field);
    }

    private boolean named(String id, String before, String name) {
        if (name.strip().equals(before)) {
            return true;
        }
        try {
            change(drawn.step(new EditRequest.Named(id, name)));
            return true;
        } catch (IllegalArgumentException refused) {
            refuse(refused);
            return false;
        }
    }

    private void renamed() {
        field = null;
        around.outOfField();
        if (!canvas.isDisposed() && canvas.getDisplay().getFocusControl() == null) {
            canvas.setFocus();
        }
    }

    /** Lines up what is selected. */
    public void align(Alignment alignment) {
        EditRequest request = alignment.request(canvas.context());
        if (request == null) {
            refuse(Words.of("edit.aligned"));
        } else {
            edit(request);
        }
    }

    /** True while positions snap to the grid. */
    public boolean snapping() {
        return snapping;
    }

    /** Lets positions snap to the grid, or not. */
    public void snapping(boolean wanted) {
        snapping = wanted;
        if (drawn != null) {
            canvas.advice(drawn, snapping ? drawn.gridPx() : 0);
        }
        tell(Words.of(wanted ? "grid.on" : "grid.off"));
    }

    /** Something else is selected: tells what would go along if it were deleted. */
    public void selected() {
        if (!stale && drawn != null && !canvas.selection().isEmpty()) {
            List<String> also = drawn.alsoGoes(canvas.selection());
            tell(also.isEmpty() ? "" : Words.of("edit.alsogoes", String.join("; ", also)));
        }
    }

    private void tell(String text) {
        told = text;
        around.tell(text);
    }

    private void refuse(String text) {
        told = text;
        around.refuse(text);
    }

    /** What the person was told last. */
    public String told() {
        return told;
    }

    /** Tells what the model says to a gesture as it stands. */
    public void verdict(Verdict verdict) {
        if (verdict == null || verdict.text().isEmpty()) {
            tell("");
        } else if (verdict.possible()) {
            tell(verdict.text());
        } else {
            refuse(verdict.text());
        }
    }
}
