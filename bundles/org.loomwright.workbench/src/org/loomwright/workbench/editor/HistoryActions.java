// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

/** Undo and redo of one document, named by what they take back or do again. */
final class HistoryActions {
    private final CommandStack stack;
    private final Action undo = new Action() {
        @Override
        public void run() {
            stack.undo();
        }
    };
    private final Action redo = new Action() {
        @Override
        public void run() {
            stack.redo();
        }
    };
    private final CommandStackListener listener = event -> update();

    HistoryActions(VehicleDocument document) {
        stack = document.domain().getCommandStack();
        stack.addCommandStackListener(listener);
        update();
    }

    IAction undo() {
        return undo;
    }

    IAction redo() {
        return redo;
    }

    void dispose() {
        stack.removeCommandStackListener(listener);
    }

    private void update() {
        undo.setEnabled(stack.canUndo());
        undo.setText(text("edit.undo", stack.getUndoCommand(), stack.canUndo()));
        redo.setEnabled(stack.canRedo());
        redo.setText(text("edit.redo", stack.getRedoCommand(), stack.canRedo()));
    }

    private static String text(String key, Command command, boolean can) {
        String what = can && command.getLabel() != null ? command.getLabel() : "";
        return Words.of(key, what).strip();
    }
}
