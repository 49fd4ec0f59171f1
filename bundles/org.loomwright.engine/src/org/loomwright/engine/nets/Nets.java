// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.nets;

import java.util.List;

/**
 * Which terminals can come to be one conductive net, whatever the case: over conductors, joints, shunts, contacts (open or
 * closed), protectors and diodes, but not through cells, loads, coils, regulated sources or converters. Structure bodies and
 * bonds join the net of the returns. The arrays must not be changed.
 *
 * @param netOf      net of each terminal of the plan
 * @param bodyNet    net of each structure body
 * @param nets       the nets
 */
public record Nets(int[] netOf, int[] bodyNet, List<Net> nets) {
    public Nets {
        nets = List.copyOf(nets);
    }

    /** What a net carries. */
    public enum Kind {
        /** Reached from the plus side of a source. */
        PLUS,
        /** Reached from the minus side of a source, or structure. */
        MINUS,
        /** Middle of a series pair. */
        MIDDLE,
        /** Control or sense wires that no source feeds directly. */
        CONTROL,
        /** No source reaches it. */
        DEAD,
        /** Plus of one source and minus of one, or plus of two domains: something is connected wrongly. */
        MIXED
    }

    /**
     * One net.
     *
     * @param domain    domain of the plan, or -1
     * @param terminals terminals of the plan, rising
     */
    public record Net(Kind kind, int domain, List<Integer> terminals) {
        public Net {
            terminals = List.copyOf(terminals);
        }
    }
}
