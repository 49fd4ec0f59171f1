// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * A load returns through the structure only where that is permitted: by the body's own policy, else by the vehicle's or the
 * practice's (forbidden after ISO 10133 and 13297, recalled, where a return of its own is wanted). With listed loads, the
 * arrangement names the ones that may. The base vehicle's own loads are as their maker built them.
 */
final class ReturnPolicyRule implements Rule {
    private static final String CHOICE = "return-policy";
    private static final List<String> VALUES = List.of("allowed", "listedLoads", "forbidden");

    @Override
    public String slug() {
        return "return-policy";
    }

    @Override
    public String says() {
        return "Loads return through the structure only where that is permitted.";
    }

    @Override
    public List<String> limits() {
        return List.of(CHOICE);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Plan plan = context.plan();
        String general = context.practice().choice(CHOICE, VALUES);
        ReturnWays ways = new ReturnWays(plan);
        for (int e = 0; e < plan.elements().size(); e++) {
            int terminal = ReturnWays.returnTerminal(plan.elements().get(e));
            Plan.Device device = plan.devices().get(plan.elements().get(e).device());
            if (terminal >= 0 && !device.existing()) {
                for (int point : ways.earthPoints(terminal)) {
                    Plan.Body body = plan.bodies().get(ways.bodyAt(point));
                    check(context, e, device, plan.terminals().get(point), body, general, findings);
                }
            }
        }
        return findings;
    }

    private void check(CheckContext context, int e, Plan.Device device, Plan.Terminal point, Plan.Body body, String general,
            List<Finding> findings) {
        String policy = body.policy() == null ? general : switch (body.policy()) {
            case ALLOWED -> "allowed";
            case LISTED_LOADS -> "listedLoads";
            case FORBIDDEN -> "forbidden";
        };
        Practice.Choice choice = context.practice().choices().get(CHOICE);
        String by = body.policy() == null ? "the vehicle or its practice (" + choice.source() + ")" : "body " + body.id();
        String why = null;
        if ("forbidden".equals(policy)) {
            why = "Returns through the structure are forbidden by " + by + ".";
        } else if ("own".equals(device.returnPolicy())) {
            why = "The arrangement settles that it returns by a conductor of its own.";
        } else if ("listedLoads".equals(policy) && !"structure".equals(device.returnPolicy())) {
            why = "Only loads that the arrangement lists may return through the structure, after " + by
                    + ", and it lists this one not.";
        }
        if (why != null) {
            FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                    context.names().shownElement(e) + " returns through " + body.id() + ", which is not permitted").because(why)
                    .causedBy(point.id(), "takes the return into the body", null);
            findings.add(builder.mend(Mend.inWords("Lead its return by a conductor to the battery or to a negative bar."))
                    .build());
        }
    }
}
