// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.parts.Part;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.vehicle.Vehicle;

/** Parts of a vehicle's libraries, and of those that these use. */
final class WrittenParts {
    private final List<PartsLibrary> libraries;

    WrittenParts(Vehicle vehicle) {
        Set<PartsLibrary> all = new LinkedHashSet<>();
        vehicle.getLibraries().forEach(library -> collect(library, all));
        libraries = List.copyOf(all);
    }

    private static void collect(PartsLibrary library, Set<PartsLibrary> all) {
        if (!library.eIsProxy() && all.add(library)) {
            library.getUses().forEach(used -> collect(used, all));
        }
    }

    /** The protector of a name, also written {@code library/part}. */
    ProtectorPart protector(String written) {
        return written(written, PartsLibrary::getProtectors, "fuse or breaker");
    }

    /** The device's part of a name, also written {@code library/part}. */
    DevicePart device(String written) {
        return written(written, PartsLibrary::getDevices, "device");
    }

    /** Cables on offer, in the order of the libraries. */
    List<CablePart> cables() {
        return all(PartsLibrary::getCables);
    }

    /** Straps on offer, in the order of the libraries. */
    List<StrapPart> straps() {
        return all(PartsLibrary::getStraps);
    }

    /** True for a part of these libraries. */
    boolean has(Part part) {
        return part.eContainer() instanceof PartsLibrary library && libraries.contains(library);
    }

    /** The part of the same name, or better of the same library and name; null when there is none. */
    @SuppressWarnings("unchecked")
    <T extends Part> T same(T part) {
        T found = null;
        String library = part.eContainer() instanceof PartsLibrary own ? own.getName() : null;
        for (PartsLibrary each : libraries) {
            for (EObject other : each.eContents()) {
                if (other.eClass() == part.eClass() && Objects.equals(((Part) other).getName(), part.getName())) {
                    if (Objects.equals(each.getName(), library)) {
                        return (T) other;
                    }
                    found = found == null ? (T) other : found;
                }
            }
        }
        return found;
    }

    private <T extends Part> T written(String written, Function<PartsLibrary, List<T>> kind, String word) {
        int slash = written.indexOf('/');
        for (PartsLibrary library : libraries) {
            for (T part : kind.apply(library)) {
                boolean here = slash < 0 || Objects.equals(library.getName(), written.substring(0, slash));
                if (here && written.substring(slash + 1).equals(part.getName())) {
                    return part;
                }
            }
        }
        throw new IllegalArgumentException("the vehicle's libraries have no " + word + " " + written);
    }

    /** Ends on offer, in the order of the libraries. */
    List<EndPart> ends() {
        return all(PartsLibrary::getEnds);
    }

    /** The thinnest strap of a section or more. */
    StrapPart strap(double leastMm2) {
        return straps().stream()
                .filter(each -> each.getSectionMm2() != null && each.getSectionMm2().doubleValue() >= leastMm2)
                .min(Comparator.comparing(StrapPart::getSectionMm2))
                .orElseThrow(() -> new IllegalArgumentException("the vehicle's libraries have no strap of "
                        + BigDecimal.valueOf(leastMm2).stripTrailingZeros().toPlainString() + " mm2 or more"));
    }

    private <T> List<T> all(Function<PartsLibrary, List<T>> kind) {
        List<T> parts = new ArrayList<>();
        libraries.forEach(library -> parts.addAll(kind.apply(library)));
        return parts;
    }
}
