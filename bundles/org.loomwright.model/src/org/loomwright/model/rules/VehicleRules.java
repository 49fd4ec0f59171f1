// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Zone;

/** What holds for a vehicle beyond its structure; see {@link DeviceRules}, {@link CableRules} and {@link ControlRules}. */
public final class VehicleRules {
    private VehicleRules() {
    }

    /** All violations of a vehicle, structure included: first those of the structure, each group in document order. */
    public static List<Violation> check(Vehicle vehicle) {
        List<Violation> found = new ArrayList<>(StructureRules.check(vehicle));
        if (vehicle.getDomains().isEmpty()) {
            found.add(Violation.blocking("vehicle-domain", vehicle, "domains", "the vehicle has no voltage level",
                    "a domain with its nominal voltage and its battery's plus terminal"));
        }
        for (Iterator<EObject> all = vehicle.eAllContents(); all.hasNext();) {
            check(all.next(), found);
        }
        for (Arrangement arrangement : vehicle.getArrangements()) {
            ControlRules.check(vehicle, arrangement, found::add);
        }
        if (vehicle.getArrangements().isEmpty()) {
            ControlRules.check(vehicle, null, found::add);
        }
        return found;
    }

    private static void check(EObject object, List<Violation> found) {
        if (object instanceof Device device) {
            DeviceRules.check(device, found::add);
        } else if (object instanceof Cable cable) {
            CableRules.check(cable, found::add);
        } else if (object instanceof Run run) {
            if (run.getFrom() != null && run.getFrom() == run.getTo()) {
                found.add(Violation.blocking("run-ends", run, "to", "begins and ends at " + run.getFrom().getName(),
                        "two different places"));
            }
        } else if (object instanceof Bond bond) {
            bond(bond, found);
        } else if (object instanceof BodyLink link) {
            if (link.getA() != null && link.getA() == link.getB()) {
                found.add(Violation.blocking("link-ends", link, "b", "joins " + link.getA().getName() + " with itself",
                        "two different bodies"));
            }
        } else if (object instanceof Zone zone) {
            if (zone.getAmbientMinC() != null && zone.getAmbientMaxC() != null
                    && zone.getAmbientMinC().compareTo(zone.getAmbientMaxC()) > 0) {
                found.add(Violation.blocking("zone-ambient", zone, "ambientMinC",
                        "lowest ambient " + zone.getAmbientMinC().toPlainString() + " degC above the highest "
                                + zone.getAmbientMaxC().toPlainString() + " degC", "lowest not above highest"));
            }
        } else if (object instanceof Case state) {
            CaseRules.check(state, found::add);
        }
    }

    private static void bond(Bond bond, List<Violation> found) {
        if (bond.getA() != null && bond.getA() == bond.getB()) {
            found.add(Violation.blocking("bond-ends", bond, "b", "begins and ends at " + bond.getA().getName(),
                    "two different earth points"));
        }
        if (bond.getPart() != null && bond.getMilliohm() == null && bond.getLengthMm() == null) {
            found.add(Violation.blocking("bond-length", bond, "lengthMm", "a strap without its length",
                    "lengthMm, or a measured milliohm"));
        }
    }
}
