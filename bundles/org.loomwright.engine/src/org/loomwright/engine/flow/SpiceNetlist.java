// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.flow;

import java.util.Locale;

/**
 * Writes a solved network as a netlist for general-purpose circuit simulators of the SPICE family (checked with ngspice). Cables
 * stand there at their temperature, contacts and cut-outs as they are, regulators, rectifiers and converters in their modes;
 * what depends on a voltage, like a load of constant power, is a behavioural source. The simulator then solves Kirchhoff's laws
 * on its own, from rough start values.
 *
 * <p>Nodes are named {@code n} and their index, the reference is {@code 0}; comments tell which node is which.
 */
public final class SpiceNetlist {
    /** Start values are rounded to this, V: near enough to find the solution with the higher voltages, and no more than that. */
    private static final double ROUGH_V = 0.5;

    private SpiceNetlist() {
    }

    /**
     * A whole deck: title, elements, start values, operating point, potentials printed.
     *
     * @param point   operating point
     * @param options with which it was found
     */
    public static String deck(OperatingPoint point, FlowOptions options) {
        StringBuilder text = new StringBuilder("* Network of ").append(point.network().nodes()).append(" nodes and ")
                .append(point.network().items().size()).append(" items\n");
        for (int node = 0; node < point.network().nodes(); node++) {
            if (!Double.isNaN(point.potentialV()[node])) {
                text.append("* ").append(node(point, node, "")).append(" is ")
                        .append(comment(point.network().nodeIds().get(node))).append('\n');
            }
        }
        text.append(circuit(point, options, ""));
        text.append(".options reltol=1e-10 abstol=1e-10 vntol=1e-10 itl1=1000\n.op\n");
        for (int node = 0; node < point.network().nodes(); node++) {
            if (shown(point, node)) {
                text.append(".print op v(").append(node(point, node, "")).append(")\n");
            }
        }
        return text.append(".end\n").toString();
    }

    /**
     * The elements and start values alone, so that several networks fit into one deck.
     *
     * @param prefix letters and digits put after the kind letter of all names of this network; may be empty
     */
    public static String circuit(OperatingPoint point, FlowOptions options, String prefix) {
        if (!prefix.matches("[a-z0-9]*")) {
            throw new IllegalArgumentException("netlist prefix '" + prefix + "', expected lower-case letters and digits");
        }
        StringBuilder text = new StringBuilder(new SpiceElements(point, options, prefix).text());
        for (int node = 0; node < point.network().nodes(); node++) {
            if (shown(point, node)) {
                double rough = Math.rint(point.potentialV()[node] / ROUGH_V) * ROUGH_V;
                text.append(String.format(Locale.ROOT, ".nodeset v(%s)=%.1f%n", node(point, node, prefix), rough));
            }
        }
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    /** Name of a node in the netlist. */
    public static String node(OperatingPoint point, int node, String prefix) {
        return node == point.network().reference() ? "0" : "n" + prefix + node;
    }

    private static boolean shown(OperatingPoint point, int node) {
        return node != point.network().reference() && !Double.isNaN(point.potentialV()[node]);
    }

    /** Text in one line of plain characters. */
    static String comment(String text) {
        return text.replaceAll("[^\\x20-\\x7e]", "?");
    }
}
