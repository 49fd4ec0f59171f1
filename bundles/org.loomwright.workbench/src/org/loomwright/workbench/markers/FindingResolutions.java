// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;

/** Offers the proposals of a finding as quick fixes. */
public final class FindingResolutions implements IMarkerResolutionGenerator2 {
    @Override
    public boolean hasResolutions(IMarker marker) {
        return !marker.getAttribute(FindingMarkers.MENDS, "").isEmpty();
    }

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        List<IMarkerResolution> resolutions = new ArrayList<>();
        if (hasResolutions(marker)) {
            for (String mend : marker.getAttribute(FindingMarkers.MENDS, "").split("\n")) {
                resolutions.add(new MendResolution(mend));
            }
        }
        return resolutions.toArray(IMarkerResolution[]::new);
    }
}
