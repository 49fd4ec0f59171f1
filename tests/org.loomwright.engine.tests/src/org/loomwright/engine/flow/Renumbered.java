// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** Items with the nodes and items they refer to in other places. */
final class Renumbered {
    private Renumbered() {
    }

    static Network.Item of(Network.Item it, int[] n, int[] i) {
        if (it instanceof Network.Wire w) {
            return new Network.Wire(w.id(), n[w.a()], n[w.b()], w.r20Ohm(), w.jointsOhm(), w.heat());
        } else if (it instanceof Network.Resistor r) {
            return new Network.Resistor(r.id(), n[r.a()], n[r.b()], r.ohm());
        } else if (it instanceof Network.Switch s) {
            return new Network.Switch(s.id(), n[s.a()], n[s.b()], s.ohm(), drive(s.drive(), i));
        } else if (it instanceof Network.Emf e) {
            return new Network.Emf(e.id(), n[e.a()], n[e.b()], e.volt(), e.ohm(), e.chargeOhm());
        } else if (it instanceof Network.Regulator r) {
            return new Network.Regulator(r.id(), n[r.a()], n[r.b()], r.setV(), r.droopOhm(), r.limitA(), n[r.senseA()],
                    n[r.senseB()]);
        } else if (it instanceof Network.Rectifier r) {
            return new Network.Rectifier(r.id(), n[r.a()], n[r.b()], r.forwardV(), r.ohm());
        } else if (it instanceof Network.Load l) {
            return new Network.Load(l.id(), n[l.a()], n[l.b()], l.law(), l.value(), l.offV(), l.restartV());
        } else if (it instanceof Network.ConverterItem c) {
            return new Network.ConverterItem(c.id(), n[c.inA()], n[c.inB()], n[c.outA()], n[c.outB()], c.setV(), c.droopOhm(),
                    c.limitA(), c.efficiency(), c.standbyW(), c.offV(), c.restartV());
        }
        Network.Comparator c = (Network.Comparator) it;
        return new Network.Comparator(c.id(), c.plus() < 0 ? -1 : n[c.plus()], c.minus() < 0 ? -1 : n[c.minus()],
                c.sensed() < 0 ? -1 : i[c.sensed()], c.onAt(), c.offAt(), c.startsOn());
    }

    private static Network.Drive drive(Network.Drive drive, int[] i) {
        if (drive instanceof Network.ByCoil c) {
            return new Network.ByCoil(i[c.coil()], c.pickUpV(), c.dropOutV(), c.restClosed());
        }
        return drive instanceof Network.ByComparator c ? new Network.ByComparator(i[c.comparator()], c.restClosed()) : drive;
    }
}
