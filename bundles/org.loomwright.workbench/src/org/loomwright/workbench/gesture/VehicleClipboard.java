// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.gesture;

import java.util.UUID;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import org.loomwright.model.edits.WiringFragment;

/**
 * What was copied of a vehicle, for every editor of the workbench. The system's clipboard gets it as text for other programs,
 * with a mark; as soon as something else is copied anywhere, the mark is gone and so is the fragment.
 */
final class VehicleClipboard {
    private static final String KEY = VehicleClipboard.class.getName();
    private final Display display;
    private String mark = "";
    private WiringFragment fragment;

    private VehicleClipboard(Display display) {
        this.display = display;
    }

    /** The clipboard of a display. */
    static VehicleClipboard of(Display display) {
        if (display.getData(KEY) instanceof VehicleClipboard known) {
            return known;
        }
        VehicleClipboard made = new VehicleClipboard(display);
        display.setData(KEY, made);
        return made;
    }

    void put(WiringFragment copied) {
        fragment = copied;
        mark = UUID.randomUUID().toString();
        Clipboard system = new Clipboard(display);
        try {
            system.setContents(new Object[] {mark, copied.text()},
                    new Transfer[] {FragmentTransfer.instance(), TextTransfer.getInstance()});
        } finally {
            system.dispose();
        }
    }

    /** What can be pasted; null when nothing of a vehicle was copied last. */
    WiringFragment get() {
        Clipboard system = new Clipboard(display);
        try {
            return mark.equals(system.getContents(FragmentTransfer.instance())) ? fragment : null;
        } finally {
            system.dispose();
        }
    }
}
