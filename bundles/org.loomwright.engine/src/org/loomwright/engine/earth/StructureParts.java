// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayDeque;
import java.util.Deque;
import org.loomwright.engine.assembly.Plan;

/**
 * Bodies that straps and seams join into one, and how each such part comes home to a battery: by straps and cables made for
 * it, or
 * only through the return of some device.
 */
final class StructureParts {
    private final Plan plan;
    private final EarthNetwork network;
    private final int[] part;
    private final boolean[] consumer;
    private final boolean[] source;

    StructureParts(Plan plan, EarthNetwork network) {
        this.plan = plan;
        this.network = network;
        part = new int[plan.bodies().size()];
        consumer = new boolean[network.nodes()];
        source = new boolean[network.nodes()];
        int[] node = network.solved().at().terminalNode();
        for (Plan.Element element : plan.elements()) {
            int back = EarthNames.returnTerminal(element);
            if (back >= 0) {
                consumer[node[back]] = true;
            }
            int minus = element instanceof Plan.Cell cell ? cell.b()
                    : element instanceof Plan.Converter converter && converter.isolated() ? converter.outB() : -1;
            if (minus >= 0) {
                source[node[minus]] = true;
            }
        }
        join();
    }

    private void join() {
        for (int b = 0; b < part.length; b++) {
            part[b] = b;
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Plan.Bond bond : plan.bonds()) {
                changed |= same(plan.terminals().get(bond.a()).body(), plan.terminals().get(bond.b()).body());
            }
            for (Plan.BodyLink link : plan.bodyLinks()) {
                changed |= same(link.bodyA(), link.bodyB());
            }
        }
    }

    private boolean same(int a, int b) {
        if (a < 0 || b < 0 || part[a] == part[b]) {
            return false;
        }
        int lower = StrictMath.min(part[a], part[b]);
        part[a] = lower;
        part[b] = lower;
        return true;
    }

    /** The lowest body of the part to which a body belongs. */
    int partOf(int body) {
        return part[body];
    }

    /** Whether a part reaches a battery by what is made to carry return current. */
    boolean cleanlyHome(int ofPart) {
        return home(ofPart, false);
    }

    /** Whether it reaches one at all, the returns of devices included. */
    boolean home(int ofPart) {
        return home(ofPart, true);
    }

    private boolean home(int ofPart, boolean throughDevices) {
        boolean[] seen = new boolean[network.nodes()];
        Deque<Integer> open = new ArrayDeque<>();
        for (int body = 0; body < part.length; body++) {
            if (part[body] == ofPart) {
                int node = network.solved().at().bodyNode()[body];
                seen[node] = true;
                open.add(node);
            }
        }
        while (!open.isEmpty()) {
            int node = open.remove();
            if (source[node]) {
                return true;
            }
            if (consumer[node] && !throughDevices) {
                continue;
            }
            for (int item : network.index().itemsAt(node)) {
                if (network.index().passes(item)) {
                    int other = network.other(item, node);
                    if (!seen[other]) {
                        seen[other] = true;
                        open.add(other);
                    }
                }
            }
        }
        return false;
    }
}
