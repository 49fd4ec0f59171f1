// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.recovery;

import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * A bar above an editor that tells something and offers what can be done about it; it waits for an answer without holding up
 * the work. Nothing is seen of it while there is nothing to tell.
 */
final class NoticeBar extends Composite {
    private static final int MARGIN = 6;
    private static final int TEXT_WIDTH = 400;
    private String text = "";

    /** A hidden bar; its parent has a grid layout of one column. */
    NoticeBar(Composite parent) {
        super(parent, SWT.BORDER);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).applyTo(this);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(this);
        setVisible(false);
    }

    /** What it tells; empty when nothing. */
    String text() {
        return text;
    }

    /** Tells something. An answer is called after the bar is gone. */
    void show(String what, Map<String, Runnable> answers) {
        clear();
        text = what;
        GridLayoutFactory.fillDefaults().numColumns(2 + answers.size()).margins(MARGIN, MARGIN).applyTo(this);
        Label icon = new Label(this, SWT.NONE);
        icon.setImage(getDisplay().getSystemImage(SWT.ICON_INFORMATION));
        Label label = new Label(this, SWT.WRAP);
        label.setText(what.replace("&", "&&"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
        answers.forEach((name, action) -> {
            Button button = new Button(this, SWT.PUSH);
            button.setText(name);
            button.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
            button.addListener(SWT.Selection, event -> {
                hide();
                action.run();
            });
        });
        shown(true);
    }

    /** Gives an answer as if its button was pressed. */
    void answer(String name) {
        for (Control child : getChildren()) {
            if (child instanceof Button button && button.getText().equals(name)) {
                button.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
                return;
            }
        }
        throw new IllegalArgumentException("there is no answer \"" + name + "\"; the bar says \"" + text + "\"");
    }

    /** Tells nothing any more. */
    void hide() {
        text = "";
        // not at once: the button that was pressed is still busy
        getDisplay().asyncExec(() -> {
            if (!isDisposed() && text.isEmpty()) {
                clear();
            }
        });
        shown(false);
    }

    private void clear() {
        for (Control child : getChildren()) {
            child.dispose();
        }
    }

    private void shown(boolean visible) {
        ((GridData) getLayoutData()).exclude = !visible;
        setVisible(visible);
        getParent().layout(true, true);
    }
}
