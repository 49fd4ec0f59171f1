// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.ArrayDeque;
import java.util.Deque;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;

/** Undo and redo within one field of text, which not every platform's field has. */
final class TextHistory {
    private final Text text;
    private final Deque<String> before = new ArrayDeque<>();
    private final Deque<String> after = new ArrayDeque<>();
    private String shown;
    private boolean own;

    TextHistory(Text text) {
        this.text = text;
        shown = text.getText();
        text.addListener(SWT.Modify, event -> {
            // one keystroke may be told several times
            if (!own && !text.getText().equals(shown)) {
                before.push(shown);
                after.clear();
            }
            shown = text.getText();
        });
    }

    IAction undo() {
        return action(before, after);
    }

    IAction redo() {
        return action(after, before);
    }

    private IAction action(Deque<String> from, Deque<String> to) {
        return new Action() {
            @Override
            public void run() {
                if (!from.isEmpty() && !text.isDisposed()) {
                    to.push(shown);
                    own = true;
                    text.setText(from.pop());
                    text.setSelection(text.getText().length());
                    own = false;
                }
            }
        };
    }
}
