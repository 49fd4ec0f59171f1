// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * At full output of a charging source little voltage is lost between its terminals and those of the battery, supply and return
 * together. All loads are off then, other sources rest, and the current parts between batteries as their voltages have it.
 */
final class ChargePathDropRule implements Rule {
    private static final String LIMIT_12 = "charge-path-drop.12V";
    private static final String LIMIT_24 = "charge-path-drop.24V";

    @Override
    public String slug() {
        return "charge-path-drop";
    }

    @Override
    public String says() {
        return "At full output little voltage is lost between a charging source and the battery.";
    }

    @Override
    public List<String> limits() {
        return List.of(LIMIT_12, LIMIT_24);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (ChargeDrop each : drops(context)) {
            if (Beyond.above(each.parts().dropV(), each.limit().value())) {
                findings.add(finding(context, each));
            }
        }
        return findings;
    }

    /**
     * The way from a charging source to a battery at the source's full output.
     *
     * @param state  case that it is judged in
     * @param source the source, element of the plan
     * @param cell   the battery's cell, element of the plan
     * @param amps   full output, A
     * @param parts  where the voltage is lost
     * @param limit  permitted drop
     */
    record ChargeDrop(SolvedCase state, int source, int cell, double amps, DropBreakdown parts, Practice.Limit limit) {
    }

    /** The ways of all charging sources, within their limits or not. */
    static List<ChargeDrop> drops(CheckContext context) {
        List<ChargeDrop> drops = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Regulated
                    || context.plan().elements().get(e) instanceof Plan.Converter) {
                SolvedCase state = chargingCase(context, e);
                FullOutput full = state == null ? null : FullOutput.of(context.plan(), state, e);
                if (full != null) {
                    drops(context, state, full, e, drops);
                }
            }
        }
        return drops;
    }

    /** The case in which the source delivers most of its current limit: a charging one where there is one. */
    private static SolvedCase chargingCase(CheckContext context, int source) {
        SolvedCase best = null;
        for (SolvedCase solved : context.settled()) {
            int item = solved.running().at().elementItem()[source];
            boolean gives = item >= 0 && solved.running().point().on()[item] && FullOutput.limitA(solved, item) > 0;
            if (gives && (best == null || rank(solved) > rank(best)
                    || rank(solved) == rank(best) && FullOutput.limitA(solved, item) > FullOutput.limitA(best,
                            best.running().at().elementItem()[source]))) {
                best = solved;
            }
        }
        return best;
    }

    private static int rank(SolvedCase solved) {
        return "charging".equals(solved.state().kind()) ? 1 : 0;
    }

    private static void drops(CheckContext context, SolvedCase state, FullOutput full, int source, List<ChargeDrop> drops) {
        for (int e = 0; e < context.plan().elements().size(); e++) {
            DropBreakdown parts = context.plan().elements().get(e) instanceof Plan.Cell && full.charges(e)
                    ? full.path(context.names(), e) : null;
            if (parts != null) {
                Practice.Limit limit = context.practice().limit(nominalV(context.plan(), full, e) < 24 ? LIMIT_12 : LIMIT_24);
                drops.add(new ChargeDrop(state, source, e, full.amps(), parts, limit));
            }
        }
    }

    private static double nominalV(Plan plan, FullOutput full, int cell) {
        return full.seriesOf(cell).stream().mapToDouble(e -> ((Plan.Cell) plan.elements().get(e)).nominalV()).sum();
    }

    private Finding finding(CheckContext context, ChargeDrop drop) {
        DropBreakdown parts = drop.parts();
        Practice.Limit limit = drop.limit();
        Quantity is = Quantity.of(parts.dropV(), "V");
        Quantity wanted = Quantity.of(limit.value(), "V");
        String from = context.names().shown(context.names().element(drop.source()));
        String to = context.names().shown(context.names().element(drop.cell()));
        FindingBuilder builder = Finding.of(slug(), Severity.WARNING, context.names().element(drop.source()),
                from + " loses " + is + " on the way to " + to + " at its full " + Quantity.of(drop.amps(), "A")
                        + ", permitted are " + wanted)
                .inCase(drop.state().state().name()).figures(is, wanted)
                .because("The battery sees that much less than the source holds, and is not charged fully.");
        DropReasons reasons = new DropReasons(context.plan(), context.names());
        reasons.causes(builder, parts);
        new SectionMends(context.plan(), context.names()).forDrop(parts, limit.value()).ifPresent(builder::mend);
        new ParallelMends(context).forDrop(parts, limit.value()).ifPresent(builder::mend);
        new StrapMends(context.plan(), context.names()).forDrop(parts, limit.value()).ifPresent(builder::mend);
        return builder.derived(reasons.drop(parts)).build();
    }
}
