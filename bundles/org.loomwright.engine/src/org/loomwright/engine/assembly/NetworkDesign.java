// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.loomwright.engine.flow.Network;

/**
 * Which sources feed the network of the drop, and with how many volts: the one at each domain's source terminal at the
 * domain's nominal voltage; then, in parts of the network that none of these reaches, the first cell, converter or regulated
 * source. Whatever else there is rests. A cell that is one of several in series has its share of the nominal voltage.
 */
final class NetworkDesign {
    private final Plan plan;
    private final NetworkNodes nodes;
    private final DisjointSets parts;
    private final double[] nominalOfPart;
    private final Map<Integer, Double> feedV = new LinkedHashMap<>();

    /**
     * @param items items of the network so far, without sources and loads; contacts fixed
     */
    NetworkDesign(Plan plan, NetworkNodes nodes, Iterable<Network.Item> items, NetworkSources sources, boolean[] leftOut) {
        this.plan = plan;
        this.nodes = nodes;
        parts = new DisjointSets(nodes.ids.size());
        for (Network.Item item : items) {
            join(item);
        }
        nominalOfPart = new double[nodes.ids.size()];
        Arrays.fill(nominalOfPart, Double.NaN);
        for (Plan.Domain domain : plan.domains()) {
            feedDomain(domain, leftOut);
        }
        for (int kind = 0; kind < 3; kind++) {
            for (int e = 0; e < plan.elements().size(); e++) {
                if (!leftOut[e] && rank(plan.elements().get(e), sources) == kind) {
                    feedElsewhere(e);
                }
            }
        }
    }

    /** Volts with which an element feeds the network; NaN when it rests. */
    double feedV(int element) {
        return feedV.getOrDefault(element, Double.NaN);
    }

    /** Nominal voltage of what feeds a node, V; the first domain's where nothing does. */
    double nominalV(int node) {
        double volts = nominalOfPart[parts.find(node)];
        return Double.isNaN(volts) && !plan.domains().isEmpty() ? plan.domains().get(0).nominalV() : volts;
    }

    private void join(Network.Item item) {
        if (item instanceof Network.Wire wire) {
            parts.join(wire.a(), wire.b());
        } else if (item instanceof Network.Resistor resistor) {
            parts.join(resistor.a(), resistor.b());
        } else if (item instanceof Network.Rectifier rectifier) {
            parts.join(rectifier.a(), rectifier.b());
        } else if (item instanceof Network.Switch contact && contact.drive() instanceof Network.Fixed fixed && fixed.closed()) {
            parts.join(contact.a(), contact.b());
        }
    }

    private void feedDomain(Plan.Domain domain, boolean[] leftOut) {
        int node = nodes.of(domain.sourceTerminal());
        for (int e = 0; node >= 0 && e < plan.elements().size(); e++) {
            Plan.Element element = plan.elements().get(e);
            if (!leftOut[e] && plusNode(element) == node && !feedV.containsKey(e)) {
                feedV.put(e, element instanceof Plan.Cell cell ? cellV(domain, cell) : domain.nominalV());
                nominalOfPart[parts.find(node)] = domain.nominalV();
                return;
            }
        }
    }

    private void feedElsewhere(int e) {
        int part = parts.find(plusNode(plan.elements().get(e)));
        if (feedV.containsKey(e) || !Double.isNaN(nominalOfPart[part])) {
            return;
        }
        Plan.Element element = plan.elements().get(e);
        double ownV = element instanceof Plan.Cell cell ? cell.nominalV()
                : element instanceof Plan.Converter converter ? converter.setV() : ((Plan.Regulated) element).setV();
        double volts = ownV;
        double off = Double.POSITIVE_INFINITY;
        for (Plan.Domain domain : plan.domains()) {
            double candidate = element instanceof Plan.Cell cell ? cellV(domain, cell) : domain.nominalV();
            double distance = StrictMath.abs(StrictMath.log(candidate / ownV));
            if (distance < off) {
                off = distance;
                volts = candidate;
            }
        }
        feedV.put(e, volts);
        nominalOfPart[part] = volts;
    }

    /** Share of a domain's voltage for one cell of as many in series as come nearest to it. */
    private static double cellV(Plan.Domain domain, Plan.Cell cell) {
        return domain.nominalV() / StrictMath.max(1, StrictMath.rint(domain.nominalV() / cell.nominalV()));
    }

    /** 0 cells, 1 converters, 2 regulated sources that can deliver; -1 what does not feed. */
    private static int rank(Plan.Element element, NetworkSources sources) {
        if (element instanceof Plan.Cell) {
            return 0;
        }
        if (element instanceof Plan.Converter converter) {
            return sources.available(converter.runsOn()) ? 1 : -1;
        }
        return element instanceof Plan.Regulated source && sources.limitA(source) > 0 ? 2 : -1;
    }

    private int plusNode(Plan.Element element) {
        if (element instanceof Plan.Cell cell) {
            return nodes.of(cell.a());
        }
        if (element instanceof Plan.Regulated source) {
            return nodes.of(source.a());
        }
        return element instanceof Plan.Converter converter ? nodes.of(converter.outA()) : -1;
    }
}
