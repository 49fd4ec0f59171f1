// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.check.UnprotectedReach.Stretch;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A supply conductor meets a protective device within a short length from its source (33 CFR 183.455, ABYC E-11): shortest
 * where it lies bare, longer in a sheath or duct all the way, longest there directly at a battery. Cranking circuits are
 * exempt; what is tapped from them counts from the tap. Conductors rated for all that a source limiting its own current can
 * give need no device for that source.
 */
final class FirstDeviceDistanceRule implements Rule {
    private static final String BARE = "first-device-distance.bare";
    private static final String SHEATHED = "first-device-distance.sheathed";
    private static final String BATTERY = "first-device-distance.battery";

    @Override
    public String slug() {
        return "first-device-distance";
    }

    @Override
    public String says() {
        return "A supply conductor meets a protective device within a short length from its source.";
    }

    @Override
    public List<String> limits() {
        return List.of(BARE, SHEATHED, BATTERY);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (PlanGraph.sourceTerminal(context.plan().elements().get(e)) >= 0) {
                check(context, e, findings);
            }
        }
        return findings;
    }

    private void check(CheckContext context, int source, List<Finding> findings) {
        UnprotectedReach reach = UnprotectedReach.from(context.plan(), context.circuits().graph(), source);
        for (Stretch stretch : reach.stretches()) {
            if (stretch.exempt() || selfLimited(context, source, stretch.conductor())) {
                continue;
            }
            Practice.Limit limit = limit(context, source, stretch);
            boolean earlier = stretch.before() != null && !stretch.before().exempt()
                    && Beyond.above(stretch.before().farMm(), limit(context, source, stretch.before()).value());
            boolean tooLong = Beyond.above(stretch.farMm(), limit.value());
            boolean last = reach.unprotectedEnd(stretch) != null;
            if (!earlier && (tooLong || last)) {
                findings.add(finding(context, source, reach, stretch, limit));
            }
        }
    }

    static Practice.Limit limit(CheckContext context, int source, Stretch stretch) {
        boolean battery = context.plan().elements().get(source) instanceof Plan.Cell && stretch.fromSource();
        return context.practice().limit(!stretch.enclosed() ? BARE : battery ? BATTERY : SHEATHED);
    }

    /** True when the source limits its current to what the conductor bears in every case. */
    private static boolean selfLimited(CheckContext context, int source, int conductor) {
        double limitA = limitA(context.plan().elements().get(source));
        return !context.cases().isEmpty() && context.cases().stream()
                .noneMatch(solved -> Double.isNaN(limitA) || !(solved.ratings().get(conductor).correctedA() >= limitA));
    }

    /**
     * The largest current that a source gives by itself, at whatever speed and ambient, A; NaN when it does not limit its
     * current.
     */
    static double limitA(Plan.Element source) {
        if (source instanceof Plan.Converter converter) {
            return converter.limitA();
        } else if (source instanceof Plan.Regulated regulated) {
            double largest = regulated.limitA();
            for (Plan.LimitPoint point : regulated.limits()) {
                largest = Double.isNaN(largest) ? point.amps() : StrictMath.max(largest, point.amps());
            }
            return largest;
        }
        return Double.NaN;
    }

    private Finding finding(CheckContext context, int source, UnprotectedReach reach, Stretch stretch, Practice.Limit limit) {
        String sourceId = context.names().element(source);
        String from = context.names().shown(sourceId);
        double deviceMm = reach.deviceBeyondMm(stretch);
        String end = reach.unprotectedEnd(stretch);
        Quantity wanted = Quantity.of(limit.value(), "mm");
        Quantity is = Quantity.of(Double.isInfinite(deviceMm) ? stretch.farMm() : deviceMm, "mm");
        String name = context.names().shownConductor(stretch.conductor());
        String title = Double.isInfinite(deviceMm)
                ? name + " runs " + is + " from " + from + (end == null ? "" : " to " + context.names().shown(end))
                        + " without any protective device"
                : name + " runs unprotected: the first device is " + is + " from " + from + ", permitted are " + wanted;
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(stretch.conductor()), title)
                .figures(is, wanted)
                .because("A short before the first device is fed by " + from + " until something burns through.")
                .because(stretch.enclosed() ? "It lies in a sheath or duct all the way."
                        : "It does not lie in a sheath or duct all the way.")
                .causedBy(sourceId, "source that feeds it", null)
                .mend(Mend.inWords("Fit a protective device within " + wanted + " of conductor from "
                        + context.plan().terminals().get(reach.start()).id() + "."));
        double enclosedMm = context.practice().value(
                context.plan().elements().get(source) instanceof Plan.Cell && stretch.fromSource() ? BATTERY : SHEATHED);
        if (!stretch.enclosed() && deviceMm <= enclosedMm) {
            builder.mend(Mend.inWords("Or lay it in a sheath or duct all the way: then " + Quantity.of(enclosedMm, "mm")
                    + " are permitted."));
        }
        return builder.derived(new Derivation("length without protection", is, "sum of the conductors' lengths",
                List.of(new Derivation.Input("this conductor", Quantity.of(stretch.farMm() - stretch.nearMm(), "mm"),
                        context.names().conductor(stretch.conductor())),
                        new Derivation.Input("before it", Quantity.of(stretch.nearMm(), "mm"), sourceId),
                        new Derivation.Input("limit", wanted, limit.name() + ", " + limit.source())),
                limit.source())).build();
    }
}
