// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.List;

/**
 * The solved state of a {@link Network}. Arrays are indexed as the network's nodes and items and must not be changed.
 *
 * @param network        the network solved
 * @param status         whether and how it was solved
 * @param potentialV     potential of each node, V; NaN in islands without a source
 * @param currentA       current of each item from a to b, A; for a converter the current into inA; 0 for comparators
 * @param outputA        current a converter delivers at outA, A; 0 for other items
 * @param temperatureC   temperature of each wire, degrees Celsius; NaN for other items
 * @param on             load or converter working, contact closed, comparator on, rectifier conducting, regulator delivering
 * @param limiting       regulator or converter output at its current limit
 * @param trouble        items that made the status what it is: the weakest load on collapse, the items that change on a cycle
 * @param loadScale      on collapse the largest common factor on all loads that still has a solution, 0 when there is none even
 *                       without loads (a converter that cannot be fed, say; the figures then are no operating point); else NaN
 * @param residual       largest sum of currents at a node over the largest current
 * @param powerResidual  power given by sources less power taken and lost, over the largest power
 */
public record OperatingPoint(Network network, Status status, double[] potentialV, double[] currentA, double[] outputA,
        double[] temperatureC, boolean[] on, boolean[] limiting, List<Integer> trouble, double loadScale, double residual,
        double powerResidual) {

    /** How the solution ended. */
    public enum Status {
        /** An operating point was found. */
        SOLVED,
        /** The loads ask for more than the network can bring; figures are those of the largest load that still works. */
        COLLAPSED,
        /**
         * Contacts, cut-outs or loads switch each other on and off without end; figures are those of one of the states that has
         * a solution. Where none of them has one the network has collapsed.
         */
        CYCLING
    }

    /** Voltage between two nodes, V. */
    public double voltage(int a, int b) {
        return potentialV[a] - potentialV[b];
    }
}
