// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.loomwright.model.parts.Converter;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.rules.ConnectionGraph;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Vehicle;

/** Which terminals are on the plus side of which supply, with every contact able to close. */
final class Supplies {
    /** Voltages further apart than this are not of one level: charging 12 V lead stays below 1.25 times its nominal voltage. */
    private static final double APART = 1.5;

    /**
     * Where current comes from.
     *
     * @param name     domain, or device whose output it is
     * @param nominalV its voltage, V
     */
    record Supply(String name, BigDecimal nominalV) {
        String words() {
            return nominalV.stripTrailingZeros().toPlainString() + " V (" + name + ")";
        }
    }

    private final ConnectionGraph graph;
    private final Map<Object, Supply> nearest;

    Supplies(Vehicle vehicle, Arrangement arrangement) {
        graph = new ConnectionGraph(vehicle, arrangement);
        Map<Object, Supply> starts = new LinkedHashMap<>();
        for (Domain domain : vehicle.getDomains()) {
            if (WireEnd.of(domain.getSource()) instanceof WireEnd.Pin pin && pin.spec() != null && domain.getNominalV() != null) {
                starts.putIfAbsent(node(pin), new Supply(domain.getName(), domain.getNominalV()));
            }
        }
        Stream.concat(vehicle.getDevices().stream(), arrangement == null ? Stream.of() : arrangement.getDevices().stream())
                .forEach(device -> outputs(device, starts));
        nearest = graph.nearest(starts);
    }

    private void outputs(Device device, Map<Object, Supply> starts) {
        if (device.getPart() == null || device.getPart().eIsProxy()) {
            return;
        }
        for (Converter converter : device.getPart().getConverters()) {
            TerminalSpec plus = converter.getOutPlus();
            if (plus != null && converter.getSetV() != null) {
                starts.putIfAbsent(graph.node(device, plus), new Supply("-" + device.getName(), converter.getSetV()));
            }
        }
    }

    private Object node(WireEnd.Pin pin) {
        return graph.node(pin.device(), pin.spec());
    }

    /** The supply a terminal is on; null for none, for the return side, and for earth points. */
    Supply of(WireEnd end) {
        return end instanceof WireEnd.Pin pin && pin.spec() != null ? nearest.get(node(pin)) : null;
    }

    /** True when both ends are one piece of metal: the same terminal, or terminals of one bar. */
    boolean one(WireEnd a, WireEnd b) {
        return a.equals(b) || a instanceof WireEnd.Pin p && b instanceof WireEnd.Pin q && p.device() == q.device()
                && p.spec() != null && q.spec() != null && node(p).equals(node(q));
    }

    /** True when two voltages are not of one level. */
    static boolean apart(BigDecimal a, BigDecimal b) {
        double ratio = a.doubleValue() / b.doubleValue();
        return ratio > APART || ratio < 1 / APART;
    }
}
