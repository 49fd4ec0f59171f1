// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.protection.ConductorProtection;

/**
 * What belongs to the vehicle as its maker built it: wires and devices marked as existing, as long as nothing added hangs on
 * them. Its protection is the maker's, who tested it with the very parts; the practice says whether it is judged all the same.
 */
final class Inherited {
    private static final String CHOICE = "protection.existing";
    private static final String TRUSTED = "trusted";
    private final CheckContext context;
    private final boolean trusted;

    Inherited(CheckContext context) {
        this.context = context;
        Practice.Choice choice = context.practice().choices().get(CHOICE);
        trusted = choice != null && TRUSTED.equals(choice.value());
    }

    /** A protective device (element) that is left to the vehicle's maker. */
    boolean device(int protector) {
        Plan plan = context.plan();
        List<Integer> consumers = context.circuits().consumersBelow(protector);
        return trusted && existing(plan.elements().get(protector)) && consumers.stream().allMatch(e -> existing(
                plan.elements().get(e))) && context.protection().device(protector).stream()
                        .flatMap(row -> row.conductorsBelow().stream()).allMatch(this::cable);
    }

    /** A conductor that is left to the vehicle's maker, with the device before it. */
    boolean conductor(ConductorProtection row) {
        return trusted && cable(row.conductor())
                && (row.overload() == null || row.overload().protector() < 0 || device(row.overload().protector()));
    }

    private boolean cable(int conductor) {
        return context.plan().cables().get(context.plan().conductors().get(conductor).cable()).existing();
    }

    private boolean existing(Plan.Element element) {
        return context.plan().devices().get(element.device()).existing();
    }
}
