// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;

/** Names the elements behind the items that keep a network from an operating point. */
final class TroubleNames {
    private TroubleNames() {
    }

    /** Id of the element behind an item. */
    static String of(CheckContext context, NetworkIndex index, int item) {
        NetworkIndex.Owner owner = index.owner(item);
        if (owner == null) {
            return index.network().items().get(item).id();
        }
        return switch (owner.kind()) {
            case CONDUCTOR -> context.names().conductor(owner.index());
            case ELEMENT -> context.names().element(owner.index());
            case BOND -> context.plan().bonds().get(owner.index()).id();
            case SEAM -> context.plan().bodyLinks().get(owner.index()).id();
            case EARTH_CONTACT, CASE_CONTACT -> context.plan().terminals().get(owner.index()).id();
        };
    }

    /** Id of the vehicle itself, for what no element can be named for. */
    static String vehicle(CheckContext context) {
        return context.plan().vehicle() == null || context.plan().vehicle().isEmpty() ? "/" : context.plan().vehicle();
    }

    /** Adds what loses most voltage on the way to the weakest load. */
    static void supplyCauses(CheckContext context, SolvedCase solved, NetworkIndex index, OperatingPoint point,
            FindingBuilder builder) {
        NetworkIndex.Owner owner = point.trouble().isEmpty() ? null : index.owner(point.trouble().get(0));
        if (owner == null || owner.kind() != NetworkIndex.Kind.ELEMENT) {
            return;
        }
        SolvedCase.Solved at = new SolvedCase.Solved(solved.running().at(), point);
        int[] ends = NetworkIndex.nodes(index.network().items().get(point.trouble().get(0)));
        if (ends.length < 2) {
            return;
        }
        DropBreakdown parts = DropBreakdown.between(context.plan(), context.names(), at,
                CurrentPaths.of(context.plan(), at), owner.index(), ends[0], ends[1]);
        builder.because("At the edge it gets " + Quantity.of(parts.loadV(), "V") + " of " + Quantity.of(parts.sourceV(), "V")
                + " at its source.");
        new DropReasons(context.plan(), context.names()).causes(builder, parts);
    }
}
