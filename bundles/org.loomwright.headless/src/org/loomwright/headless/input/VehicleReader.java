// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.files.Location;
import org.loomwright.model.files.Locations;
import org.loomwright.model.files.ReadFault;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.rules.PartsRules;
import org.loomwright.model.rules.PracticeRules;
import org.loomwright.model.rules.VehicleRules;
import org.loomwright.model.rules.Violation;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Opens vehicle files with all they use and checks what can be meant. Files that several vehicles share are read and checked
 * once, and their faults told once.
 */
public final class VehicleReader {
    private final VehicleFiles files = new VehicleFiles();
    private final PracticeRules practiceRules =
            new PracticeRules(files.commonPractice(), Set.copyOf(RuleCatalogue.standard().slugs()));
    private final Set<EObject> sharedChecked = new HashSet<>();
    private final Set<ReadFault> told = new HashSet<>();

    /**
     * What came of one file.
     *
     * @param file    the file
     * @param vehicle the vehicle, or null when there are faults
     * @param faults  faults not told before
     */
    public record Read(Path file, Vehicle vehicle, List<ReadFault> faults) {
        public Read {
            faults = List.copyOf(faults);
        }
    }

    /** Opens a vehicle file. */
    public Read vehicle(Path file) {
        ReadFile<Vehicle> read = files.openVehicle(file);
        List<ReadFault> faults = new ArrayList<>(read.faults());
        Vehicle vehicle = read.root();
        if (vehicle != null && faults.isEmpty()) {
            faults.addAll(faultsOf(VehicleRules.check(vehicle)));
            shared(vehicle, faults);
        }
        boolean usable = vehicle != null && faults.isEmpty();
        return new Read(file, usable ? vehicle : null, faults.stream().filter(told::add).toList());
    }

    /** Opens a practice file; what is wrong with it is added to {@code faults}. Null when there are faults. */
    public Practice practice(Path file, List<ReadFault> faults) {
        ReadFile<Practice> read = files.openPractice(file);
        List<ReadFault> own = new ArrayList<>(read.faults());
        if (read.root() != null && own.isEmpty()) {
            own.addAll(faultsOf(practiceRules.check(read.root())));
        }
        faults.addAll(own);
        return own.isEmpty() ? read.root() : null;
    }

    private void shared(Vehicle vehicle, List<ReadFault> faults) {
        for (PartsLibrary library : vehicle.getLibraries()) {
            library(library, faults);
        }
        for (Stock stock : vehicle.getStock()) {
            if (sharedChecked.add(stock)) {
                faults.addAll(faultsOf(PartsRules.check(stock)));
            }
        }
        for (Practice practice = vehicle.getPractice(); practice != null
                && sharedChecked.add(practice); practice = practice.getBasedOn()) {
            faults.addAll(faultsOf(practiceRules.check(practice)));
        }
    }

    private void library(PartsLibrary library, List<ReadFault> faults) {
        if (sharedChecked.add(library)) {
            faults.addAll(faultsOf(PartsRules.check(library)));
            library.getUses().forEach(used -> library(used, faults));
        }
    }

    private static List<ReadFault> faultsOf(List<Violation> violations) {
        return violations.stream().filter(Violation::blocking).map(VehicleReader::fault).toList();
    }

    private static ReadFault fault(Violation violation) {
        Location at = Locations.of(violation.element());
        return new ReadFault(Locations.file(violation.element()), at.line(), at.column(), ElementPath.of(violation.element()),
                violation.message(), violation.expected());
    }
}
