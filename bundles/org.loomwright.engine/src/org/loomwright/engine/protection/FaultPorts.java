// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;

/**
 * The small dense system behind one fault: the fault current J and, at each branch that differs from the factored network, a
 * current c of its own. With v = v0 - J z_f + sum of c_k z_k (z the potentials for 1 A through a port) the fault asks for
 * v_f = R_f J; a branch of EMF E behind r that is to carry a current T asks for (E - v_k) / r + c_k = T.
 */
final class FaultPorts {
    /**
     * What is left of the conductance of something removed. It keeps parts that are cut off tied to the rest, so that the
     * system stays regular, and changes currents by no more than this share.
     */
    private static final double LEAK = 1e-9;
    /** The same for very small resistances, so that a megohm is left in the way; 1/ohm. */
    private static final double LEAK_PER_OHM = 1e-6;
    /** Currents this near a limit, relative to the sum of what flows, are at it. */
    private static final double SAME = 1e-9;

    /** A branch that differs: its ends, EMF and resistance, and the current wanted; NaN for the leak of what is cut. */
    private record Port(int a, int b, double emfV, double ohm, double wantedA, int source, double[] column) {
    }

    /** Rounds in which all modes may change together. */
    private static final int TOGETHER_ROUNDS = 6;

    private static double kept(double ohm) {
        return 1 - StrictMath.min(LEAK, LEAK_PER_OHM * ohm);
    }

    private enum Mode { REGULATING, LIMITING, RESTING }

    private final FaultNetwork network;
    private final double[] fault;
    private final int from;
    private final int to;
    private final double faultOhm;
    private final Mode[] modes;
    private List<Port> ports = List.of();
    private double[] amps = new double[0];

    private FaultPorts(FaultNetwork network, int from, int to, double faultOhm) {
        this.network = network;
        this.from = from;
        this.to = to;
        this.faultOhm = faultOhm;
        fault = network.column(from, to);
        modes = new Mode[network.sources().size()];
        java.util.Arrays.fill(modes, Mode.REGULATING);
    }

    static FaultPorts solve(FaultNetwork network, int from, int to, double faultOhm) {
        FaultPorts system = new FaultPorts(network, from, to, faultOhm);
        system.solve();
        int round = 0;
        int most = TOGETHER_ROUNDS + (3 << StrictMath.min(12, system.modes.length));
        while (system.changeModes(round >= TOGETHER_ROUNDS) && round < most) {
            system.solve();
            round++;
        }
        return system;
    }

    /** Resistance between two nodes with the network's removals, sources as their resistances. */
    static double resistance(FaultNetwork network, int a, int b) {
        FaultPorts system = new FaultPorts(network, a, b, 0);
        double[] z = system.fault;
        List<Port> cut = system.removals();
        int m = cut.size();
        double[][] matrix = new double[m][m + 1];
        for (int i = 0; i < m; i++) {
            Port port = cut.get(i);
            matrix[i][m] = kept(port.ohm()) * (z[port.a()] - z[port.b()]);
            for (int j = 0; j < m; j++) {
                matrix[i][j] = -kept(port.ohm()) * across(cut.get(j).column(), port.a(), port.b()) + (i == j ? port.ohm() : 0);
            }
        }
        double[] c = eliminate(matrix);
        double ohm = z[a] - z[b];
        for (int i = 0; i < m; i++) {
            ohm += c[i] * across(cut.get(i).column(), a, b);
        }
        return ohm;
    }

    /** Current of the fault from the first node to the second, A. */
    double faultA() {
        return amps[0];
    }

    /** Potential of a node, V. */
    double[] potentialsV() {
        double[] v = network.baseV().clone();
        for (int n = 0; n < v.length; n++) {
            v[n] -= amps[0] * fault[n];
        }
        for (int k = 0; k < ports.size(); k++) {
            double c = amps[k + 1];
            double[] column = ports.get(k).column();
            for (int n = 0; n < v.length; n++) {
                v[n] += c * column[n];
            }
        }
        return v;
    }

    /** Current that a source delivers, A. */
    double sourceA(int source) {
        FaultSource s = network.sources().get(source);
        double volts = voltage(s.a(), s.b());
        double delivered = (s.emfV() - volts) / s.ohm();
        for (int k = 0; k < ports.size(); k++) {
            if (ports.get(k).source() == source) {
                delivered = Double.isNaN(ports.get(k).wantedA()) ? 0 : ports.get(k).wantedA();
            }
        }
        return delivered;
    }

    boolean limiting(int source) {
        return modes[source] == Mode.LIMITING;
    }

    private double voltage(int a, int b) {
        double v = across(network.baseV(), a, b) - amps[0] * across(fault, a, b);
        for (int k = 0; k < ports.size(); k++) {
            v += amps[k + 1] * across(ports.get(k).column(), a, b);
        }
        return v;
    }

    private List<Port> removals() {
        List<Port> found = new ArrayList<>();
        for (int position : network.removed()) {
            FaultBranch branch = network.at(position);
            if (branch.a() != branch.b()) {
                found.add(new Port(branch.a(), branch.b(), 0, branch.ohm(), Double.NaN, -1,
                        network.column(branch.a(), branch.b())));
            }
        }
        return found;
    }

    private void solve() {
        List<Port> now = removals();
        for (int s = 0; s < modes.length; s++) {
            FaultSource source = network.sources().get(s);
            if (modes[s] != Mode.REGULATING && network.joined(source.a(), from)) {
                now.add(new Port(source.a(), source.b(), source.emfV(), source.ohm(),
                        modes[s] == Mode.LIMITING ? source.limitA() : Double.NaN, s, network.column(source.a(), source.b())));
            }
        }
        ports = now;
        int m = ports.size();
        double[][] matrix = new double[m + 1][m + 2];
        double[] base = network.baseV();
        matrix[0][m + 1] = across(base, from, to);
        matrix[0][0] = across(fault, from, to) + faultOhm;
        for (int k = 0; k < m; k++) {
            Port port = ports.get(k);
            matrix[0][k + 1] = -across(port.column(), from, to);
            boolean cut = Double.isNaN(port.wantedA());
            double weight = cut ? kept(port.ohm()) : 1;
            matrix[k + 1][0] = weight * across(fault, port.a(), port.b());
            for (int j = 0; j < m; j++) {
                matrix[k + 1][j + 1] = -weight * across(ports.get(j).column(), port.a(), port.b()) + (j == k ? port.ohm() : 0);
            }
            matrix[k + 1][m + 1] = (cut ? 0 : port.wantedA() * port.ohm())
                    - weight * (port.emfV() - across(base, port.a(), port.b()));
        }
        amps = eliminate(matrix);
    }

    /**
     * Sets the modes that the last solution asks for. All together at first, which mostly ends after a round or two; if it does
     * not, the first one only, which cannot come back to a combination it has left (K. G. Murty, Note on a Bard-type scheme
     * for solving the complementarity problem, Opsearch 11, 1974).
     */
    private boolean changeModes(boolean firstOnly) {
        boolean changed = false;
        double total = StrictMath.abs(amps[0]);
        for (int s = 0; s < modes.length; s++) {
            FaultSource source = network.sources().get(s);
            if (!source.oneWay() || !network.joined(source.a(), from)) {
                continue;
            }
            double wouldA = (source.emfV() - voltage(source.a(), source.b())) / source.ohm();
            double margin = SAME * StrictMath.max(1, total);
            Mode next = switch (modes[s]) {
                case REGULATING -> wouldA > source.limitA() + margin ? Mode.LIMITING : wouldA < -margin ? Mode.RESTING
                        : Mode.REGULATING;
                case LIMITING -> wouldA < source.limitA() - margin ? Mode.REGULATING : Mode.LIMITING;
                default -> wouldA > margin ? Mode.REGULATING : Mode.RESTING;
            };
            changed |= next != modes[s];
            modes[s] = next;
            if (changed && firstOnly) {
                return true;
            }
        }
        return changed;
    }

    private static double across(double[] v, int a, int b) {
        return v[a] - v[b];
    }

    /** Gauss with row pivots on a matrix with its right side as last column. */
    private static double[] eliminate(double[][] m) {
        int n = m.length;
        for (int i = 0; i < n; i++) {
            int best = i;
            for (int r = i + 1; r < n; r++) {
                if (StrictMath.abs(m[r][i]) > StrictMath.abs(m[best][i])) {
                    best = r;
                }
            }
            double[] row = m[best];
            m[best] = m[i];
            m[i] = row;
            for (int r = i + 1; r < n && row[i] != 0; r++) {
                double factor = m[r][i] / row[i];
                for (int c = i; factor != 0 && c <= n; c++) {
                    m[r][c] -= factor * row[c];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = m[i][n];
            for (int c = i + 1; c < n; c++) {
                sum -= m[i][c] * x[c];
            }
            x[i] = m[i][i] == 0 ? 0 : sum / m[i][i];
        }
        return x;
    }
}
