// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.markers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Path;
import org.loomwright.engine.result.Cause;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;
import org.loomwright.model.files.ReadFault;

/** Writes findings and faults to the markers of files. Call it within a change of the workspace, not in the window's thread. */
public final class FindingMarkers {
    /** Markers of findings. */
    public static final String TYPE = "org.loomwright.workbench.finding";
    /** Markers of faults in a file. */
    public static final String FAULT_TYPE = "org.loomwright.workbench.fault";
    /** Attribute: id of the element. */
    public static final String ELEMENT = "loomwrightElement";
    /** Attribute: slug of the rule. */
    public static final String RULE = "loomwrightRule";
    /** Attribute: case; empty when the finding holds in every case. */
    public static final String CASE = "loomwrightCase";
    /** Attribute: arrangement; empty for a vehicle without any. */
    public static final String ARRANGEMENT = "loomwrightArrangement";
    /** Attribute: proposals that can be applied, one a line. */
    public static final String MENDS = "loomwrightMends";
    /** Attribute: ids of elements elsewhere that bring it about, one a line. */
    public static final String CAUSES = "loomwrightCauses";

    private FindingMarkers() {
    }

    /**
     * Makes the markers of one arrangement those of these findings; markers that stay are not touched.
     *
     * @param findings accepted ones are left out
     * @param names    how element ids are shown
     */
    public static void sync(IFile file, String arrangement, List<Finding> findings, Designations names)
            throws CoreException {
        Set<Map<String, Object>> wanted = new HashSet<>();
        List<Map<String, Object>> order = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.accepted() == null) {
                Map<String, Object> attributes = attributes(arrangement, finding, names);
                if (wanted.add(attributes)) {
                    order.add(attributes);
                }
            }
        }
        for (IMarker marker : file.findMarkers(TYPE, false, IResource.DEPTH_ZERO)) {
            if (arrangement.equals(marker.getAttribute(ARRANGEMENT, "")) && !wanted.remove(marker.getAttributes())) {
                marker.delete();
            }
        }
        for (Map<String, Object> attributes : order) {
            if (wanted.contains(attributes)) {
                file.createMarker(TYPE, attributes);
            }
        }
    }

    /** Takes away the markers of arrangements other than these. */
    public static void keepOnly(IFile file, List<String> arrangements) throws CoreException {
        for (IMarker marker : file.findMarkers(TYPE, false, IResource.DEPTH_ZERO)) {
            if (!arrangements.contains(marker.getAttribute(ARRANGEMENT, ""))) {
                marker.delete();
            }
        }
    }

    /** Takes away all findings of a file. */
    public static void clear(IFile file) throws CoreException {
        file.deleteMarkers(TYPE, true, IResource.DEPTH_ZERO);
    }

    /** Marks what is wrong with a file and with those it uses, each fault at its own file where that is in the workspace. */
    public static void faults(IFile file, List<ReadFault> faults) throws CoreException {
        file.deleteMarkers(FAULT_TYPE, true, IResource.DEPTH_ZERO);
        for (ReadFault fault : faults) {
            Map<String, Object> attributes = new HashMap<>();
            attributes.put(IMarker.SEVERITY, IMarker.SEVERITY_ERROR);
            attributes.put(IMarker.MESSAGE, (fault.element() == null ? "" : fault.element() + ": ") + fault.getMessage());
            attributes.put(IMarker.LINE_NUMBER, fault.line());
            attributes.put(IMarker.LOCATION, fault.line() + ":" + fault.column());
            at(fault, file).createMarker(FAULT_TYPE, attributes);
        }
    }

    private static IFile at(ReadFault fault, IFile file) {
        IFile own = fault.file() == null ? null
                : ResourcesPlugin.getWorkspace().getRoot().getFileForLocation(Path.fromOSString(fault.file()));
        return own != null && own.exists() ? own : file;
    }

    private static Map<String, Object> attributes(String arrangement, Finding finding, Designations names) {
        FindingKey key = FindingKey.of(arrangement, finding);
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.SEVERITY, severity(finding.severity()));
        attributes.put(IMarker.MESSAGE, finding.title());
        attributes.put(IMarker.LOCATION, names.shown(finding.element())
                + (key.caseName().isEmpty() ? "" : ", " + key.caseName()));
        attributes.put(ELEMENT, key.element());
        attributes.put(RULE, key.rule());
        attributes.put(CASE, key.caseName());
        attributes.put(ARRANGEMENT, key.arrangement());
        attributes.put(MENDS, String.join("\n", finding.mends().stream().filter(mend -> !mend.changes().isEmpty())
                .map(Mend::text).toList()));
        attributes.put(CAUSES, String.join("\n", finding.causes().stream().map(Cause::element)
                .filter(cause -> !cause.equals(finding.element())).distinct().toList()));
        return attributes;
    }

    private static Integer severity(Severity severity) {
        return switch (severity) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            case NOTE -> IMarker.SEVERITY_INFO;
        };
    }
}
