// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.navigator;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.loomwright.workbench.markers.FindingKey;

/**
 * A finding of an arrangement in the tree.
 *
 * @param file     the vehicle's file
 * @param key      which finding
 * @param where    element and case, as shown
 * @param title    what was found
 * @param severity severity of its marker
 */
public record FindingNode(IFile file, FindingKey key, String where, String title, int severity) {
    /** The finding that a marker of a file stands for. */
    static FindingNode of(IFile file, IMarker marker) {
        return new FindingNode(file, FindingKey.of(marker), marker.getAttribute(IMarker.LOCATION, ""),
                marker.getAttribute(IMarker.MESSAGE, ""), marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO));
    }
}
