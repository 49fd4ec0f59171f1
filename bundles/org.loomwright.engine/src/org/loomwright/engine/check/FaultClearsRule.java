// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.LoopShare;
import org.loomwright.engine.protection.UnclearedFault;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * The smallest fault at the far end of a conductor, to its own return and to the nearest body, is cleared within the practice's
 * time. Conductors before any device are seen to by the rule on the first device.
 */
final class FaultClearsRule implements Rule {
    static final String TIME = "fault-clears.time";
    private static final int NAMED = 3;

    @Override
    public String slug() {
        return "fault-clears";
    }

    @Override
    public String says() {
        return "The smallest short circuit is cleared in time.";
    }

    @Override
    public List<String> limits() {
        return List.of(TIME);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        Map<Integer, UnclearedFault> worst = new LinkedHashMap<>();
        for (UnclearedFault each : context.protection().uncleared()) {
            if (!each.fault().wayBack() || tooLittle(context, each)) {
                worst.merge(each.fault().conductor(), each, (a, b) -> a.fault().throughA() <= b.fault().throughA() ? a : b);
            }
        }
        Inherited inherited = new Inherited(context);
        worst.keySet().removeIf(c -> inherited.conductor(context.protection().conductor(c)));
        List<Finding> findings = new ArrayList<>();
        worst.values().forEach(each -> findings.add(each.fault().wayBack() ? slow(context, each) : noWayBack(context, each)));
        return findings;
    }

    /**
     * Whether the device's own current is too little. Where it would be enough, what flows on comes from a source without a
     * device on that side, which is not this device's fault; and a source may limit itself to what the conductor bears.
     */
    private static boolean tooLittle(CheckContext context, UnclearedFault each) {
        if (each.protector() < 0 || !each.fault().clearing().known()
                || !Beyond.below(each.fault().throughA(), each.neededA())) {
            return false;
        }
        ConductorProtection row = context.protection().conductor(each.fault().conductor());
        return row.overload() == null || row.feeds().stream().filter(feed -> feed.farTerminal() == each.fault().terminal())
                .noneMatch(feed -> SelfLimited.feed(context, row.conductor(), feed, row.overload().izA()));
    }

    private Finding slow(CheckContext context, UnclearedFault each) {
        Fault fault = each.fault();
        Quantity is = Quantity.of(fault.throughA(), "A");
        Quantity wanted = Quantity.of(each.neededA(), "A");
        String device = context.names().element(each.protector());
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(fault.conductor()),
                "A short circuit at the far end of " + context.names().shownConductor(fault.conductor()) + " to "
                        + target(context, fault) + " gives only " + is + ": " + context.names().shown(device) + " clears "
                        + wanted + " within " + Quantity.of(each.limitS(), "s"))
                .figures(is, wanted)
                .because(Double.isInfinite(fault.clearing().seconds()) ? "It may flow for ever."
                        : "It may flow for " + Quantity.of(fault.clearing().seconds(), "s") + ".");
        if (!fault.trips().isEmpty()) {
            builder.because("The battery's own management may disconnect before.");
        }
        LoopShare culprit = each.culprit();
        if (culprit != null) {
            builder.because("Of the loop's " + Quantity.of(1000 * fault.loopOhm(), "mohm") + ", "
                    + Quantity.of(1000 * culprit.branch().ohm(), "mohm") + " lie in "
                    + ProtectionReasons.words(context, culprit.branch()) + ", which takes "
                    + Quantity.of(culprit.watts(), "W") + " meanwhile.");
            share(builder, context, culprit);
        }
        each.shares().stream().filter(share -> share != culprit).limit(NAMED - 1L)
                .forEach(share -> share(builder, context, share));
        new FaultMends(context).of(each).forEach(builder::mend);
        return ProtectionReasons.derived(builder, context, fault.conductor()).build();
    }

    private static void share(FindingBuilder builder, CheckContext context, LoopShare share) {
        builder.causedBy(ProtectionReasons.id(context, share.branch()), Quantity.of(1000 * share.branch().ohm(), "mohm")
                + " in the way of the fault", Quantity.of(100 * share.share(), "%"));
    }

    private Finding noWayBack(CheckContext context, UnclearedFault each) {
        Fault fault = each.fault();
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(fault.conductor()),
                "A short circuit at the far end of " + context.names().shownConductor(fault.conductor()) + " to "
                        + target(context, fault) + " has no way back to the source: no device opens")
                .because("What it touches then stays live.");
        Plan plan = context.plan();
        int body = fault.target() == Fault.Target.BODY ? fault.partner() : plan.terminals().get(fault.partner()).body();
        if (body >= 0) {
            builder.causedBy(plan.bodies().get(body).id(), "nothing bonds it to the battery", null);
        }
        return builder.build();
    }

    private static String target(CheckContext context, Fault fault) {
        Plan plan = context.plan();
        return fault.target() == Fault.Target.BODY ? plan.bodies().get(fault.partner()).id()
                : "its return at " + context.names().shown(plan.terminals().get(fault.partner()).id());
    }
}
