// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.ArrayList;
import java.util.List;

/** The laws of a network and its nodal matrix, made once and set up for one set of states after the other. */
final class Circuit {
    /** At no scale does a resistive load cease to tie its ends together. */
    private static final double SMALLEST_SCALE = 1e-9;

    final Network network;
    final FlowOptions options;
    /** All laws; a converter has two. */
    final List<Pole> poles = new ArrayList<>();
    /** Law of each item; of a converter that of its input; null for comparators. */
    final Pole[] poleOf;
    /** Output of each converter, else null. */
    final RegulatedPole[] outputOf;
    final List<DemandPole> demands = new ArrayList<>();
    final List<WirePole> wires = new ArrayList<>();
    final List<RegulatedPole> regulated = new ArrayList<>();
    final NodalMatrix matrix;
    /** Nodes whose potential is not sought: dead ones, and one of each island. */
    final boolean[] held;
    /** Nodes of islands with a source. */
    final boolean[] live;
    private double loadScale;

    Circuit(Network network, FlowOptions options) {
        this.network = network;
        this.options = options;
        int items = network.items().size();
        poleOf = new Pole[items];
        outputOf = new RegulatedPole[items];
        held = new boolean[network.nodes()];
        live = new boolean[network.nodes()];
        for (int item = 0; item < items; item++) {
            poleOf[item] = make(network.items().get(item), item);
            if (poleOf[item] != null) {
                poles.add(poleOf[item]);
            }
        }
        NodalMatrix.Pattern pattern = new NodalMatrix.Pattern(network.nodes(), network.reference());
        for (Pole pole : poles) {
            pole.entries(pattern);
        }
        matrix = pattern.matrix();
        for (Pole pole : poles) {
            pole.bind(matrix);
        }
        scaleLoads(options.loadScale());
    }

    private Pole make(Network.Item item, int index) {
        if (item instanceof Network.Wire wire) {
            WirePole pole = new WirePole(wire, options);
            wires.add(pole);
            return pole;
        }
        if (item instanceof Network.Resistor resistor) {
            return new OhmicPole(resistor.a(), resistor.b(), ohm(resistor.ohm()));
        }
        if (item instanceof Network.Switch contact) {
            return new OhmicPole(contact.a(), contact.b(), ohm(contact.ohm()));
        }
        if (item instanceof Network.Emf emf) {
            return emf.chargeOhm() == emf.ohm() ? OhmicPole.emf(emf.a(), emf.b(), emf.volt(), ohm(emf.ohm()))
                    : new EmfPole(emf.a(), emf.b(), emf.volt(), ohm(emf.ohm()), ohm(emf.chargeOhm()));
        }
        if (item instanceof Network.Regulator r) {
            return regulated(new RegulatedPole(r.a(), r.b(), r.setV(), ohm(r.droopOhm()), r.limitA(), r.senseA(), r.senseB()));
        }
        if (item instanceof Network.Rectifier rectifier) {
            return new RectifierPole(rectifier.a(), rectifier.b(), rectifier.forwardV(), ohm(rectifier.ohm()));
        }
        if (item instanceof Network.Load load) {
            if (load.law() == Network.LoadLaw.RESISTANCE) {
                return new OhmicPole(load.a(), load.b(), load.value());
            }
            return demand(new DemandPole(load.a(), load.b(), load.law() == Network.LoadLaw.POWER, options.floorV()));
        }
        if (item instanceof Network.ConverterItem c) {
            RegulatedPole output = regulated(new RegulatedPole(c.outA(), c.outB(), c.setV(), ohm(c.droopOhm()), c.limitA(),
                    c.outA(), c.outB()));
            outputOf[index] = output;
            poles.add(output);
            return demand(new ConverterInput(c, output, options.floorV()));
        }
        return null;
    }

    private RegulatedPole regulated(RegulatedPole pole) {
        regulated.add(pole);
        return pole;
    }

    private DemandPole demand(DemandPole pole) {
        demands.add(pole);
        return pole;
    }

    private double ohm(double given) {
        return Math.max(options.smallestOhm(), given);
    }

    /** Common factor on the loads of the present state. */
    double loadScale() {
        return loadScale;
    }

    /** Sets the common factor on all loads: on watts, amperes and siemens. */
    void scaleLoads(double scale) {
        loadScale = scale;
        for (int item = 0; item < poleOf.length; item++) {
            if (network.items().get(item) instanceof Network.Load load) {
                if (poleOf[item] instanceof OhmicPole ohmic) {
                    ohmic.setSiemens(Math.max(scale, SMALLEST_SCALE) / load.value());
                } else if (poleOf[item] instanceof DemandPole demand) {
                    demand.setAmount(scale * load.value());
                }
            }
        }
    }

    /**
     * Sets the laws up for a set of states: which contacts are closed, which loads and converters work, which part of the
     * network is alive.
     */
    void configure(States states) {
        for (int item = 0; item < poleOf.length; item++) {
            Network.Item it = network.items().get(item);
            if (it instanceof Network.Switch || it instanceof Network.Load || it instanceof Network.ConverterItem) {
                poleOf[item].active = states.on(item);
            } else if (poleOf[item] != null) {
                poleOf[item].active = true;
            }
            if (it instanceof Network.Regulator) {
                poleOf[item].active = ((RegulatedPole) poleOf[item]).limitA() > 0;
            }
        }
        Islands islands = Islands.alive(this);
        for (int node = 0; node < live.length; node++) {
            live[node] = islands.live(node);
            held[node] = !live[node] || islands.first(node) == node;
        }
        int reference = network.reference();
        if (live[reference]) {
            held[islands.first(reference)] = false;
            held[reference] = true;
        }
        for (Pole pole : poles) {
            pole.active &= live[pole.a] && live[pole.b];
        }
        for (RegulatedPole pole : regulated) {
            pole.sense(live[pole.senseA()] && islands.first(pole.senseA()) == islands.first(pole.senseB()));
        }
    }
}
