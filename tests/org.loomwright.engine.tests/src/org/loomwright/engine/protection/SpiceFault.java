// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomwright.engine.flow.SpiceRun;

/**
 * One fault as a circuit for ngspice. The fault and each bond carry a source of 0 V, whose current is printed. A source that only
 * delivers, up to a limit, stands there in its mode: an EMF behind its resistance, a current, or nothing; whether the mode is
 * right is then judged by the voltage that the simulator finds over it, as a network has one set of modes only.
 */
final class SpiceFault {
    private static final Pattern VALUE = Pattern.compile("(?m)^\\s*[iv]\\(v?([fbd][0-9y]+)\\)\\s*=\\s*(\\S+)\\s*$");

    private final FaultNetwork network;
    private final FaultFlow flow;
    private final int[] pair;
    private final List<Integer> bonds = new ArrayList<>();

    SpiceFault(FaultNetwork network, int[] pair) {
        this.network = network;
        this.pair = pair;
        flow = network.fault(pair[0], pair[1]);
        if (flow.currentA() != 0) {
            for (int k = 0; k < network.branches().size(); k++) {
                FaultBranch branch = network.branches().get(k);
                boolean here = network.joined(branch.a(), pair[0]);
                if (here && branch.kind() == FaultBranch.Kind.BOND && !network.isRemoved(k)) {
                    bonds.add(k);
                }
            }
        }
    }

    FaultFlow flow() {
        return flow;
    }

    /** Positions of the bonds whose current is compared. */
    List<Integer> bonds() {
        return bonds;
    }

    /** Number of sources at their limit. */
    int limited() {
        int count = 0;
        for (FaultSource source : network.sources()) {
            count += Double.isFinite(source.limitA()) && flow.sourceA(source.element()) >= source.limitA() * (1 - 1e-9) ? 1 : 0;
        }
        return count;
    }

    /** Currents of the faults ({@code fK}) and their bonds ({@code bKyBRANCH}), A. */
    static Map<String, Double> run(List<SpiceFault> faults) {
        StringBuilder deck = new StringBuilder("* bolted faults\n");
        StringBuilder wanted = new StringBuilder();
        for (int k = 0; k < faults.size(); k++) {
            faults.get(k).write(k, deck, wanted);
        }
        deck.append(".options reltol=1e-12 abstol=1e-12 vntol=1e-13 gmin=1e-15 itl1=3000\n.control\nset numdgt=15\nop\n")
                .append(wanted).append("quit\n.endc\n.end\n");
        String out = SpiceRun.of(deck.toString());
        Map<String, Double> found = new HashMap<>();
        Matcher matcher = VALUE.matcher(out);
        while (matcher.find()) {
            found.put(matcher.group(1), Double.parseDouble(matcher.group(2)));
        }
        if (found.size() < faults.size()) {
            throw new AssertionError("ngspice printed only some currents:\n" + out);
        }
        return found;
    }

    /** A current that has to be there. */
    static double printed(Map<String, Double> found, String name) {
        if (!found.containsKey(name)) {
            throw new AssertionError("ngspice printed nothing for " + name);
        }
        return found.get(name);
    }

    private void write(int k, StringBuilder deck, StringBuilder wanted) {
        List<FaultBranch> branches = network.branches();
        for (int i = 0; i < branches.size(); i++) {
            FaultBranch branch = branches.get(i);
            if (network.isRemoved(i)) {
                continue;
            }
            boolean shown = bonds.contains(i);
            String middle = shown ? "m" + k + "y" + i : node(k, branch.b());
            deck.append("R").append(k).append('y').append(i).append(' ').append(node(k, branch.a())).append(' ').append(middle)
                    .append(' ').append(branch.ohm()).append('\n');
            if (shown) {
                deck.append("Vb").append(k).append('y').append(i).append(' ').append(middle).append(' ')
                        .append(node(k, branch.b())).append(" 0\n");
                wanted.append("print i(vb").append(k).append('y').append(i).append(")\n");
            }
        }
        int nodes = 0;
        for (FaultBranch branch : branches) {
            nodes = Math.max(nodes, 1 + Math.max(branch.a(), branch.b()));
        }
        for (FaultSource source : network.sources()) {
            write(k, source, deck, wanted);
        }
        for (int n = 0; n < nodes; n++) {
            if (n != pair[1]) {
                deck.append("RG").append(k).append('y').append(n).append(' ').append(node(k, n)).append(" 0 1e9\n");
            }
        }
        deck.append("Vf").append(k).append(' ').append(node(k, pair[0])).append(' ').append(node(k, pair[1])).append(" 0\n");
        wanted.append("print i(vf").append(k).append(")\n");
    }

    private void write(int k, FaultSource source, StringBuilder deck, StringBuilder wanted) {
        String name = k + "y" + source.element();
        String a = node(k, source.a());
        String b = node(k, source.b());
        if (!source.oneWay()) {
            deck.append("RS").append(name).append(' ').append(a).append(" s").append(name).append(' ').append(source.ohm())
                    .append("\nVS").append(name).append(" s").append(name).append(' ').append(b).append(' ')
                    .append(source.emfV()).append('\n');
            return;
        }
        double deliveredA = flow.sourceA(source.element());
        double over = flow.aboveReturnV(source.a()) - flow.aboveReturnV(source.b());
        if (Double.isFinite(source.limitA()) && deliveredA >= source.limitA() * (1 - 1e-9)) {
            deck.append("IS").append(name).append(' ').append(b).append(' ').append(a).append(' ').append(source.limitA())
                    .append('\n');
        } else if (deliveredA > 0 || !(over > source.emfV() + 1e-6)) {
            deck.append("RS").append(name).append(' ').append(a).append(" s").append(name).append(' ').append(source.ohm())
                    .append("\nVS").append(name).append(" s").append(name).append(' ').append(b).append(' ')
                    .append(source.emfV()).append('\n');
        }
        deck.append("ED").append(name).append(" d").append(name).append(" 0 ").append(a).append(' ').append(b).append(" 1\n");
        wanted.append("print v(d").append(name).append(")\n");
    }

    /** Checks by the simulator's voltages that each source is in the mode that its law asks for. */
    void checkModes(int k, Map<String, Double> found) {
        for (FaultSource source : network.sources()) {
            if (!source.oneWay() || flow.currentA() == 0 || !network.joined(source.a(), pair[0])) {
                continue;
            }
            double wouldA = (source.emfV() - printed(found, "d" + k + "y" + source.element())) / source.ohm();
            double deliveredA = Math.max(0, Math.min(source.limitA(), wouldA));
            double room = 2e-3 + 1e-6 * Math.abs(flow.currentA()) + 1e-9 / source.ohm();
            if (!(Math.abs(deliveredA - flow.sourceA(source.element())) <= room)) {
                throw new AssertionError(this + ": " + source + " should deliver " + deliveredA + " A, not "
                        + flow.sourceA(source.element()) + " A");
            }
        }
    }

    /** The node that the current goes to is the circuit's ground. */
    private String node(int k, int node) {
        return node == pair[1] ? "0" : "n" + k + "y" + node;
    }

    @Override
    public String toString() {
        return network.extreme() + " fault from node " + pair[0] + " to " + pair[1] + " of " + network.plan().vehicle();
    }
}
