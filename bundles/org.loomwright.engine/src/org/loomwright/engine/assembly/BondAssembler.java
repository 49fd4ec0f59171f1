// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Vehicle;

/** Assembles the straps and bolted joints between earth points. */
final class BondAssembler {
    private final TerminalTable terminals;
    private final AssemblyScope scope;
    private final List<Plan.Bond> bonds = new ArrayList<>();

    BondAssembler(Vehicle vehicle, TerminalTable terminals, AssemblyScope scope) {
        this.terminals = terminals;
        this.scope = scope;
        vehicle.getBonds().forEach(this::add);
    }

    List<Plan.Bond> bonds() {
        return bonds;
    }

    private void add(Bond bond) {
        String id = ModelIds.of(bond);
        int a = terminals.of(bond.getA());
        int b = terminals.of(bond.getB());
        if (a < 0 || b < 0) {
            scope.problems().add(id, "the bond has an end without earth point; expected two earth points with a body each");
            return;
        }
        StrapPart part = bond.getPart() == null || bond.getPart().eIsProxy() ? null : bond.getPart();
        double ohm = ohm(bond, part, id);
        if (!(ohm > 0)) {
            return;
        }
        bonds.add(new Plan.Bond(id, a, b, ohm, part == null ? Double.NaN : Decimals.of(part.getSectionMm2()),
                Decimals.of(bond.getLengthMm()), part == null ? Double.NaN : Decimals.of(part.getCurrentMaxA()),
                bond.isSetCondition() ? bond.getCondition().getLiteral() : null, Decimals.yes(bond.getExisting()),
                part == null ? null : part.getName()));
    }

    /** As stated, with both joints; else the strap and a bolted joint at each end; without strap one bolted joint. */
    private double ohm(Bond bond, StrapPart part, String id) {
        double stated = Decimals.thousandth(bond.getMilliohm());
        if (stated > 0) {
            return stated;
        }
        double jointOhm = scope.ohms("joint.bolted-bond");
        if (part == null) {
            return jointOhm;
        }
        if (part.getMilliohmPerM() == null || bond.getLengthMm() == null) {
            scope.problems().add(id, "the strap has no resistance; expected milliohm, or lengthMm and a part that"
                    + " states milliohmPerM");
            return Double.NaN;
        }
        return Decimals.thousandth(part.getMilliohmPerM()) * bond.getLengthMm().doubleValue() / 1000 + 2 * jointOhm;
    }
}
