// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.view;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** The figure that a person pointed at last, wherever it was shown; for what explains it. In the window's thread. */
public final class FigureFocus {
    private static final FigureFocus CURRENT = new FigureFocus();

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private FigureQuestion question;

    /** That of this workbench. */
    public static FigureFocus current() {
        return CURRENT;
    }

    /** Asks how a figure came about. */
    public void ask(FigureQuestion wanted) {
        question = wanted;
        listeners.forEach(Runnable::run);
    }

    /** The latest question; null before the first. */
    FigureQuestion question() {
        return question;
    }

    void listen(Runnable listener) {
        listeners.add(listener);
    }

    void forget(Runnable listener) {
        listeners.remove(listener);
    }
}
