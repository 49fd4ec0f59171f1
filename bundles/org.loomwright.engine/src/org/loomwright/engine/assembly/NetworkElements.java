// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.flow.Network;

/** Adds what lies inside the devices to the network of a case. */
final class NetworkElements {
    private final Plan plan;
    private final Plan.Case state;
    private final NetworkOptions options;
    private final NetworkNodes nodes;
    private final NetworkOhms ohms;
    private final NetworkSources sources;
    private final List<Network.Item> items;
    private final int[] elementItem;
    private final int[] standbyItem;
    private final boolean[] leftOut;
    private final boolean[] wired;

    NetworkElements(Plan plan, Plan.Case state, NetworkOptions options, NetworkNodes nodes, NetworkOhms ohms,
            NetworkSources sources, List<Network.Item> items) {
        this.plan = plan;
        this.state = state;
        this.options = options;
        this.nodes = nodes;
        this.ohms = ohms;
        this.sources = sources;
        this.items = items;
        int count = plan.elements().size();
        elementItem = new int[count];
        standbyItem = new int[count];
        leftOut = new boolean[count];
        Arrays.fill(elementItem, -1);
        Arrays.fill(standbyItem, -1);
        for (int e = 0; e < count; e++) {
            leftOut[e] = options.leftOut().contains(plan.elements().get(e).id());
        }
        wired = new boolean[nodes.ids.size()];
        for (Plan.Conductor core : plan.conductors()) {
            wired[nodes.of(core.a())] = true;
            wired[nodes.of(core.b())] = true;
        }
    }

    int[] elementItem() {
        return elementItem;
    }

    int[] standbyItem() {
        return standbyItem;
    }

    /** Items that others refer to come before them: shunts and coils, then comparators, then contacts. */
    void add() {
        forEach((e, element) -> passive(element));
        if (options.variant() == NetworkOptions.Variant.DESIGN) {
            forEach((e, element) -> element instanceof Plan.Contact contact ? contact(e, contact) : null);
            NetworkDesign design = new NetworkDesign(plan, nodes, List.copyOf(items), sources, leftOut);
            forEach((e, element) -> element instanceof Plan.Coil coil ? coil(coil) : null);
            forEach((e, element) -> designSource(design, e, element));
            loads(new NetworkLoads(plan, state, options, nodes, design));
            return;
        }
        forEach((e, element) -> element instanceof Plan.Coil coil ? coil(coil) : null);
        forEach((e, element) -> source(e, element));
        loads(new NetworkLoads(plan, state, options, nodes, null));
        forEach((e, element) -> element instanceof Plan.Threshold threshold ? comparator(threshold) : null);
        forEach((e, element) -> element instanceof Plan.Contact contact ? contact(e, contact) : null);
    }

    private interface Maker {
        Network.Item make(int e, Plan.Element element);
    }

    private void forEach(Maker maker) {
        for (int e = 0; e < elementItem.length; e++) {
            Network.Item item = leftOut[e] ? null : maker.make(e, plan.elements().get(e));
            if (item != null) {
                elementItem[e] = items.size();
                items.add(item);
            }
        }
    }

    private Network.Item passive(Plan.Element element) {
        if (element instanceof Plan.Joint joint) {
            return resistor(joint.id(), joint.a(), joint.b(), ohms.joint(joint));
        } else if (element instanceof Plan.Protector protector) {
            return resistor(protector.id(), protector.a(), protector.b(), ohms.protector(protector));
        } else if (element instanceof Plan.Shunt shunt) {
            return resistor(shunt.id(), shunt.a(), shunt.b(), ohms.contact(shunt.ohm()));
        } else if (element instanceof Plan.Diode diode && apart(diode.a(), diode.b())) {
            double forwardV = diode.forwardV() > 0 ? diode.forwardV() : 0;
            return new Network.Rectifier(diode.id(), nodes.of(diode.a()), nodes.of(diode.b()), forwardV,
                    ohms.contact(diode.ohm()));
        }
        return null;
    }

    private Network.Item coil(Plan.Coil coil) {
        return coil.ohm() > 0 ? resistor(coil.id(), coil.a(), coil.b(), coil.ohm() * ohms.coilFactor(coil.device())) : null;
    }

    private Network.Item source(int e, Plan.Element element) {
        if (element instanceof Plan.Cell cell && apart(cell.a(), cell.b())) {
            Plan.CellState at = sources.stateOf(e);
            double ohm = sources.ohm(cell, at);
            return new Network.Emf(cell.id(), nodes.of(cell.a()), nodes.of(cell.b()), NetworkSources.openV(cell, at.charge()),
                    ohm, sources.chargeOhm(cell, at, ohm));
        } else if (element instanceof Plan.Regulated source && apart(source.a(), source.b())) {
            return new Network.Regulator(source.id(), nodes.of(source.a()), nodes.of(source.b()), sources.setV(source),
                    ohms.droop(source.droopOhm()), sources.limitA(source), sense(source.senseA(), source.a()),
                    sense(source.senseB(), source.b()));
        } else if (element instanceof Plan.Converter c && apart(c.inA(), c.inB()) && apart(c.outA(), c.outB())
                && sources.available(c.runsOn())) {
            double restartV = Double.isNaN(c.restartV()) ? c.offV() : c.restartV();
            return new Network.ConverterItem(c.id(), nodes.of(c.inA()), nodes.of(c.inB()), nodes.of(c.outA()),
                    nodes.of(c.outB()), c.setV(), ohms.droop(c.droopOhm()), sources.limitA(c),
                    c.efficiency() > 0 ? c.efficiency() : 1, c.standbyW() > 0 ? c.standbyW() : 0, c.offV(), restartV);
        }
        return null;
    }

    /** A sense terminal to which nothing is connected leaves the source to sense its own terminals. */
    private int sense(int sense, int own) {
        return sense >= 0 && wired[nodes.of(sense)] ? nodes.of(sense) : nodes.of(own);
    }

    /** Stiff EMFs where the network is fed; converters draw at nominal voltage the power that they draw in the running case. */
    private Network.Item designSource(NetworkDesign design, int e, Plan.Element element) {
        double feedV = design.feedV(e);
        if (element instanceof Plan.Cell cell && !Double.isNaN(feedV) && apart(cell.a(), cell.b())) {
            return stiff(cell.id(), cell.a(), cell.b(), feedV);
        } else if (element instanceof Plan.Regulated source && !Double.isNaN(feedV) && apart(source.a(), source.b())) {
            return stiff(source.id(), source.a(), source.b(), feedV);
        } else if (element instanceof Plan.Converter converter) {
            if (!Double.isNaN(feedV) && apart(converter.outA(), converter.outB())) {
                items.add(stiff(converter.id(), converter.outA(), converter.outB(), feedV));
            }
            int in = nodes.of(converter.inA());
            int item = options.held() == null ? -1 : options.held().at().elementItem()[e];
            double watts = item < 0 ? 0
                    : options.held().point().currentA()[item] * options.held().point().voltage(in, nodes.of(converter.inB()));
            return watts > 0 && apart(converter.inA(), converter.inB())
                    ? new Network.Load(converter.id(), in, nodes.of(converter.inB()), Network.LoadLaw.CURRENT,
                            watts / design.nominalV(in), Double.NaN, Double.NaN)
                    : null;
        }
        return null;
    }

    private Network.Item stiff(String id, int plus, int minus, double volts) {
        return new Network.Emf(id, nodes.of(plus), nodes.of(minus), volts, 1e-6);
    }

    private void loads(NetworkLoads loads) {
        forEach((e, element) -> element instanceof Plan.Demand demand && apart(demand.a(), demand.b()) ? loads.on(e, demand)
                : null);
        for (int e = 0; e < elementItem.length; e++) {
            if (!leftOut[e] && plan.elements().get(e) instanceof Plan.Demand demand && apart(demand.a(), demand.b())) {
                Network.Item standby = loads.standby(e, demand);
                if (standby != null) {
                    standbyItem[e] = items.size();
                    items.add(standby);
                }
            }
        }
    }

    private Network.Item comparator(Plan.Threshold threshold) {
        if (Double.isNaN(threshold.onAt()) || Double.isNaN(threshold.offAt())) {
            return null;
        }
        int sensed = threshold.shunt() < 0 ? -1 : elementItem[threshold.shunt()];
        if (sensed < 0 && (threshold.plus() < 0 || threshold.minus() < 0)) {
            return null;
        }
        // a cut-out closed while its battery was full and holds until the voltage falls; a link waits for the voltage to rise
        boolean cutOut = "cutOut".equals(plan.devices().get(threshold.device()).kind());
        return sensed >= 0
                ? new Network.Comparator(threshold.id(), -1, -1, sensed, threshold.onAt(), threshold.offAt(), cutOut)
                : new Network.Comparator(threshold.id(), nodes.of(threshold.plus()), nodes.of(threshold.minus()), -1,
                        threshold.onAt(), threshold.offAt(), cutOut);
    }

    private Network.Item contact(int e, Plan.Contact contact) {
        if (!apart(contact.a(), contact.b())) {
            return null;
        }
        return new Network.Switch(contact.id(), nodes.of(contact.a()), nodes.of(contact.b()), ohms.contact(contact.ohm()),
                options.held() == null ? drive(e, contact) : held(e, contact));
    }

    private Network.Drive held(int e, Plan.Contact contact) {
        int item = options.held().at().elementItem()[e];
        return new Network.Fixed(item < 0 ? contact.restClosed() : options.held().point().on()[item]);
    }

    private Network.Drive drive(int e, Plan.Contact contact) {
        int item = contact.drivenBy() < 0 ? -1 : elementItem[contact.drivenBy()];
        switch (contact.driver()) {
            case "hand":
                for (Plan.ContactState position : state.contacts()) {
                    if (position.contact() == e) {
                        return new Network.Fixed(position.closed());
                    }
                }
                return new Network.Fixed(contact.restClosed());
            case "coil":
                return item < 0 ? new Network.Fixed(contact.restClosed())
                        : byCoil(item, (Plan.Coil) plan.elements().get(contact.drivenBy()), contact.restClosed());
            case "threshold":
                return item < 0 ? new Network.Fixed(contact.restClosed()) : new Network.ByComparator(item, contact.restClosed());
            default:
                return new Network.Fixed(driven(contact.driver()) != contact.restClosed());
        }
    }

    /**
     * A warm coil needs as much more voltage as its resistance has grown, for the same current; without a stated pick-up it
     * rests.
     */
    private Network.Drive byCoil(int item, Plan.Coil coil, boolean restClosed) {
        if (Double.isNaN(coil.pickUpV())) {
            return new Network.Fixed(restClosed);
        }
        double factor = ohms.coilFactor(coil.device());
        double dropOutV = coil.dropOutV() > 0 ? coil.dropOutV() : 0;
        return new Network.ByCoil(item, coil.pickUpV() * factor, dropOutV * factor, restClosed);
    }

    /** Whether the ignition switch or the engine moves contacts of that driver in the case. */
    private boolean driven(String driver) {
        return switch (driver) {
            case "accessory" -> state.ignition().equals("accessory") || state.ignition().equals("on");
            case "ignition" -> state.ignition().equals("on") || state.ignition().equals("start");
            case "start" -> state.ignition().equals("start");
            case "engine" -> state.engineRunning();
            default -> throw new IllegalArgumentException("contact driven by '" + driver
                    + "'; expected hand, coil, threshold, accessory, ignition, start or engine");
        };
    }

    private Network.Item resistor(String id, int a, int b, double ohm) {
        return apart(a, b) ? new Network.Resistor(id, nodes.of(a), nodes.of(b), ohm) : null;
    }

    private boolean apart(int a, int b) {
        return nodes.of(a) != nodes.of(b);
    }
}
