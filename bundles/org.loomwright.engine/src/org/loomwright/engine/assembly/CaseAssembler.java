// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.BatteryState;
import org.loomwright.model.vehicle.Case;
import org.loomwright.model.vehicle.DemandState;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.SwitchPosition;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.ZoneAmbient;

/**
 * Assembles the user's cases. Where a case is silent: the ambient of a zone is the case's outside ambient, else the zone's
 * highest; batteries are at the ambient where they sit, of the practice's age, and as charged as it says for the kind of case
 * (low while charging, crank charge while cranking, else full); hand contacts rest; the engine idles. The starter is on while
 * the ignition stands at start, listed or not; listing every load does not start it.
 */
final class CaseAssembler {
    private final Plan plan;
    private final StructureAssembler structure;
    private final TerminalTable terminals;
    private final AssemblyScope scope;
    private final DeviceElements elements;

    CaseAssembler(Plan plan, StructureAssembler structure, TerminalTable terminals, AssemblyScope scope) {
        this.plan = plan;
        this.structure = structure;
        this.terminals = terminals;
        this.scope = scope;
        elements = new DeviceElements(plan);
    }

    /** The cases of a vehicle, in file order. */
    List<Plan.Case> cases(Vehicle vehicle) {
        List<Plan.Case> cases = new ArrayList<>();
        for (Case of : vehicle.getCases()) {
            cases.add(read(of));
        }
        return cases;
    }

    private Plan.Case read(Case of) {
        CaseDraft draft = new CaseDraft(plan, ModelIds.of(of));
        draft.ignition = of.isSetIgnition() ? of.getIgnition().getLiteral() : "off";
        draft.engineRunning = Decimals.yes(of.getEngine());
        draft.kind = of.isSetKind() ? of.getKind().getLiteral()
                : "start".equals(draft.ignition) ? "cranking" : draft.engineRunning ? "driving" : "parked";
        draft.engineRpm = draft.engineRunning ? Decimals.or(of.getEngineRpm(), scope.practice().value("state.idle-rpm")) : 0;
        draft.shore = Decimals.yes(of.getShore());
        draft.sun = Decimals.or(of.getSun(), 0);
        ambients(of, draft);
        batteries(of, draft);
        of.getPositions().forEach(position -> position(position, draft));
        if (Decimals.yes(of.getAllOn())) {
            for (int e = 0; e < plan.elements().size(); e++) {
                if (plan.elements().get(e) instanceof Plan.Demand && !draft.isStarter(e)) {
                    draft.on(e);
                }
            }
        }
        if ("start".equals(draft.ignition)) {
            draft.crank();
        }
        of.getDemands().forEach(state -> demand(state, draft));
        return draft.build();
    }

    private void ambients(Case of, CaseDraft draft) {
        if (of.getAmbientC() != null) {
            draft.outsideC = of.getAmbientC().doubleValue();
            Arrays.fill(draft.ambientC, draft.outsideC);
        }
        for (ZoneAmbient ambient : of.getAmbients()) {
            int zone = structure.indexOf(ambient.getZone());
            if (zone < 0 || ambient.getAmbientC() == null) {
                scope.problems().add(draft.id, "an ambient of the case names no zone or no temperature; expected both");
            } else {
                draft.ambientC[zone] = ambient.getAmbientC().doubleValue();
            }
        }
    }

    private void batteries(Case of, CaseDraft draft) {
        if ("charging".equals(draft.kind)) {
            draft.allCharged(scope.practice().value("state.rest-charge"));
        } else if ("cranking".equals(draft.kind)) {
            draft.allCharged(scope.practice().value("state.crank-charge"));
            if (of.getAmbientC() == null && of.getAmbients().isEmpty()) {
                draft.allCellsAt(scope.practice().value("state.crank-temperature"));
            }
        }
        for (BatteryState state : of.getBatteries()) {
            int device = device(state.getDevice(), draft, "a battery state");
            for (int cell : device < 0 ? List.<Integer>of() : elements.cells(device)) {
                draft.charge[cell] = Decimals.or(state.getCharge(), draft.charge[cell]);
                draft.cellC[cell] = Decimals.or(state.getTemperatureC(), draft.cellC[cell]);
                draft.age[cell] = Decimals.or(state.getAge(), draft.age[cell]);
            }
        }
    }

    private void position(SwitchPosition position, CaseDraft draft) {
        int device = device(position.getDevice(), draft, "a switch position");
        if (device < 0) {
            return;
        }
        List<Integer> contacts = elements.handContacts(device, position.getContact());
        if (contacts.isEmpty() || position.getClosed() == null) {
            scope.problems().add(draft.id, "a switch position of " + plan.devices().get(device).id() + " is not complete;"
                    + " expected closed true or false for a hand contact of the device"
                    + (position.getContact() == null ? "" : ", and it has none named " + position.getContact()));
            return;
        }
        contacts.forEach(contact -> draft.closed[contact] = position.getClosed());
    }

    private void demand(DemandState state, CaseDraft draft) {
        int device = device(state.getDevice(), draft, "a load that is on");
        if (device < 0) {
            return;
        }
        List<Integer> demands = elements.demands(device, state.getElement());
        if (demands.isEmpty()) {
            scope.problems().add(draft.id, plan.devices().get(device).id() + " is listed as on, but has no load"
                    + (state.getElement() == null ? "" : " named " + state.getElement()));
        }
        boolean duty = state.getOnS() != null && state.getPeriodS() != null;
        for (int demand : demands) {
            draft.on(demand, Decimals.or(state.getFactor(), 1), duty ? state.getOnS().doubleValue() : Double.NaN,
                    duty ? state.getPeriodS().doubleValue() : Double.NaN);
        }
    }

    /** Index of a device; -1, told unless the device is of another arrangement, which the case then does not concern. */
    private int device(Device device, CaseDraft draft, String what) {
        int index = terminals.device(device);
        boolean elsewhere = device != null && device.eContainer() instanceof Arrangement;
        if (index < 0 && !elsewhere) {
            scope.problems().add(draft.id, what + " names no device of the vehicle");
        }
        return index;
    }
}
