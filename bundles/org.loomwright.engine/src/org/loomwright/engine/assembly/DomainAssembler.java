// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Vehicle;

/** Assembles voltage levels. */
final class DomainAssembler {
    private DomainAssembler() {
    }

    /** The domains of a vehicle; one without nominal voltage is told and left out, one without source is told and kept. */
    static List<Plan.Domain> domains(Vehicle vehicle, TerminalTable terminals, AssemblyScope scope) {
        List<Plan.Domain> domains = new ArrayList<>();
        for (Domain domain : vehicle.getDomains()) {
            String id = ModelIds.of(domain);
            double nominalV = Decimals.of(domain.getNominalV());
            if (!(nominalV > 0)) {
                scope.problems().add(id, "the domain states no nominal voltage; expected nominalV above 0");
                continue;
            }
            int source = terminals.of(domain.getSource());
            if (source < 0) {
                scope.problems().add(id, domain.getSource() == null
                        ? "the domain names no source; expected the plus terminal of its battery"
                        : "source: " + terminals.whyUnknown(domain.getSource()));
            }
            domains.add(new Plan.Domain(id, nominalV, source));
        }
        return domains;
    }
}
