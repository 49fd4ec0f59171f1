// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;

/** Offers the proposals of a finding as quick fixes, and the ways to its causes. */
public final class FindingResolutions implements IMarkerResolutionGenerator2 {
    @Override
    public boolean hasResolutions(IMarker marker) {
        return !marker.getAttribute(FindingMarkers.MENDS, "").isEmpty()
                || !marker.getAttribute(FindingMarkers.CAUSES, "").isEmpty();
    }

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        List<IMarkerResolution> resolutions = new ArrayList<>();
        lines(marker, FindingMarkers.MENDS).forEach(mend -> resolutions.add(new MendResolution(mend)));
        String arrangement = marker.getAttribute(FindingMarkers.ARRANGEMENT, "");
        lines(marker, FindingMarkers.CAUSES).forEach(cause -> resolutions.add(new CauseResolution(arrangement, cause)));
        return resolutions.toArray(IMarkerResolution[]::new);
    }

    private static List<String> lines(IMarker marker, String attribute) {
        String text = marker.getAttribute(attribute, "");
        return text.isEmpty() ? List.of() : List.of(text.split("\n"));
    }
}
