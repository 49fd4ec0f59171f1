// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;

/**
 * Where the voltage between a source's terminals and a load's terminals is lost. The shares follow the current and sum to the
 * drop.
 *
 * @param demand  the load, index in elements of the plan
 * @param sourceV voltage between the terminals of the source that feeds it, V
 * @param loadV   voltage between the load's terminals, V
 * @param source  element id of the source, null when it is not part of the plan
 * @param shares  what it consists of, in the direction of the current
 */
public record DropBreakdown(int demand, double sourceV, double loadV, String source, List<Share> shares) {
    public DropBreakdown {
        shares = List.copyOf(shares);
    }

    /** What loses the voltage. */
    public enum Part { CABLE, END_JOINTS, PROTECTOR, CONTACT, SHUNT, JOINT, DIODE, BOND, SEAM, EARTH_CONTACT, CASE_CONTACT,
            OTHER }

    /**
     * One share.
     *
     * @param element id of the element as findings name it; of a conductor the cable's
     * @param part    what it is
     * @param index   conductor, element, bond, body link or terminal of the plan, or -1
     * @param returns it lies in the return
     * @param volts   share, V; negative where a source on the way lifts the voltage
     * @param amps    current through it, A
     */
    public record Share(String element, Part part, int index, boolean returns, double volts, double amps) {
    }

    /** The drop, V. */
    public double dropV() {
        return sourceV - loadV;
    }

    /** Volts as a share of the drop, 0 to 1; 0 where there is no drop. */
    public double shareOf(double volts) {
        return dropV() == 0 ? 0 : volts / dropV();
    }

    /** Volts by element, largest first; the parts of an element are taken together. */
    public List<Map.Entry<String, Double>> byElement() {
        Map<String, Double> sums = new LinkedHashMap<>();
        shares.forEach(share -> sums.merge(share.element(), share.volts(), Double::sum));
        List<Map.Entry<String, Double>> sorted = new ArrayList<>();
        sums.forEach((element, volts) -> sorted.add(Map.entry(element, volts)));
        sorted.sort((a, b) -> Double.compare(b.getValue(), a.getValue()));
        return List.copyOf(sorted);
    }

    /** Volts lost in conductors and joints of one cable (id), V. */
    public double ofElement(String element) {
        return shares.stream().filter(share -> share.element().equals(element)).mapToDouble(Share::volts).sum();
    }

    /**
     * The breakdown of one load in a solved network.
     *
     * @return null when the load is not supplied or takes no current
     */
    public static DropBreakdown of(Plan plan, ElementNames names, SolvedCase.Solved solved, CurrentPaths paths, int demand) {
        Plan.Demand load = (Plan.Demand) plan.elements().get(demand);
        int item = solved.at().elementItem()[demand];
        int plus = solved.at().terminalNode()[load.a()];
        int minus = solved.at().terminalNode()[load.b()];
        if (item < 0 || plus < 0 || minus < 0 || !(StrictMath.abs(solved.point().currentA()[item]) > 0)
                || Double.isNaN(solved.point().voltage(plus, minus))) {
            return null;
        }
        return between(plan, names, solved, paths, demand, plus, minus);
    }

    /** The breakdown between two nodes and the source that feeds them; see {@link #of}. */
    static DropBreakdown between(Plan plan, ElementNames names, SolvedCase.Solved solved, CurrentPaths paths, int demand,
            int plus, int minus) {
        CurrentPaths.Path supply = paths.supplyOf(plus);
        int source = paths.sourceAt(supply.end());
        CurrentPaths.Path back = paths.returnOf(minus, source < 0 ? -1 : paths.minusOf(source));
        List<Share> shares = new ArrayList<>();
        supply.steps().forEach(step -> add(plan, names, solved, step, false, shares));
        back.steps().forEach(step -> add(plan, names, solved, step, true, shares));
        NetworkIndex.Owner owner = source < 0 ? null : paths.index().owner(source);
        String sourceId = owner == null || owner.kind() != NetworkIndex.Kind.ELEMENT ? null : names.element(owner.index());
        return new DropBreakdown(demand, solved.point().voltage(supply.end(), back.end()), solved.point().voltage(plus, minus),
                sourceId, shares);
    }

    private static void add(Plan plan, ElementNames names, SolvedCase.Solved solved, CurrentPaths.Step step, boolean returns,
            List<Share> shares) {
        double amps = StrictMath.abs(solved.point().currentA()[step.item()]);
        NetworkIndex.Owner owner = step.owner();
        Network.Item item = solved.point().network().items().get(step.item());
        if (owner == null) {
            shares.add(new Share(item.id(), Part.OTHER, -1, returns, step.volts(), amps));
            return;
        }
        int i = owner.index();
        switch (owner.kind()) {
            case CONDUCTOR -> {
                String cable = plan.cables().get(plan.conductors().get(i).cable()).id();
                double joints = item instanceof Network.Wire wire
                        ? step.volts() * wire.jointsOhm() / WireOhm.of(wire, solved.point().temperatureC()[step.item()])
                        : 0;
                shares.add(new Share(cable, Part.CABLE, i, returns, step.volts() - joints, amps));
                shares.add(new Share(cable, Part.END_JOINTS, i, returns, joints, amps));
            }
            case ELEMENT -> shares.add(new Share(names.element(i), part(plan.elements().get(i)), i, returns, step.volts(), amps));
            case BOND -> shares.add(new Share(plan.bonds().get(i).id(), Part.BOND, i, returns, step.volts(), amps));
            case SEAM -> shares.add(new Share(plan.bodyLinks().get(i).id(), Part.SEAM, i, returns, step.volts(), amps));
            case EARTH_CONTACT -> shares.add(new Share(plan.terminals().get(i).id(), Part.EARTH_CONTACT, i, returns,
                    step.volts(), amps));
            case CASE_CONTACT -> shares.add(new Share(plan.devices().get(plan.terminals().get(i).device()).id(),
                    Part.CASE_CONTACT, i, returns, step.volts(), amps));
        }
    }

    private static Part part(Plan.Element element) {
        return element instanceof Plan.Protector ? Part.PROTECTOR
                : element instanceof Plan.Contact ? Part.CONTACT
                : element instanceof Plan.Shunt ? Part.SHUNT
                : element instanceof Plan.Diode ? Part.DIODE
                : element instanceof Plan.Joint ? Part.JOINT : Part.OTHER;
    }
}
