// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.emf.common.command.AbortExecutionException;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;

/**
 * A plain function on the model as one step that can be undone. One that fails halfway leaves the model as it was and is
 * not put on the stack.
 */
final class RecordedEdit extends AbstractCommand {
    private final EObject root;
    private final Runnable edit;
    private ChangeDescription change;
    private RuntimeException failure;

    RecordedEdit(String label, EObject root, Runnable edit) {
        super(label);
        this.root = root;
        this.edit = edit;
    }

    /** What went wrong; null when nothing did. */
    RuntimeException failure() {
        return failure;
    }

    @Override
    protected boolean prepare() {
        return true;
    }

    @Override
    public void execute() {
        ChangeRecorder recorder = new ChangeRecorder(root);
        try {
            edit.run();
        } catch (RuntimeException fault) {
            failure = fault;
        } finally {
            change = recorder.endRecording();
            recorder.dispose();
        }
        if (failure != null) {
            change.apply();
            throw new AbortExecutionException(failure);
        }
    }

    @Override
    public void undo() {
        change.applyAndReverse();
    }

    @Override
    public void redo() {
        change.applyAndReverse();
    }
}
