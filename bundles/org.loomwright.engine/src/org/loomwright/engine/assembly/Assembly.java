// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Vehicle;

/**
 * From the model to a {@link Plan}. Runs in the one thread that owns the model; what comes out refers to no object of the
 * model and can be shared. Whatever is wrong in the model becomes a problem, never an exception.
 */
public final class Assembly {
    private Assembly() {
    }

    /**
     * Assembles a vehicle.
     *
     * @param vehicle     the vehicle
     * @param arrangement one of its arrangements, or null for what all of them share
     * @param practice    practice to follow, or null for the vehicle's own; the common practice holds where it is silent
     */
    public static AssemblyResult assemble(Vehicle vehicle, Arrangement arrangement,
            org.loomwright.model.practice.Practice practice) {
        return assemble(vehicle, arrangement, practice, Catalogue.EMPTY);
    }

    /**
     * Assembles a vehicle, sharing the catalogue of an earlier assembly when the libraries still say the same.
     *
     * @see #assemble(Vehicle, Arrangement, org.loomwright.model.practice.Practice)
     */
    public static AssemblyResult assemble(Vehicle vehicle, Arrangement arrangement,
            org.loomwright.model.practice.Practice practice, Catalogue earlier) {
        Problems problems = new Problems();
        CatalogueReader parts = new CatalogueReader(vehicle.getLibraries(), earlier);
        Practice inForce = PracticeReader.read(practice != null ? practice : vehicle.getPractice(),
                CommonPractice.get(), vehicle, problems);
        AssemblyScope scope = new AssemblyScope(inForce, parts, problems);
        StructureAssembler structure = new StructureAssembler(vehicle, scope);
        DeviceAssembler devices = new DeviceAssembler(vehicle, arrangement, structure, scope);
        TerminalTable terminals = devices.terminals();
        List<Plan.Bond> bonds = new BondAssembler(vehicle, terminals, scope).bonds();
        List<Plan.Domain> domains = DomainAssembler.domains(vehicle, terminals, scope);
        CableAssembler cables = new CableAssembler(vehicle, arrangement, structure, devices, scope);
        Plan still = new Plan(vehicle.getName(), arrangement == null ? "" : arrangement.getName(), inForce, domains,
                structure.zones(), structure.places(), structure.runs(), structure.bodies(), structure.bodyLinks(), bonds,
                devices.devices(), terminals.all(), devices.elements(), cables.cables(), cables.conductors(), List.of(),
                waivers(vehicle));
        List<Plan.Case> cases = new ArrayList<>(new CaseAssembler(still, structure, terminals, scope).cases(vehicle));
        cases.addAll(EngineCases.of(still, List.copyOf(cases)));
        return new AssemblyResult(withCases(still, cases), problems.all(), parts.catalogue(), emptyWays(devices, still));
    }

    private static List<EmptyWay> emptyWays(DeviceAssembler devices, Plan plan) {
        Set<Integer> connected = new HashSet<>();
        plan.conductors().forEach(core -> connected.addAll(List.of(core.a(), core.b())));
        return devices.emptyWays().stream().filter(way -> connected.contains(way.fitting().b())
                && !plan.devices().get(way.fitting().device()).existing()).toList();
    }

    private static List<Plan.Waiver> waivers(Vehicle vehicle) {
        return vehicle.getWaivers().stream()
                .map(w -> new Plan.Waiver(w.getRule(), w.getElement(), w.getReason(), w.getWho(), w.getWhen())).toList();
    }

    private static Plan withCases(Plan of, List<Plan.Case> cases) {
        return new Plan(of.vehicle(), of.arrangement(), of.practice(), of.domains(), of.zones(), of.places(), of.runs(),
                of.bodies(), of.bodyLinks(), of.bonds(), of.devices(), of.terminals(), of.elements(), of.cables(),
                of.conductors(), cases, of.waivers());
    }
}
