// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;

/** The networks of a study and the faults solved in them, each made when first asked for. */
final class FaultNetworks {

    /** How contacts stand. */
    enum Stand { APART, TOGETHER, OTHER }

    private record Key(Stand stand, Extreme extreme, int from, int to) {
    }

    private final Plan plan;
    private final Map<Stand, Map<Extreme, FaultNetwork>> made = new EnumMap<>(Stand.class);
    private final Map<Key, FaultFlow> flows = new HashMap<>();
    private final boolean other;

    FaultNetworks(Plan plan) {
        this.plan = plan;
        other = ContactPositions.other(plan) != null;
    }

    boolean hasOther() {
        return other;
    }

    FaultNetwork network(Stand stand, Extreme extreme) {
        return made.computeIfAbsent(stand, s -> new EnumMap<>(Extreme.class)).computeIfAbsent(extreme, x -> switch (stand) {
            case APART -> FaultNetwork.apart(plan, x);
            case TOGETHER -> FaultNetwork.together(plan, x);
            default -> FaultNetwork.other(plan, x);
        });
    }

    /** The fault between two nodes, from where a current flows: signs as if it came from the first. */
    FaultFlow flow(Stand stand, Extreme extreme, int from, int to) {
        Key key = new Key(stand, extreme, from, to);
        FaultFlow found = flows.get(key);
        if (found == null) {
            found = network(stand, extreme).fault(from, to);
            flows.put(key, found);
        }
        return found;
    }
}
