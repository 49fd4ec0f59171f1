// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loomwright.engine.assembly.Plan;

/**
 * Where a fault at a terminal goes to.
 *
 * <ul>
 * <li>The own return, the first of: the minus of a load, coil or converter that takes its current there; the minus of a
 * source whose plus is there; another core of the same cable, at the same end, that is a return; a minus bar of the same
 * device with a conductor on it; of the bars and points where the returns of the loads behind it meet others on their way, or
 * end, and the minus of the nearest source, the one nearest in place, of equally near ones that with most conductors on it. The
 * minus of a battery in series above another one stands for the minus of the lowest.
 * <li>The nearest body: that of the first run with one, from that end of the cable; without, the body that the device at the
 * end is bolted to, or that of the device it is mounted in.
 * </ul>
 */
final class ReturnPoints {
    private final Plan plan;
    private final SupplyGraph graph;
    private final TerminalPlaces places;
    private final boolean[] wired;
    private final List<List<Integer>> conductorsAt = new ArrayList<>();
    private final Map<Integer, Set<Integer>> meetings = new TreeMap<>();

    ReturnPoints(Plan plan, SupplyGraph graph) {
        this.plan = plan;
        this.graph = graph;
        places = new TerminalPlaces(plan);
        wired = new boolean[plan.terminals().size()];
        plan.terminals().forEach(t -> conductorsAt.add(new ArrayList<>(2)));
        for (int c = 0; c < plan.conductors().size(); c++) {
            for (int t : new int[] {plan.conductors().get(c).a(), plan.conductors().get(c).b()}) {
                wired[t] = true;
                conductorsAt.get(t).add(c);
            }
        }
    }

    /** Terminal of the own return for a fault at one end of a supply conductor, -1 when there is none. */
    int returnOf(int conductor, int terminal) {
        int found = atTerminal(terminal);
        found = found >= 0 ? found : siblingCore(conductor, terminal);
        found = found >= 0 ? found : onDevice(plan.terminals().get(terminal).device());
        if (found < 0) {
            Plan.Conductor core = plan.conductors().get(conductor);
            Set<Integer> ends = behind(core.b(), conductor, -1);
            found = nearest(terminal, ends.isEmpty() ? behind(core.a(), conductor, -1) : ends);
        }
        return found;
    }

    /** The same for a fault at a terminal of a protective device. */
    int returnAt(int protector, int terminal) {
        int found = atTerminal(terminal);
        found = found >= 0 ? found : onDevice(plan.terminals().get(terminal).device());
        return found >= 0 ? found : nearest(terminal, behind(terminal, -1, protector));
    }

    /** Body beside one end of a conductor, -1 when there is none. */
    int bodyOf(int conductor, int terminal) {
        Plan.Conductor core = plan.conductors().get(conductor);
        List<Integer> path = plan.cables().get(core.cable()).path();
        boolean fromStart = startsAtA(path, core) == (terminal == core.a());
        for (int k = 0; k < path.size(); k++) {
            int body = plan.runs().get(path.get(fromStart ? k : path.size() - 1 - k)).body();
            if (body >= 0) {
                return body;
            }
        }
        return bodyAt(terminal);
    }

    /** Body that the device of a terminal is bolted to, or that the one it is mounted in is; of an earth point its own. */
    int bodyAt(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        int device = at.device();
        for (int hops = 0; device >= 0 && hops <= plan.devices().size(); hops++) {
            if (plan.devices().get(device).body() >= 0) {
                return plan.devices().get(device).body();
            }
            device = plan.devices().get(device).mountedIn();
        }
        return at.device() < 0 ? at.body() : -1;
    }

    /** Bodies within reach of a terminal: that of its device, and those beside the ends of the cables on it. */
    Set<Integer> bodiesAt(int terminal) {
        Set<Integer> found = new TreeSet<>();
        found.add(bodyAt(terminal));
        conductorsAt.get(terminal).forEach(c -> found.add(bodyOf(c, terminal)));
        found.remove(-1);
        return found;
    }

    private int atTerminal(int terminal) {
        int source = graph.sourceAt(terminal);
        if (source >= 0) {
            return lowest(SupplyGraph.sourceMinus(plan.elements().get(source)));
        }
        int found = -1;
        for (int e : graph.consumersAt(terminal)) {
            found = earlier(found, SupplyGraph.minus(plan.elements().get(e)));
        }
        return found;
    }

    private int siblingCore(int conductor, int terminal) {
        Plan.Conductor core = plan.conductors().get(conductor);
        int device = plan.terminals().get(terminal).device();
        int found = -1;
        for (int c = 0; c < plan.conductors().size(); c++) {
            Plan.Conductor other = plan.conductors().get(c);
            if (c != conductor && other.cable() == core.cable()) {
                boolean atA = device >= 0 && plan.terminals().get(other.a()).device() == device;
                boolean atB = device >= 0 && plan.terminals().get(other.b()).device() == device;
                found = earlier(found, atA || !atB && terminal == core.a() ? other.a() : other.b());
            }
        }
        return found;
    }

    private int onDevice(int device) {
        int found = -1;
        for (int t = 0; device >= 0 && t < plan.terminals().size(); t++) {
            Plan.Terminal terminal = plan.terminals().get(t);
            if (terminal.device() == device && "minus".equals(terminal.role()) && terminal.bar() != null && wired[t]) {
                found = earlier(found, t);
            }
        }
        return found;
    }

    /** Where returns of the consumers behind meet or end; empty when a source lies behind, or nothing. */
    private Set<Integer> behind(int from, int conductor, int protector) {
        Set<Integer> consumers = graph.consumersBehind(from, conductor, protector);
        Set<Integer> ends = new TreeSet<>();
        for (int e : consumers == null ? Set.<Integer>of() : consumers) {
            int minus = SupplyGraph.minus(plan.elements().get(e));
            if (minus >= 0 && !graph.supply(minus)) {
                ends.addAll(meetings.computeIfAbsent(minus, this::meetings));
            }
        }
        return ends;
    }

    /** Bars and points with several conductors on the net of a return; without any, the other ends of its conductors. */
    private Set<Integer> meetings(int minus) {
        Set<Integer> found = new TreeSet<>();
        Set<Integer> ends = new TreeSet<>();
        for (int t : graph.reach(minus, -1, -1)) {
            if (conductorEnds(t) > 1) {
                found.add(graph.barOf(t));
            } else if (conductorEnds(t) == 1 && t != minus) {
                ends.add(graph.barOf(t));
            }
        }
        if (found.isEmpty() && ends.isEmpty()) {
            ends.add(graph.barOf(minus));
        }
        return found.isEmpty() ? ends : found;
    }

    private int conductorEnds(int terminal) {
        int count = 0;
        for (int t : graph.bar(terminal)) {
            count += conductorsAt.get(t).size();
        }
        return count;
    }

    private int nearest(int terminal, Set<Integer> ends) {
        int source = ofNearestSource(terminal);
        Set<Integer> candidates = new TreeSet<>(ends);
        if (source >= 0) {
            candidates.add(graph.barOf(source));
        }
        int found = -1;
        for (int t : candidates) {
            int order = found < 0 ? -1 : Double.compare(places.distanceMm(terminal, t), places.distanceMm(terminal, found));
            order = order == 0 ? Integer.compare(conductorEnds(found), conductorEnds(t)) : order;
            order = order == 0 ? plan.terminals().get(t).id().compareTo(plan.terminals().get(found).id()) : order;
            found = order < 0 ? t : found;
        }
        return found;
    }

    /** Minus of the source nearest to a terminal, -1 when none is joined to it. */
    int ofNearestSource(int terminal) {
        for (int t : graph.reach(terminal, -1, -1)) {
            if (graph.sourceAt(t) >= 0) {
                return lowest(SupplyGraph.sourceMinus(plan.elements().get(graph.sourceAt(t))));
            }
        }
        return -1;
    }

    /** Minus of the lowest battery in series below a minus terminal. */
    private int lowest(int minus) {
        Set<Integer> passed = new HashSet<>();
        int at = minus;
        while (graph.supply(at) && passed.add(at)) {
            for (int t : graph.reach(at, -1, -1)) {
                int below = graph.sourceAt(t) < 0 ? -1 : SupplyGraph.sourceMinus(plan.elements().get(graph.sourceAt(t)));
                if (below >= 0 && below != at && !passed.contains(below)) {
                    at = below;
                    break;
                }
            }
        }
        return at;
    }

    /** The one of two terminals whose id comes first; supply terminals are no returns. */
    private int earlier(int a, int b) {
        if (b < 0 || graph.supply(b)) {
            return a;
        }
        return a < 0 || plan.terminals().get(b).id().compareTo(plan.terminals().get(a).id()) < 0 ? b : a;
    }

    /** Whether the path begins at the end of the core's terminal a; so it is taken when places do not tell. */
    private boolean startsAtA(List<Integer> path, Plan.Conductor core) {
        if (path.isEmpty()) {
            return true;
        }
        Plan.Run first = plan.runs().get(path.get(0));
        return places.touches(first, core.a()) || !places.touches(first, core.b());
    }
}
