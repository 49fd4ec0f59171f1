// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;
import java.util.function.Function;

/** Finds records of a plan by id. */
final class PlanFind {
    private PlanFind() {
    }

    static <T> T byId(List<T> all, Function<T, String> id, String wanted) {
        return all.stream().filter(one -> wanted.equals(id.apply(one))).findFirst()
                .orElseThrow(() -> new AssertionError("no " + wanted + " among " + all.stream().map(id).toList()));
    }

    static Plan.Device device(Plan plan, String id) {
        return byId(plan.devices(), Plan.Device::id, id);
    }

    static Plan.Case state(Plan plan, String name) {
        return byId(plan.cases(), Plan.Case::name, name);
    }

    /** Ids of the loads that are on in a case. */
    static List<String> on(Plan plan, String state) {
        return state(plan, state).demands().stream().map(d -> plan.elements().get(d.demand()).id()).toList();
    }

    /** Ids of the hand contacts that are closed in a case. */
    static List<String> closed(Plan plan, String state) {
        return state(plan, state).contacts().stream().filter(Plan.ContactState::closed)
                .map(c -> plan.elements().get(c.contact()).id()).toList();
    }

    /** State of a cell in a case. */
    static Plan.CellState cell(Plan plan, String state, String cell) {
        return byId(state(plan, state).cells(), c -> plan.elements().get(c.cell()).id(), cell);
    }

    /** Ambient of a zone in a case. */
    static double ambientC(Plan plan, String state, String zone) {
        int index = plan.zones().indexOf(byId(plan.zones(), Plan.Zone::id, zone));
        return state(plan, state).ambientC().get(index);
    }
}
