// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.Fault.End;
import org.loomwright.engine.protection.Fault.Target;
import org.loomwright.engine.protection.FaultNetworks.Stand;

/**
 * Bolted faults at both ends of every supply conductor, to its own return and to the nearest body, with the largest and the
 * smallest current. The largest with all contacts closed. The smallest with links between batteries open, so that one battery
 * feeds alone; where the conductor is fed through a link only, with it closed. Where contacts exclude each other, a conductor
 * that is dead in the first positions is judged in the others.
 */
final class Faults {
    private final Plan plan;
    private final FaultNetworks networks;
    private final SupplyGraph graph;
    private final ReturnPoints points;
    private final DeviceCurves curves;
    private final Map<Fault, Stand> stands = new IdentityHashMap<>();

    Faults(Plan plan, FaultNetworks networks, SupplyGraph graph, ReturnPoints points, DeviceCurves curves) {
        this.plan = plan;
        this.networks = networks;
        this.graph = graph;
        this.points = points;
        this.curves = curves;
    }

    /** Hears of each fault at the far end of a conductor that has a current. */
    @FunctionalInterface
    interface Listener {
        /**
         * A fault.
         *
         * @param flow   how its current flows
         * @param device device next before the conductor that carries most of it; -1 when most comes without a device
         */
        void far(Fault fault, FaultFlow flow, int device);
    }

    /** The ways in which a supply conductor is fed; empty for one that no source reaches. */
    List<Feed> feeds(int conductor, Listener listener) {
        Plan.Conductor core = plan.conductors().get(conductor);
        List<Feed> feeds = new ArrayList<>(2);
        for (int[] ends : new int[][] {{core.a(), core.b()}, {core.b(), core.a()}}) {
            Feed feed = graph.fed(ends[0], conductor) ? feed(conductor, ends[0], ends[1], listener) : null;
            if (feed != null) {
                feeds.add(feed);
            }
        }
        return feeds;
    }

    private Feed feed(int conductor, int near, int far, Listener listener) {
        boolean first = live(Stand.TOGETHER, conductor, near, far);
        if (!first && !(networks.hasOther() && live(Stand.OTHER, conductor, near, far))) {
            return null;
        }
        Stand stand = first ? Stand.TOGETHER : Stand.OTHER;
        List<Fault> faults = new ArrayList<>();
        FaultFlow.Upstream upstream = FaultFlow.Upstream.NONE;
        for (Target target : Target.values()) {
            for (End end : End.values()) {
                int terminal = end == End.NEAR ? near : far;
                int partner = target == Target.RETURN ? points.returnOf(conductor, terminal) : points.bodyOf(conductor, terminal);
                if (partner < 0) {
                    continue;
                }
                for (Extreme extreme : Extreme.values()) {
                    Place place = new Place(conductor, near, far, end, target, partner);
                    Stand used = extreme == Extreme.LARGEST || !first ? stand : fedApart(place) ? Stand.APART : stand;
                    FaultFlow flow = flow(place, used, extreme);
                    Fault fault = fault(place, used, extreme, flow);
                    faults.add(fault);
                    if (extreme == Extreme.LARGEST && end == End.FAR && upstream == FaultFlow.Upstream.NONE) {
                        upstream = flow.upstream(flow.network().node(near), branch(flow, conductor));
                    }
                }
            }
        }
        if (upstream == FaultFlow.Upstream.NONE) {
            upstream = probe(stand, conductor, far).upstream(networks.network(stand, Extreme.LARGEST).node(near),
                    networks.network(stand, Extreme.LARGEST).branch(FaultBranch.Kind.CONDUCTOR, conductor));
        }
        Feed feed = new Feed(near, far, upstream.next(), upstream.bareA(), upstream.all(), shares(upstream.all(), faults),
                faults);
        for (Fault fault : faults) {
            if (fault.end() == End.FAR && fault.throughA() > 0) {
                listener.far(fault, flow(fault), device(feed, fault));
            }
        }
        return feed;
    }

    /** Device next before a feed's conductor that carries most of a fault; -1 when most comes without a device. */
    int device(Feed feed, Fault fault) {
        FaultFlow flow = flow(fault);
        int most = -1;
        double devicesA = 0;
        for (int e : feed.next()) {
            double amps = StrictMath.abs(flow.elementA(e));
            devicesA += amps;
            most = most < 0 || amps > StrictMath.abs(flow.elementA(most)) ? e : most;
        }
        return fault.throughA() == 0 || devicesA > fault.throughA() / 2 ? most : -1;
    }

    private List<Double> shares(List<Integer> devices, List<Fault> faults) {
        List<Double> shares = new ArrayList<>();
        for (int device : devices) {
            double least = Double.POSITIVE_INFINITY;
            for (Fault fault : faults) {
                double deviceA = fault.throughA() > 0 ? StrictMath.abs(flow(fault).elementA(device)) : 0;
                least = deviceA > 0 ? StrictMath.min(least, deviceA / fault.throughA()) : least;
            }
            shares.add(Double.isInfinite(least) ? 1 : least);
        }
        return shares;
    }

    /** How the current of a fault flows. */
    FaultFlow flow(Fault fault) {
        Stand stand = stands.get(fault);
        FaultNetwork network = networks.network(stand, fault.extreme());
        return networks.flow(stand, fault.extreme(), network.node(fault.terminal()), fault.target() == Target.RETURN
                ? network.node(fault.partner()) : network.bodyNode(fault.partner()));
    }

    private record Place(int conductor, int near, int far, End end, Target target, int partner) {
    }

    /** Whether a current would come through the conductor for a short at its far end straight to the source. */
    private boolean live(Stand stand, int conductor, int near, int far) {
        FaultFlow flow = probe(stand, conductor, far);
        return along(flow, conductor, near) > 0;
    }

    private FaultFlow probe(Stand stand, int conductor, int far) {
        FaultNetwork network = networks.network(stand, Extreme.LARGEST);
        int minus = points.ofNearestSource(far);
        return networks.flow(stand, Extreme.LARGEST, network.node(far), network.node(minus < 0 ? far : minus));
    }

    private boolean fedApart(Place place) {
        FaultFlow flow = flow(place, Stand.APART, Extreme.SMALLEST);
        return through(flow, place) > 0 || flow.currentA() == 0 && flow(place, Stand.TOGETHER, Extreme.SMALLEST).currentA() == 0;
    }

    private FaultFlow flow(Place place, Stand stand, Extreme extreme) {
        FaultNetwork network = networks.network(stand, extreme);
        int to = place.target() == Target.RETURN ? network.node(place.partner()) : network.bodyNode(place.partner());
        return networks.flow(stand, extreme, network.node(place.end() == End.NEAR ? place.near() : place.far()), to);
    }

    private Fault fault(Place place, Stand stand, Extreme extreme, FaultFlow flow) {
        double totalA = StrictMath.abs(flow.currentA());
        Clearing clearing = Clearing.of(flow, curves.cold(), now -> through(now, place));
        List<Integer> trips = new ArrayList<>(0);
        for (int e = 0; totalA > 0 && e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Cell cell && StrictMath.abs(flow.sourceA(e)) >= cell.tripA()) {
                trips.add(e);
            }
        }
        Fault fault = new Fault(place.conductor(), place.end() == End.NEAR ? place.near() : place.far(), place.end(),
                place.target(), place.partner(), extreme, stand != Stand.APART, totalA, through(flow, place),
                StrictMath.abs(flow.openV()), StrictMath.abs(flow.loopOhm()), clearing, trips);
        stands.put(fault, stand);
        return fault;
    }

    /** Far end: what comes along the conductor. Near end: what comes to it but along the conductor from behind. */
    private double through(FaultFlow flow, Place place) {
        double along = along(flow, place.conductor(), place.near());
        return place.end() == End.FAR ? StrictMath.max(0, along)
                : FaultFlow.noise(StrictMath.max(0, StrictMath.abs(flow.currentA()) - StrictMath.max(0, -along)));
    }

    private double along(FaultFlow flow, int conductor, int near) {
        double forward = flow.conductorA(conductor) * (flow.currentA() < 0 ? -1 : 1);
        return plan.conductors().get(conductor).a() == near ? forward : -forward;
    }

    private static int branch(FaultFlow flow, int conductor) {
        return flow.network().branch(FaultBranch.Kind.CONDUCTOR, conductor);
    }
}
