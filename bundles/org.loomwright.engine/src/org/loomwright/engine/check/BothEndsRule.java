// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.check.UnprotectedReach.Stretch;
import org.loomwright.engine.protection.ConductorProtection;
import org.loomwright.engine.protection.Fault;
import org.loomwright.engine.protection.Feed;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A conductor that sources at both ends can load beyond its rating has a device at each end. At the end of a source the
 * permitted distance to the first device holds, as it does without a second source.
 */
final class BothEndsRule implements Rule {

    @Override
    public String slug() {
        return "both-ends";
    }

    @Override
    public String says() {
        return "A conductor between two sources is protected at both ends.";
    }

    @Override
    public List<String> limits() {
        return List.of();
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (ConductorProtection row : context.protection().conductors()) {
            if (row.feeds().size() < 2 || row.overload() == null) {
                continue;
            }
            double izA = row.overload().izA();
            boolean all = row.feeds().stream().allMatch(feed -> Beyond.above(largestA(feed), izA));
            for (Feed feed : row.feeds()) {
                if (all) {
                    List<Integer> sources = tooFar(context, row.conductor(), feed);
                    if (!sources.isEmpty()) {
                        findings.add(finding(context, row, feed, sources, izA));
                    }
                }
            }
        }
        return findings;
    }

    /** Largest current that the side gives through the conductor, A. */
    private static double largestA(Feed feed) {
        Fault far = feed.largestFar();
        return far == null ? 0 : far.throughA();
    }

    /** Sources that reach the conductor at the feed's end without a device, further off than is permitted. */
    private static List<Integer> tooFar(CheckContext context, int conductor, Feed feed) {
        List<Integer> sources = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (PlanGraph.sourceTerminal(context.plan().elements().get(e)) < 0) {
                continue;
            }
            for (Stretch stretch : UnprotectedReach.from(context.plan(), context.circuits().graph(), e).stretches()) {
                if (stretch.conductor() == conductor && stretch.near() == feed.nearTerminal() && !stretch.exempt()
                        && tooFar(context, e, stretch) && !earlier(context, e, stretch.before())) {
                    sources.add(e);
                }
            }
        }
        return sources;
    }

    private static boolean tooFar(CheckContext context, int source, Stretch stretch) {
        return Beyond.above(stretch.farMm(), FirstDeviceDistanceRule.limit(context, source, stretch).value());
    }

    /** Whether a conductor nearer to the source is too far from it already, which then is to be mended first. */
    private static boolean earlier(CheckContext context, int source, Stretch before) {
        return before != null && !before.exempt() && tooFar(context, source, before);
    }

    private Finding finding(CheckContext context, ConductorProtection row, Feed feed, List<Integer> sources, double izA) {
        String end = context.names().shown(context.plan().terminals().get(feed.nearTerminal()).id());
        Quantity is = Quantity.of(largestA(feed), "A");
        Quantity wanted = Quantity.of(izA, "A");
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(row.conductor()),
                context.names().shownConductor(row.conductor()) + " is live from both ends and has no device at " + end
                        + ", from where a fault draws " + is + ": it bears " + wanted)
                .figures(is, wanted)
                .because("When the device at one end has opened, the fault is fed from the other.");
        sources.forEach(e -> builder.causedBy(context.names().element(e), "source at the end without a device", null));
        row.feeds().stream().filter(other -> other != feed).flatMap(other -> other.next().stream())
                .forEach(e -> builder.causedBy(context.names().element(e), "device at the other end", null));
        builder.mend(Mend.inWords("Fit a protective device at " + end + " as well, of at most " + wanted + "."));
        return ProtectionReasons.derived(builder, context, row.conductor()).build();
    }
}
