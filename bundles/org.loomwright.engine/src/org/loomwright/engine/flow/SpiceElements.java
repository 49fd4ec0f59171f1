// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

/** The element lines of one network. */
final class SpiceElements {
    private final OperatingPoint point;
    private final FlowOptions options;
    private final String prefix;
    private final double loadScale;
    private final Islands tied;
    private final StringBuilder text = new StringBuilder();

    SpiceElements(OperatingPoint point, FlowOptions options, String prefix) {
        this.point = point;
        this.options = options;
        this.prefix = prefix;
        loadScale = Double.isNaN(point.loadScale()) ? options.loadScale() : point.loadScale();
        tied = Islands.empty(point.network().nodes());
    }

    String text() {
        for (int item = 0; item < point.network().items().size(); item++) {
            write(item, point.network().items().get(item));
        }
        references();
        return text.toString();
    }

    /** A path to ground for each part that has none; it carries nothing. */
    private void references() {
        int reference = tied.first(point.network().reference());
        for (int node = 0; node < point.network().nodes(); node++) {
            double volt = point.potentialV()[node];
            if (tied.first(node) == node && node != reference && !Double.isNaN(volt)) {
                line("V", "r" + node, name(node), "0", volt);
            }
        }
    }

    private void write(int item, Network.Item it) {
        if (it instanceof Network.Wire w) {
            double alpha = w.heat() == null ? 0 : w.heat().alphaPerK();
            resistor(item, w.a(), w.b(), w.r20Ohm() * (1 + alpha * (point.temperatureC()[item] - 20)) + w.jointsOhm());
        } else if (it instanceof Network.Resistor r) {
            resistor(item, r.a(), r.b(), r.ohm());
        } else if (it instanceof Network.Switch s && point.on()[item]) {
            resistor(item, s.a(), s.b(), s.ohm());
        } else if (it instanceof Network.Emf e) {
            behindResistance(item, "", e.a(), e.b(), e.volt(), e.ohmAt(point.currentA()[item]));
        } else if (it instanceof Network.Regulator r) {
            regulator(item, r);
        } else if (it instanceof Network.Rectifier r && point.on()[item]) {
            behindResistance(item, "", r.a(), r.b(), r.forwardV(), r.ohm());
        } else if (it instanceof Network.Load l && point.on()[item]) {
            load(item, l);
        } else if (it instanceof Network.ConverterItem c && point.on()[item]) {
            converter(item, c);
        }
    }

    private void resistor(int item, int a, int b, double ohm) {
        if (live(a, b)) {
            line("R", Integer.toString(item), name(a), name(b), ohm(ohm));
        }
    }

    /** a - resistance - voltage - b. */
    private void behindResistance(int item, String part, int a, int b, double volt, double ohm) {
        if (live(a, b)) {
            String inner = "i" + prefix + item + part;
            line("R", item + part, name(a), inner, ohm(ohm));
            line("V", item + part, inner, name(b), volt);
        }
    }

    private void regulator(int item, Network.Regulator r) {
        if (!point.on()[item] || !live(r.a(), r.b())) {
            return;
        }
        boolean remote = (r.senseA() != r.a() || r.senseB() != r.b())
                && !Double.isNaN(point.voltage(r.senseA(), r.senseB()));
        if (point.limiting()[item]) {
            line("I", Integer.toString(item), name(r.a()), name(r.b()), -r.limitA());
        } else if (remote) {
            double siemens = 1 / ohm(r.droopOhm());
            line("I", Integer.toString(item), name(r.a()), name(r.b()), -r.setV() * siemens);
            line("G", Integer.toString(item), name(r.a()), name(r.b()) + ' ' + name(r.senseA()) + ' ' + name(r.senseB()),
                    siemens);
        } else {
            behindResistance(item, "", r.a(), r.b(), r.setV(), r.droopOhm());
        }
    }

    private void load(int item, Network.Load l) {
        if (!live(l.a(), l.b())) {
            return;
        }
        switch (l.law()) {
            case RESISTANCE -> resistor(item, l.a(), l.b(), l.value() / loadScale);
            case CURRENT -> line("I", Integer.toString(item), name(l.a()), name(l.b()),
                    Math.copySign(loadScale * l.value(), point.voltage(l.a(), l.b())));
            default -> power(item, l.a(), l.b(), Double.toString(loadScale * l.value()));
        }
    }

    private void power(int item, int a, int b, String watt) {
        String volt = "v(" + name(a) + "," + name(b) + ")";
        double floor = options.floorV() * options.floorV();
        text.append('B').append(prefix).append(item).append(' ').append(name(a)).append(' ').append(name(b)).append(" I=(")
                .append(watt).append(")*").append(volt).append("/max(").append(volt).append('*').append(volt).append(',')
                .append(floor).append(")\n");
    }

    private void converter(int item, Network.ConverterItem c) {
        if (!live(c.inA(), c.inB())) {
            return;
        }
        String outV = "v(" + name(c.outA()) + "," + name(c.outB()) + ")";
        String delivered;
        if (point.limiting()[item]) {
            line("I", item + "o", name(c.outA()), name(c.outB()), -c.limitA());
            delivered = Double.toString(c.limitA());
        } else if (point.outputA()[item] == 0) {
            delivered = "0";
        } else {
            behindResistance(item, "o", c.outA(), c.outB(), c.setV(), c.droopOhm());
            delivered = "(-i(V" + prefix + item + "o))";
        }
        power(item, c.inA(), c.inB(), outV + "*" + delivered + "/" + c.efficiency() + "+" + c.standbyW());
        if (point.outputA()[item] != 0) {
            tied.join(c.outA(), c.outB());
        }
    }

    private void line(String kind, String id, String a, String b, double value) {
        text.append(kind).append(prefix).append(id).append(' ').append(a).append(' ').append(b).append(' ').append(value)
                .append('\n');
    }

    /** Both ends have a potential; they then belong to one part. */
    private boolean live(int a, int b) {
        if (Double.isNaN(point.voltage(a, b))) {
            return false;
        }
        tied.join(a, b);
        return true;
    }

    private double ohm(double given) {
        return Math.max(options.smallestOhm(), given);
    }

    private String name(int node) {
        return SpiceNetlist.node(point, node, prefix);
    }
}
