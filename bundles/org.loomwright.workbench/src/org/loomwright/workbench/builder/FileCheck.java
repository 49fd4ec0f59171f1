// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.builder;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.osgi.util.NLS;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.AssemblyResult;
import org.loomwright.engine.assembly.Catalogue;
import org.loomwright.engine.check.Check;
import org.loomwright.engine.check.CheckOptions;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.headless.input.Arrangements;
import org.loomwright.headless.input.VehicleReader;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.workbench.markers.FindingMarkers;

/** Checks vehicle files as they are saved and writes what is found to their markers. One for each build. */
final class FileCheck {
    private final VehicleReader reader = new VehicleReader();
    private Catalogue catalogue = Catalogue.EMPTY;

    /** Checks a file in its adopted arrangement, in every one where none is adopted. */
    void run(IFile file, IProgressMonitor monitor) throws CoreException {
        Path path = file.getLocation() == null ? null : file.getLocation().toPath();
        if (path == null) {
            return;
        }
        try {
            VehicleReader.Read read = reader.vehicle(path);
            FindingMarkers.faults(file, read.faults());
            if (read.vehicle() == null) {
                FindingMarkers.clear(file);
                return;
            }
            List<Arrangement> arrangements = Arrangements.of(read.vehicle(), List.of());
            FindingMarkers.keepOnly(file, arrangements.stream()
                    .map(each -> each == null ? "" : each.getName()).toList());
            for (Arrangement arrangement : arrangements) {
                check(file, read, arrangement, monitor);
            }
        } catch (OperationCanceledException | CancellationException stopped) {
            throw new OperationCanceledException();
        } catch (RuntimeException fault) {
            // a fault of the program must not hide the other vehicles
            ILog.of(FileCheck.class).error(NLS.bind(Messages.Check_failed, file.getName()), fault);
            FindingMarkers.clear(file);
            FindingMarkers.faults(file, List.of(new ReadFault(path.toString(), 1, 1, null,
                    NLS.bind(Messages.Check_failed, file.getName()) + ": " + fault, null)));
        }
    }

    private void check(IFile file, VehicleReader.Read read, Arrangement arrangement, IProgressMonitor monitor)
            throws CoreException {
        AssemblyResult assembled = Assembly.assemble(read.vehicle(), arrangement, null, catalogue);
        catalogue = assembled.catalogue();
        StudyResult result = Check.run(assembled.plan(), assembled.problems(), CheckOptions.all(),
                BasicMonitor.toMonitor(monitor));
        if (monitor.isCanceled()) {
            throw new OperationCanceledException();
        }
        String name = arrangement == null ? "" : arrangement.getName();
        FindingMarkers.sync(file, name, result.findings(), new Designations(assembled.plan().arrangement()));
    }
}
