// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Severity;

/**
 * Each hand-operated battery isolator is opened in each case in which it is closed. What must stay live stays live, and while
 * the engine runs the alternator keeps a battery (else its voltage leaps up and destroys what is connected). With all
 * isolators open, the ignition off and the engine at rest nothing else is live on a battery that has an isolator; the base
 * vehicle's loads are exempt.
 */
final class IsolatorEffectRule implements Rule {
    @Override
    public String slug() {
        return "isolator-effect";
    }

    @Override
    public String says() {
        return "An open isolator leaves only what must stay live, and never parts the alternator from every battery.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Map<Integer, List<Integer>> isolators = isolators(context.plan());
        if (isolators.isEmpty()) {
            return findings;
        }
        List<Integer> all = isolators.values().stream().flatMap(List::stream).toList();
        for (SolvedCase solved : context.settled()) {
            LivePaths before = LivePaths.of(context.plan(), solved.running());
            IsolatedState allOpen = null;
            for (Map.Entry<Integer, List<Integer>> isolator : isolators.entrySet()) {
                if (isolator.getValue().stream().anyMatch(e -> isClosed(solved, e))) {
                    IsolatedState open = IsolatedState.of(context, solved, isolator.getValue());
                    allOpen = isolators.size() == 1 ? open : null;
                    lost(context, solved, isolator.getKey(), before, open, findings);
                    parted(context, solved, isolator.getKey(), before, open, findings);
                }
            }
            if ("off".equals(solved.state().ignition()) && !solved.state().engineRunning()) {
                live(context, solved, all, allOpen == null ? IsolatedState.of(context, solved, all) : allOpen, findings);
            }
        }
        return findings;
    }

    private static Map<Integer, List<Integer>> isolators(Plan plan) {
        Map<Integer, List<Integer>> found = new TreeMap<>();
        for (int e = 0; e < plan.elements().size(); e++) {
            if (plan.elements().get(e) instanceof Plan.Contact contact && "hand".equals(contact.driver())
                    && "isolator".equals(plan.devices().get(contact.device()).kind())) {
                found.computeIfAbsent(contact.device(), device -> new ArrayList<>()).add(e);
            }
        }
        return found;
    }

    private static boolean isClosed(SolvedCase solved, int element) {
        int item = solved.running().at().elementItem()[element];
        return item >= 0 && solved.running().point().on()[item];
    }

    private void lost(CheckContext context, SolvedCase solved, int isolator, LivePaths before, IsolatedState open,
            List<Finding> findings) {
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Demand load
                    && context.plan().devices().get(load.device()).mustStayLive()
                    && supplied(solved, before, load) && !open.isSupplied(load)) {
                String id = context.plan().devices().get(isolator).id();
                findings.add(Finding.of(slug(), Severity.ERROR, context.names().element(e), context.names().shownElement(e)
                        + " must stay live and is dead when isolator " + context.names().shown(id) + " is open")
                        .inCase(solved.state().name()).because("Its supply or its return leads through the isolator.")
                        .causedBy(id, "cuts it off", null)
                        .mend(Mend.inWords("Feed it, through a fuse of its own, from the battery side of "
                                + context.names().shown(id) + ".")).build());
            }
        }
    }

    private static boolean supplied(SolvedCase solved, LivePaths live, Plan.Demand load) {
        int a = solved.running().at().terminalNode()[load.a()];
        int b = solved.running().at().terminalNode()[load.b()];
        return live.supplied(a, b) || live.supplied(b, a);
    }

    private void parted(CheckContext context, SolvedCase solved, int isolator, LivePaths before, IsolatedState open,
            List<Finding> findings) {
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (solved.state().engineRunning() && context.plan().elements().get(e) instanceof Plan.Regulated source
                    && "engine".equals(source.runsOn())
                    && KeptBattery.of(context.plan(), solved.running().at(), before, source)
                    && !KeptBattery.of(context.plan(), solved.running().at(), open.live(), source)) {
                String id = context.plan().devices().get(isolator).id();
                findings.add(Finding.of(slug(), Severity.ERROR, id, "Isolator " + context.names().shown(id)
                        + " parts the running alternator " + context.names().shown(context.names().element(e))
                        + " from every battery")
                        .inCase(solved.state().name())
                        .because("Without a battery its voltage leaps up and destroys its diodes and what is connected.")
                        .causedBy(context.names().element(e), "runs without a battery", null)
                        .mend(Mend.inWords("Connect the alternator on the battery side of the isolator, or take an isolator "
                        + "with a pole "
                                + "that stops it.")).build());
            }
        }
    }

    private void live(CheckContext context, SolvedCase solved, List<Integer> contacts, IsolatedState open,
            List<Finding> findings) {
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (!(context.plan().elements().get(e) instanceof Plan.Demand load)) {
                continue;
            }
            Plan.Device device = context.plan().devices().get(load.device());
            int isolator = device.mustStayLive() || device.existing() || !open.isSupplied(load) ? -1
                    : passedBy(context.plan(), solved, contacts, open.live(), load);
            if (isolator >= 0) {
                String id = context.plan().devices().get(isolator).id();
                FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(e),
                        context.names().shownElement(e) + " stays live when isolator " + context.names().shown(id) + " is open")
                        .inCase(solved.state().name())
                        .because("It is fed from the battery side of the isolator and drains the battery, or is worked on "
                        + "while live.")
                        .causedBy(id, "does not cut it off", null);
                findings.add(builder.mend(Mend.inWords("Feed it from behind " + context.names().shown(id)
                        + ", or mark it as one that must stay live.")).build());
            }
        }
    }

    /** Isolator that sits at the battery which feeds a live load, -1 when the load's battery has none. */
    private static int passedBy(Plan plan, SolvedCase solved, List<Integer> contacts, LivePaths live, Plan.Demand load) {
        for (int e : contacts) {
            Plan.Contact contact = (Plan.Contact) plan.elements().get(e);
            for (int end : new int[] {contact.a(), contact.b()}) {
                int node = solved.running().at().terminalNode()[end];
                for (int at : new int[] {load.a(), load.b()}) {
                    int here = solved.running().at().terminalNode()[at];
                    if (live.joined(node, here) && (live.atPlus(node) || KeptBattery.isMinus(plan, solved.running().at(), live,
                            node))) {
                        return contact.device();
                    }
                }
            }
        }
        return -1;
    }
}
