// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.study;

import java.util.function.Consumer;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.loomwright.workbench.app.Ui;

/** Starts studies by their commands, as the menu does. */
public final class Studies {
    private Studies() {
    }

    /** Starts a study and waits for its outcome. */
    public static StudyOutcome run(String name) {
        StudyOutcome before = StudyResults.current().latest();
        start(name);
        Ui.await("the study " + name, () -> StudyResults.current().latest() != before);
        Ui.await("the end of its job", () -> Job.getJobManager().find(StudyJob.FAMILY).length == 0);
        return StudyResults.current().latest();
    }

    /** Starts a study. */
    public static void start(String name) {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class)
                    .executeCommand("org.loomwright.workbench.study." + name, null);
        } catch (CommandException problem) {
            throw new AssertionError(name, problem);
        }
    }

    /** Does something to the next dialog that opens, which has this title, as soon as it is there. */
    public static void answer(String title, Consumer<Shell> action) {
        Display display = Display.getCurrent();
        display.asyncExec(new Runnable() {
            @Override
            public void run() {
                for (Shell shell : display.getShells()) {
                    if (shell.isVisible() && title.equals(shell.getText())) {
                        action.accept(shell);
                        return;
                    }
                }
                display.asyncExec(this);
            }
        });
    }

    /** The button of a text below a control. */
    public static Button button(Composite parent, String text) {
        for (Control child : parent.getChildren()) {
            if (child instanceof Button button && button.getText().replace("&", "").equals(text)) {
                return button;
            }
            Button found = child instanceof Composite composite ? button(composite, text) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** Presses a button, or chooses it. */
    public static void press(Composite parent, String text) {
        Button button = button(parent, text);
        if (button == null) {
            throw new AssertionError("no button " + text);
        }
        if ((button.getStyle() & SWT.RADIO) != 0) {
            for (Control other : button.getParent().getChildren()) {
                if (other instanceof Button radio && radio.getSelection()) {
                    radio.setSelection(false);
                    radio.notifyListeners(SWT.Selection, null);
                }
            }
            button.setSelection(true);
        } else if ((button.getStyle() & SWT.CHECK) != 0) {
            button.setSelection(!button.getSelection());
        }
        button.notifyListeners(SWT.Selection, null);
    }
}
