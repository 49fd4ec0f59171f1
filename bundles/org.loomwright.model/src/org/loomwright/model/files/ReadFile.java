// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.files;

import java.util.List;
import org.eclipse.emf.ecore.EObject;

/**
 * A file that was opened.
 *
 * @param root     its root; null when it could not be read or is of another kind
 * @param resource the file; null when there was no file to read
 * @param faults   what is wrong with it and with all files it uses: the file itself first, then those in the order in which
 *                 they are used, each by position; each fault once
 * @param <T>      type of the root
 */
public record ReadFile<T extends EObject>(T root, VehicleResource resource, List<ReadFault> faults) {
    public ReadFile {
        faults = List.copyOf(faults);
    }

    /** True when there is a root and nothing is wrong. */
    public boolean isSound() {
        return root != null && faults.isEmpty();
    }

    /** True when saving would lose XML comments: ask before the first time. */
    public boolean hasComments() {
        return resource != null && resource.hasComments();
    }
}
