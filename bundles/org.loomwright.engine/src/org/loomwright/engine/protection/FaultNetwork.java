// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.flow.ResistiveNetwork;

/**
 * The linear network of faults of a plan in one extreme, factored once. A bolted fault between two nodes then costs one solve,
 * kept for the next fault between the same two. What changes against the factored network, a bond lost, a fuse opened, a source
 * at its limit, a diode that blocks, is a current of its own at the ends of that one branch: a small dense system for the
 * fault current and these (the Sherman-Morrison-Woodbury formula for an update of low rank; W. W. Hager, Updating the Inverse
 * of a Matrix, SIAM Review 31, 1989).
 *
 * <p>Sources that deliver only, up to a limit, are held to that exactly: which of them regulate, limit or rest is found as in
 * the operating point. Safe to share between threads.
 */
public final class FaultNetwork {
    private final Plan plan;
    private final Extreme extreme;
    private final FaultModel model;
    private final ResistiveNetwork matrix;
    private final double[] baseV;
    private final int[][] positions;
    private final int[] protectors;
    private final int[] removed;
    private final Map<Long, double[]> columns;

    private FaultNetwork(Plan plan, Extreme extreme, FaultModel model) {
        this.plan = plan;
        this.extreme = extreme;
        this.model = model;
        int count = model.branches.size();
        int[] a = new int[count + model.sources.size()];
        int[] b = new int[a.length];
        double[] ohm = new double[a.length];
        for (int i = 0; i < count; i++) {
            a[i] = model.branches.get(i).a();
            b[i] = model.branches.get(i).b();
            ohm[i] = model.branches.get(i).ohm();
        }
        double[] injectedA = new double[model.nodes];
        for (int s = 0; s < model.sources.size(); s++) {
            FaultSource source = model.sources.get(s);
            a[count + s] = source.a();
            b[count + s] = source.b();
            ohm[count + s] = source.ohm();
            injectedA[source.a()] += source.emfV() / source.ohm();
            injectedA[source.b()] -= source.emfV() / source.ohm();
        }
        matrix = new ResistiveNetwork(model.nodes, a, b, ohm);
        baseV = matrix.potentialsV(injectedA);
        positions = new int[][] {model.positions(FaultBranch.Kind.CONDUCTOR, plan.conductors().size()),
            model.positions(FaultBranch.Kind.ELEMENT, plan.elements().size()),
            model.positions(FaultBranch.Kind.BOND, plan.bonds().size()),
            model.positions(FaultBranch.Kind.SEAM, plan.bodyLinks().size()),
            model.positions(FaultBranch.Kind.EARTH_POINT, plan.terminals().size()),
            model.positions(FaultBranch.Kind.CASE, plan.terminals().size())};
        protectors = model.branches.stream().filter(this::isProtector).mapToInt(FaultBranch::index).toArray();
        removed = new int[0];
        columns = new HashMap<>();
    }

    private FaultNetwork(FaultNetwork of, int[] removed) {
        plan = of.plan;
        extreme = of.extreme;
        model = of.model;
        matrix = of.matrix;
        baseV = of.baseV;
        positions = of.positions;
        protectors = of.protectors;
        columns = of.columns;
        this.removed = removed;
    }

    /** The network of an extreme with all contacts closed that can be closed together, links between batteries included. */
    public static FaultNetwork together(Plan plan, Extreme extreme) {
        return new FaultNetwork(plan, extreme, new FaultModel(plan, extreme, ContactPositions.together(plan)));
    }

    /** The same with links between batteries open, so that each fault is fed by what feeds it without the other battery. */
    public static FaultNetwork apart(Plan plan, Extreme extreme) {
        return new FaultNetwork(plan, extreme, new FaultModel(plan, extreme, ContactPositions.apart(plan)));
    }

    /** The same with the contacts closed that {@link #together} leaves open, such as resting sides; null when it leaves none. */
    public static FaultNetwork other(Plan plan, Extreme extreme) {
        boolean[] closed = ContactPositions.other(plan);
        return closed == null ? null : new FaultNetwork(plan, extreme, new FaultModel(plan, extreme, closed));
    }

    /** The network without some of its branches (positions in {@link #branches}); nothing is factored anew. */
    public FaultNetwork without(int... branches) {
        int[] all = Arrays.copyOf(removed, removed.length + branches.length);
        System.arraycopy(branches, 0, all, removed.length, branches.length);
        return new FaultNetwork(this, Arrays.stream(all).distinct().sorted().toArray());
    }

    /** The extreme. */
    public Extreme extreme() {
        return extreme;
    }

    /** The plan. */
    public Plan plan() {
        return plan;
    }

    /** All resistances on the way, removed ones included. */
    public List<FaultBranch> branches() {
        return List.copyOf(model.branches);
    }

    /** Position of the branch of one thing of the plan, -1 when it has none. */
    public int branch(FaultBranch.Kind kind, int index) {
        return positions[kind.ordinal()][index];
    }

    /** Node of a terminal, earth points included. */
    public int node(int terminal) {
        return model.terminalNode[terminal];
    }

    /** Node of a body. */
    public int bodyNode(int body) {
        return model.bodyNode[body];
    }

    /** Whether any way, sources included, joins two nodes while nothing is removed. */
    public boolean joined(int nodeA, int nodeB) {
        return matrix.part(nodeA) == matrix.part(nodeB);
    }

    /** A bolted fault between two nodes. */
    public FaultFlow fault(int from, int to) {
        return new FaultFlow(this, from, to, solve(from, to, 0), 0);
    }

    /** A fault between two nodes through a resistance, 0 ohm or above. */
    public FaultFlow fault(int from, int to, double ohm) {
        return new FaultFlow(this, from, to, solve(from, to, ohm), ohm);
    }

    /** The fault current alone, A; see {@link #fault(int, int)}. */
    public double faultA(int from, int to) {
        FaultPorts ports = solve(from, to, 0);
        return ports == null ? 0 : FaultFlow.noise(ports.faultA());
    }

    /**
     * Resistance between two nodes with all sources at rest as the resistances behind them, ohm; infinite where nothing joins
     * them.
     */
    public double resistanceOhm(int nodeA, int nodeB) {
        if (nodeA == nodeB) {
            return 0;
        }
        if (!joined(nodeA, nodeB)) {
            return Double.POSITIVE_INFINITY;
        }
        return FaultPorts.resistance(this, nodeA, nodeB);
    }

    private FaultPorts solve(int from, int to, double ohm) {
        return from == to || !joined(from, to) ? null : FaultPorts.solve(this, from, to, ohm);
    }

    boolean isProtector(FaultBranch branch) {
        return branch.kind() == FaultBranch.Kind.ELEMENT && plan.elements().get(branch.index()) instanceof Plan.Protector;
    }

    boolean isDiode(FaultSource source) {
        return plan.elements().get(source.element()) instanceof Plan.Diode;
    }

    int[] protectors() {
        return protectors;
    }

    List<FaultSource> sources() {
        return model.sources;
    }

    FaultBranch at(int position) {
        return model.branches.get(position);
    }

    /** Positions of the branches at a node. */
    int[] around(int node) {
        return model.around(node);
    }

    int branchCount() {
        return model.branches.size();
    }

    int[] removed() {
        return removed;
    }

    boolean isRemoved(int position) {
        return Arrays.binarySearch(removed, position) >= 0;
    }

    double[] baseV() {
        return baseV;
    }

    /** Potentials for 1 A into one node and out of another, V; kept. */
    double[] column(int in, int out) {
        long key = (long) in * model.nodes + out;
        synchronized (columns) {
            double[] found = columns.get(key);
            if (found == null) {
                found = matrix.transferOhm(in, out);
                columns.put(key, found);
            }
            return found;
        }
    }

    /** Sources and diodes of the network, elements of the plan. */
    public List<Integer> sourceElements() {
        List<Integer> found = new ArrayList<>();
        model.sources.forEach(source -> found.add(source.element()));
        return found;
    }
}
