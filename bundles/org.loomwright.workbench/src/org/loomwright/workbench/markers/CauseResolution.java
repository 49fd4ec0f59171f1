// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.loomwright.engine.result.Designations;

/** Leads to what brings a finding about, when that lies elsewhere. Nothing is changed by it. */
final class CauseResolution implements IMarkerResolution2 {
    private final String arrangement;
    private final String element;

    CauseResolution(String arrangement, String element) {
        this.arrangement = arrangement;
        this.element = element;
    }

    @Override
    public String getLabel() {
        return NLS.bind(Messages.Cause_go, new Designations(arrangement).shown(element));
    }

    @Override
    public String getDescription() {
        return getLabel();
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public void run(IMarker marker) {
        FindingKey finding = FindingKey.of(marker);
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            FindingTarget target = Adapters.adapt(IDE.openEditor(page, (IFile) marker.getResource()), FindingTarget.class);
            if (target != null) {
                target.reveal(new FindingKey(finding.arrangement(), element, finding.rule(), finding.caseName()));
            }
        } catch (PartInitException problem) {
            ILog.of(CauseResolution.class).log(problem.getStatus());
        }
    }
}
