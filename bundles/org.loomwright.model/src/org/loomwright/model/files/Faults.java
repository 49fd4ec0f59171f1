// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.List;
import org.eclipse.emf.ecore.EObject;

/** Makes the faults of one file that is being read. */
final class Faults {
    private final String file;
    private final SourceText source;
    private final FaultList list = new FaultList();
    private int inPass;

    Faults(String file, SourceText source) {
        this.file = file;
        this.source = source;
    }

    /** Begins a pass through the file; faults of one pass come in document order. */
    void startPass() {
        inPass = 0;
    }

    /** A fault of the file as a whole. */
    void file(String message, String expected) {
        at(0, null, message, expected);
    }

    /** A fault at a place in the text. */
    void at(int offset, EObject element, String message, String expected) {
        if (isFull()) {
            list.countOnly();
            return;
        }
        inPass++;
        Location location = source.location(offset);
        list.add(new ReadFault(file, location.line(), location.column(), element == null ? null : ElementPath.of(element),
                message, expected));
    }

    /** A fault in an attribute of an element whose start tag is at a place in the text. */
    void attribute(int tag, String attribute, EObject element, String message, String expected) {
        at(isFull() ? tag : place(tag, attribute), element, attribute + ": " + message, expected);
    }

    /** Place of an attribute of the start tag at a place in the text. */
    int place(int tag, String attribute) {
        return TagScanner.attribute(source.text(), tag, attribute);
    }

    /** True when no details are wanted any more: further faults of this pass will not be listed. */
    boolean isFull() {
        return inPass >= FaultList.LISTED;
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    List<ReadFault> listed() {
        return list.listed();
    }
}
