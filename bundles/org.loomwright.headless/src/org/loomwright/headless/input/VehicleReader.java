// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.engine.check.RuleCatalogue;
import org.loomwright.engine.earth.EarthStudy;
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
            new PracticeRules(files.commonPractice(), knownRules());
    private final Map<EObject, List<ReadFault>> sharedFaults = new HashMap<>();
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

    /** Rules of the check, and those that a study of its own brings. */
    private static Set<String> knownRules() {
        Set<String> known = new HashSet<>(RuleCatalogue.standard().slugs());
        known.add(EarthStudy.BOND_LOSS);
        return known;
    }

    /** Opens a vehicle file. */
    public Read vehicle(Path file) {
        ReadFile<Vehicle> read = files.openVehicle(file);
        List<ReadFault> faults = new ArrayList<>(read.faults());
        Vehicle vehicle = read.root();
        if (vehicle != null && faults.isEmpty()) {
            faults.addAll(faultsOf(VehicleRules.check(vehicle), file));
            shared(vehicle, file, faults);
        }
        boolean usable = vehicle != null && faults.isEmpty();
        return new Read(file, usable ? vehicle : null, faults.stream().filter(told::add).toList());
    }

    /** Opens a practice file; what is wrong with it is added to {@code faults}. Null when there are faults. */
    public Practice practice(Path file, List<ReadFault> faults) {
        ReadFile<Practice> read = files.openPractice(file);
        List<ReadFault> own = new ArrayList<>(read.faults());
        if (read.root() != null && own.isEmpty()) {
            practice(read.root(), file, own);
        }
        own.stream().filter(told::add).forEach(faults::add);
        return own.isEmpty() ? read.root() : null;
    }

    private void shared(Vehicle vehicle, Path file, List<ReadFault> faults) {
        Set<PartsLibrary> seen = new HashSet<>();
        vehicle.getLibraries().forEach(library -> library(library, file, seen, faults));
        for (Stock stock : vehicle.getStock()) {
            faults.addAll(sharedFaults.computeIfAbsent(stock, root -> faultsOf(PartsRules.check(stock), file)));
        }
        practice(vehicle.getPractice(), file, faults);
    }

    private void practice(Practice first, Path file, List<ReadFault> faults) {
        for (Practice practice = first; practice != null; practice = practice.getBasedOn()) {
            Practice each = practice;
            faults.addAll(sharedFaults.computeIfAbsent(each, root -> faultsOf(practiceRules.check(each), file)));
        }
    }

    private void library(PartsLibrary library, Path file, Set<PartsLibrary> seen, List<ReadFault> faults) {
        if (seen.add(library)) {
            faults.addAll(sharedFaults.computeIfAbsent(library, root -> faultsOf(PartsRules.check(library), file)));
            library.getUses().forEach(used -> library(used, file, seen, faults));
        }
    }

    private static List<ReadFault> faultsOf(List<Violation> violations, Path file) {
        Set<List<Object>> outOfRange = violations.stream().filter(VehicleReader::isRange).map(VehicleReader::value)
                .collect(Collectors.toSet());
        // a value out of its range is one fault, whatever else follows from it
        return violations.stream().filter(Violation::blocking)
                .filter(violation -> isRange(violation) || !outOfRange.contains(value(violation)))
                .map(violation -> fault(violation, file)).toList();
    }

    private static boolean isRange(Violation violation) {
        return "range".equals(violation.rule());
    }

    private static List<Object> value(Violation violation) {
        return Arrays.asList(violation.element(), violation.feature());
    }

    private static ReadFault fault(Violation violation, Path file) {
        Location at = Locations.of(violation.element());
        return new ReadFault(shown(Locations.file(violation.element()), file), at.line(), at.column(),
                ElementPath.of(violation.element()), violation.message(), violation.expected());
    }

    /** A path in the way the person gave the vehicle's: as it is, or relative to where the program was started. */
    private static String shown(String path, Path given) {
        if (path == null || given.isAbsolute()) {
            return path;
        }
        Path here = Path.of("").toAbsolutePath();
        Path there = Path.of(path);
        if (there.equals(given.toAbsolutePath().normalize())) {
            return given.toString();
        }
        return Objects.equals(there.getRoot(), here.getRoot()) ? here.relativize(there).toString() : path;
    }
}
