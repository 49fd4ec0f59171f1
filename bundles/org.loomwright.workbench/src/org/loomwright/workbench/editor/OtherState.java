// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.editor;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.files.VehicleResource;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A vehicle as it would be if its file held something else. It is read beside the file, so that relative references lead to the
 * same libraries, which the two states share; nothing of it is ever written.
 *
 * @param vehicle the vehicle; null when there are faults
 * @param faults  what is wrong with the content
 */
public record OtherState(Vehicle vehicle, List<ReadFault> faults) {
    public OtherState {
        faults = List.copyOf(faults);
    }

    /**
     * Reads another content of a file that was opened in a resource set.
     *
     * @throws IOException when the content cannot be taken for a file of ours at all
     */
    public static OtherState read(ResourceSet set, Path file, byte[] content) throws IOException {
        Path beside = file.toAbsolutePath().normalize().resolveSibling(".other-" + file.getFileName());
        VehicleResource resource = (VehicleResource) set.createResource(URI.createFileURI(beside.toString()));
        try {
            resource.load(new ByteArrayInputStream(content), null);
            List<ReadFault> faults = resource.faults();
            if (faults.isEmpty() && resource.root() instanceof Vehicle vehicle) {
                resource.getContents().clear();
                return new OtherState(vehicle, faults);
            }
            return new OtherState(null, faults.isEmpty()
                    ? List.of(new ReadFault(file.toString(), 1, 1, null, "this is not a vehicle", "a vehicle")) : faults);
        } finally {
            set.getResources().remove(resource);
        }
    }

    /** Makes a vehicle the same as this one, which is empty afterwards. To be called within one command. */
    void fill(Vehicle into) {
        for (EStructuralFeature feature : into.eClass().getEAllStructuralFeatures()) {
            if (!feature.isChangeable() || feature.isDerived() || feature.isTransient()) {
                continue;
            }
            if (!vehicle.eIsSet(feature)) {
                into.eUnset(feature);
            } else {
                Object value = vehicle.eGet(feature);
                into.eSet(feature, value instanceof List<?> many ? new ArrayList<>(many) : value);
            }
        }
    }
}
