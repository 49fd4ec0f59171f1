// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How the current of one fault flows: through which devices, conductors and bonds, and how it shares in meshes. What charging
 * sources give to batteries meanwhile flows as well, not so in nets apart from the fault. Where nothing closes the loop all
 * currents are 0.
 */
public final class FaultFlow {
    /** Currents below this are what is left of something removed, or rounding; A. */
    static final double NOTHING_A = 1e-3;

    private final FaultNetwork network;
    private final int from;
    private final int to;
    private final double faultOhm;
    private final double faultA;
    private final double[] potentialV;
    private final double[] sourceA;
    private final double openV;

    FaultFlow(FaultNetwork network, int from, int to, FaultPorts ports, double faultOhm) {
        this.network = network;
        this.from = from;
        this.to = to;
        this.faultOhm = faultOhm;
        faultA = ports == null ? 0 : noise(ports.faultA());
        potentialV = ports == null ? null : ports.potentialsV();
        sourceA = new double[network.sources().size()];
        for (int s = 0; faultA != 0 && s < sourceA.length; s++) {
            sourceA[s] = network.joined(network.sources().get(s).a(), from) ? ports.sourceA(s) : 0;
        }
        openV = from == to || !network.joined(from, to) ? 0 : network.baseV()[from] - network.baseV()[to];
    }

    /** A fault that no longer carries a current. */
    static FaultFlow none(FaultNetwork network, int from, int to) {
        return new FaultFlow(network, from, to, null, 0);
    }

    static double noise(double amps) {
        return StrictMath.abs(amps) < NOTHING_A ? 0 : amps;
    }

    /** The network. */
    public FaultNetwork network() {
        return network;
    }

    /** Node the fault current comes from. */
    public int from() {
        return from;
    }

    /** Node it goes to. */
    public int to() {
        return to;
    }

    /** Current of the fault from the first node to the second, A; 0 where there is no closed way. */
    public double currentA() {
        return faultA;
    }

    /** Voltage between the two nodes before the fault, no load, all sources at their set voltages, V. */
    public double openV() {
        return openV;
    }

    /** Open voltage over current, ohm: what the loop has as a whole; infinite without a current. */
    public double loopOhm() {
        return faultA == 0 ? Double.POSITIVE_INFINITY : openV / faultA;
    }

    /** Current of a branch from its a to its b, A. */
    public double branchA(int position) {
        if (position < 0 || faultA == 0 || network.isRemoved(position)) {
            return 0;
        }
        FaultBranch branch = network.at(position);
        if (!network.joined(branch.a(), from)) {
            return 0;
        }
        return noise((potentialV[branch.a()] - potentialV[branch.b()]) / branch.ohm());
    }

    /** Current of a conductor from a to b, A. */
    public double conductorA(int conductor) {
        return branchA(network.branch(FaultBranch.Kind.CONDUCTOR, conductor));
    }

    /** Current of a joint, contact, shunt or protective device from a to b, A. */
    public double elementA(int element) {
        return branchA(network.branch(FaultBranch.Kind.ELEMENT, element));
    }

    /** Current of a bond from a to b, A. */
    public double bondA(int bond) {
        return branchA(network.branch(FaultBranch.Kind.BOND, bond));
    }

    /** Current that a source delivers at its plus (a diode: passes), A; 0 for other elements. */
    public double sourceA(int element) {
        for (int s = 0; s < sourceA.length; s++) {
            if (network.sources().get(s).element() == element) {
                return noise(sourceA[s]);
            }
        }
        return 0;
    }

    /** Potential of a node above the node the current goes to, V; NaN where nothing joins the two. */
    public double aboveReturnV(int node) {
        return potentialV == null || !network.joined(node, to) ? Double.NaN : potentialV[node] - potentialV[to];
    }

    /** Protective devices that carry any of the current, elements in the plan's order. */
    public List<Integer> protectors() {
        List<Integer> found = new ArrayList<>();
        for (int e : network.protectors()) {
            if (elementA(e) != 0) {
                found.add(e);
            }
        }
        return found;
    }

    /**
     * Protective devices through which current comes to a node.
     *
     * @param next  those with no other device between
     * @param all   all of them up to the sources, the nearest first
     * @param bareA current of the sources that come there without any device, A
     */
    public record Upstream(List<Integer> next, List<Integer> all, double bareA) {
        static final Upstream NONE = new Upstream(List.of(), List.of(), 0);

        public Upstream {
            next = List.copyOf(next);
            all = List.copyOf(all);
        }
    }

    /**
     * Follows current against its direction from a node up to the sources.
     *
     * @param node    node the current comes to
     * @param without position of a branch not to follow, or -1
     */
    public Upstream upstream(int node, int without) {
        Set<Integer> all = new LinkedHashSet<>();
        Set<Integer> next = new LinkedHashSet<>();
        Set<Integer> counted = new LinkedHashSet<>();
        if (faultA == 0) {
            return Upstream.NONE;
        }
        // 1 reached without passing a device, 2 behind one
        byte[] seen = new byte[potentialV.length];
        Deque<Integer> open = new ArrayDeque<>(List.of(node));
        seen[node] = 1;
        int sign = faultA < 0 ? -1 : 1;
        double bareA = 0;
        while (!open.isEmpty()) {
            int at = open.remove();
            for (int s = 0; s < sourceA.length; s++) {
                FaultSource source = network.sources().get(s);
                double delivered = source.a() == at ? sign * noise(sourceA[s]) : 0;
                if (delivered > 0 && (network.isDiode(source) || inSeries(source))) {
                    visit(source.b(), seen[at], seen, open);
                } else if (delivered > 0 && seen[at] == 1 && counted.add(s)) {
                    bareA += delivered;
                }
            }
            for (int position : network.around(at)) {
                FaultBranch branch = network.at(position);
                int other = branch.a() == at ? branch.b() : branch.a();
                double into = sign * (branch.b() == at ? branchA(position) : -branchA(position));
                if (position == without || into <= 0) {
                    continue;
                }
                byte level = seen[at];
                if (network.isProtector(branch)) {
                    all.add(branch.index());
                    if (level == 1) {
                        next.add(branch.index());
                    }
                    level = 2;
                }
                visit(other, level, seen, open);
            }
        }
        return new Upstream(List.copyOf(next), List.copyOf(all), bareA);
    }

    /** Whether the minus of a source lies well above where the current goes: on another source in series. */
    private boolean inSeries(FaultSource source) {
        double above = network.joined(source.b(), to) ? network.baseV()[source.b()] - network.baseV()[to] : 0;
        return StrictMath.abs(above) > StrictMath.abs(openV) / 4;
    }

    private static void visit(int node, byte level, byte[] seen, Deque<Integer> open) {
        if (seen[node] == 0 || level < seen[node]) {
            seen[node] = level;
            open.add(node);
        }
    }

    /** The loop's shares: branches by the voltage that they take, largest first; together with the sources they make the loop. */
    public List<LoopShare> shares() {
        List<LoopShare> shares = new ArrayList<>();
        for (int position = 0; position < network.branchCount(); position++) {
            double amps = branchA(position);
            if (amps != 0) {
                shares.add(LoopShare.of(network.at(position), StrictMath.abs(amps), StrictMath.abs(openV * faultA)));
            }
        }
        shares.sort((x, y) -> Double.compare(y.watts(), x.watts()));
        return shares;
    }

    /** Resistance of the fault itself, ohm. */
    public double faultOhm() {
        return faultOhm;
    }
}
