// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Cables with the ways that the studies find for them, so that the drawing and the figures speak of the same way. A cable that
 * the studies leave out has no way.
 */
final class CableReader {
    private final Vehicle vehicle;
    private final Arrangement arrangement;
    private final Map<Run, Integer> runs;
    private final Map<Place, Integer> places;

    CableReader(Vehicle vehicle, Arrangement arrangement, Map<Run, Integer> runs, Map<Place, Integer> places) {
        this.vehicle = vehicle;
        this.arrangement = arrangement;
        this.runs = runs;
        this.places = places;
    }

    List<PlanContent.Cable> read() {
        Plan plan = Assembly.assemble(vehicle, arrangement, null).plan();
        Map<String, Integer> runById = new LinkedHashMap<>();
        Map<String, Run> runObject = new LinkedHashMap<>();
        runs.forEach((run, at) -> {
            runById.put(Fragments.of(run), at);
            runObject.put(Fragments.of(run), run);
        });
        Map<String, Integer> assembled = new LinkedHashMap<>();
        for (int c = 0; c < plan.cables().size(); c++) {
            assembled.put(plan.cables().get(c).id(), c);
        }
        boolean[] back = backs(plan);
        List<PlanContent.Cable> cables = new ArrayList<>();
        List<Cable> all = new ArrayList<>(vehicle.getCables());
        if (arrangement != null) {
            all.addAll(arrangement.getCables());
        }
        for (Cable cable : all) {
            String id = Fragments.of(cable);
            Integer at = assembled.get(id);
            boolean existing = Boolean.TRUE.equals(cable.getExisting());
            if (at == null) {
                cables.add(new PlanContent.Cable(id, cable.getName(), List.of(), List.of(), -1, Double.NaN, Double.NaN, false,
                        existing, false));
                continue;
            }
            Plan.Cable found = plan.cables().get(at);
            List<String> ids = found.path().stream().map(run -> plan.runs().get(run).id()).toList();
            List<Integer> path = ids.stream().map(runById::get).toList();
            boolean drawn = !path.contains(null);
            double diameter = found.outerDiameterMm();
            cables.add(new PlanContent.Cable(id, cable.getName(), drawn ? path : List.of(), found.ducts(),
                    drawn ? start(ids.stream().map(runObject::get).toList()) : -1, StrictMath.PI / 4 * diameter * diameter,
                    found.sectionMm2(), back[at], existing, drawn));
        }
        return cables;
    }

    /** The end of the first run that it does not share with the second. */
    private int start(List<Run> path) {
        if (path.isEmpty()) {
            return -1;
        }
        Run first = path.get(0);
        boolean forward = path.size() == 1 || path.get(1).getFrom() == first.getTo() || path.get(1).getTo() == first.getTo();
        return places.get(forward ? first.getFrom() : first.getTo());
    }

    /** Cables whose conductors all end at a minus terminal or an earth point at one end at least. */
    private static boolean[] backs(Plan plan) {
        boolean[] some = new boolean[plan.cables().size()];
        boolean[] supply = new boolean[plan.cables().size()];
        for (Plan.Conductor core : plan.conductors()) {
            boolean minus = minus(plan.terminals().get(core.a())) || minus(plan.terminals().get(core.b()));
            some[core.cable()] |= minus;
            supply[core.cable()] |= !minus;
        }
        for (int c = 0; c < some.length; c++) {
            some[c] &= !supply[c];
        }
        return some;
    }

    private static boolean minus(Plan.Terminal terminal) {
        return "minus".equals(terminal.role()) || "earth".equals(terminal.role());
    }
}
