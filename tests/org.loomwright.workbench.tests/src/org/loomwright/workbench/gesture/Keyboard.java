// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.Map;
import org.eclipse.swt.SWT;

/** Keys of SWT as symbols of the X Window System (X Window System Protocol, appendix A; keysymdef.h). */
final class Keyboard {
    private static final Map<Integer, Integer> SYMBOLS = Map.ofEntries(Map.entry((int) SWT.BS, 0xFF08),
            Map.entry((int) SWT.TAB, 0xFF09), Map.entry((int) SWT.CR, 0xFF0D), Map.entry((int) SWT.ESC, 0xFF1B),
            Map.entry((int) SWT.DEL, 0xFFFF), Map.entry(SWT.HOME, 0xFF50), Map.entry(SWT.ARROW_LEFT, 0xFF51),
            Map.entry(SWT.ARROW_UP, 0xFF52), Map.entry(SWT.ARROW_RIGHT, 0xFF53), Map.entry(SWT.ARROW_DOWN, 0xFF54),
            Map.entry(SWT.END, 0xFF57), Map.entry(SWT.INSERT, 0xFF63), Map.entry(SWT.F2, 0xFFBF), Map.entry(SWT.F10, 0xFFC7),
            Map.entry(SWT.SHIFT, 0xFFE1), Map.entry(SWT.CTRL, 0xFFE3), Map.entry(SWT.ALT, 0xFFE9));

    private Keyboard() {
    }

    /** The symbol of a key; characters of Latin-1 are their own symbols. */
    static int symbol(int key) {
        return SYMBOLS.getOrDefault(key, key);
    }
}
