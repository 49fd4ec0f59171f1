// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.nets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.DisjointSets;
import org.loomwright.engine.assembly.Plan;

/**
 * Finds the {@link Nets} of a plan. Contacts of one device that share a terminal are change-over or reversing contacts: only one
 * of them is closed at a time, so they do not join plus with minus, nor two voltages; and a diode that blocks between plus
 * and minus
 * does not join them either.
 */
public final class NetFinder {
    private final Plan plan;
    private final int terminals;
    private final int[] netOf;
    private final int[] bodyNet;
    private final List<List<Integer>> members = new ArrayList<>();

    private NetFinder(Plan plan) {
        this.plan = plan;
        terminals = plan.terminals().size();
        netOf = new int[terminals];
        bodyNet = new int[plan.bodies().size()];
        number(NetJoins.of(plan));
    }

    /** The nets of a plan, numbered by their first terminal; bodies without terminals come last. */
    public static Nets find(Plan plan) {
        return new NetFinder(plan).nets();
    }

    private void number(DisjointSets sets) {
        int[] netOfSet = new int[terminals + bodyNet.length];
        Arrays.fill(netOfSet, -1);
        for (int member = 0; member < netOfSet.length; member++) {
            int set = sets.find(member);
            if (netOfSet[set] < 0) {
                netOfSet[set] = members.size();
                members.add(new ArrayList<>());
            }
            int net = netOfSet[set];
            if (member < terminals) {
                netOf[member] = net;
                members.get(net).add(member);
            } else {
                bodyNet[member - terminals] = net;
            }
        }
    }

    private Nets nets() {
        NetSources sources = new NetSources(plan, netOf, bodyNet, members.size());
        List<Nets.Net> nets = new ArrayList<>();
        for (int n = 0; n < members.size(); n++) {
            Nets.Kind kind = sources.kind(n);
            if (kind == Nets.Kind.DEAD && members.get(n).stream().anyMatch(this::isControl)) {
                kind = Nets.Kind.CONTROL;
            }
            nets.add(new Nets.Net(kind, sources.domain(n), members.get(n)));
        }
        return new Nets(netOf, bodyNet, nets);
    }

    private boolean isControl(int terminal) {
        String role = plan.terminals().get(terminal).role();
        return "control".equals(role) || "sense".equals(role) || "signal".equals(role);
    }
}
