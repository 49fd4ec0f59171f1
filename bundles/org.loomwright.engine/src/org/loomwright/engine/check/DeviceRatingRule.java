// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Every supply conductor, taps included, is rated for the protective device next upstream: In up to r Iz, with the smallest Iz of
 * all cases. Where devices feed it from several sides, the largest counts; cores in parallel count together.
 */
final class DeviceRatingRule implements Rule {
    private static final String RATIO = "device-rating.ratio";
    private static final String RATIO_FIXED = "device-rating.ratio-fixed";

    @Override
    public String slug() {
        return "device-rating";
    }

    @Override
    public String says() {
        return "Every conductor and tap is rated for the protective device upstream of it.";
    }

    @Override
    public List<String> limits() {
        return List.of(RATIO, RATIO_FIXED);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int c = 0; c < context.plan().conductors().size(); c++) {
            int upstream = largest(context.plan(), context.circuits().upstreamOf(c));
            if (upstream < 0) {
                continue;
            }
            Smallest iz = smallest(context, c);
            Plan.Protector protector = (Plan.Protector) context.plan().elements().get(upstream);
            Practice.Limit ratio = ratio(context, upstream);
            if (iz != null && Beyond.above(protector.ratingA(), ratio.value() * iz.amps())) {
                findings.add(finding(context, c, upstream, iz, ratio));
            }
        }
        return findings;
    }

    /** The largest rating that the conductors a device protects permit, A; infinite when it protects none with a rating. */
    static double permittedA(CheckContext context, int protector) {
        double permitted = Double.POSITIVE_INFINITY;
        Plan.Protector device = (Plan.Protector) context.plan().elements().get(protector);
        double ratio = ratio(context, protector).value();
        for (int terminal : new int[] {device.a(), device.b()}) {
            int span = context.circuits().spanOf(terminal);
            if (context.circuits().feeders(span).contains(protector)) {
                for (int c : context.circuits().conductorsIn(span)) {
                    Smallest iz = smallest(context, c);
                    permitted = iz == null ? permitted : StrictMath.min(permitted, ratio * iz.amps());
                }
            }
        }
        return permitted;
    }

    /** The smallest rating over the cases, of the cores in parallel together. */
    record Smallest(SolvedCase solved, double amps, ConductorRating rating, int cores) {
    }

    static Smallest smallest(CheckContext context, int conductor) {
        Plan.Conductor core = context.plan().conductors().get(conductor);
        List<Integer> together = new ArrayList<>();
        for (int c = 0; core.parallelGroup() != null && c < context.plan().conductors().size(); c++) {
            Plan.Conductor other = context.plan().conductors().get(c);
            boolean sameEnds = other.a() == core.a() && other.b() == core.b() || other.a() == core.b() && other.b() == core.a();
            if (core.parallelGroup().equals(other.parallelGroup()) && sameEnds) {
                together.add(c);
            }
        }
        if (together.isEmpty()) {
            together.add(conductor);
        }
        Smallest smallest = null;
        for (SolvedCase solved : context.cases()) {
            double amps = together.stream().mapToDouble(c -> solved.ratings().get(c).correctedA()).sum();
            if (!Double.isNaN(amps) && (smallest == null || amps < smallest.amps())) {
                smallest = new Smallest(solved, amps, solved.ratings().get(conductor), together.size());
            }
        }
        return smallest;
    }

    private static int largest(Plan plan, List<Integer> protectors) {
        int largest = -1;
        for (int e : protectors) {
            if (largest < 0 || ((Plan.Protector) plan.elements().get(e)).ratingA()
                    > ((Plan.Protector) plan.elements().get(largest)).ratingA()) {
                largest = e;
            }
        }
        return largest;
    }

    static Practice.Limit ratio(CheckContext context, int protector) {
        List<Integer> consumers = context.circuits().consumersBelow(protector);
        boolean fixed = !consumers.isEmpty() && consumers.stream().noneMatch(e -> canOverload(context.plan(), e));
        return context.practice().limit(fixed ? RATIO_FIXED : RATIO);
    }

    private static boolean canOverload(Plan plan, int element) {
        Plan.Element consumer = plan.elements().get(element);
        return consumer instanceof Plan.Demand load
                && (load.canOverload() || "socket".equals(plan.devices().get(load.device()).kind()));
    }

    private Finding finding(CheckContext context, int conductor, int upstream, Smallest iz, Practice.Limit ratio) {
        Plan.Protector protector = (Plan.Protector) context.plan().elements().get(upstream);
        double limitA = ratio.value() * iz.amps();
        Quantity is = Quantity.of(protector.ratingA(), "A");
        Quantity wanted = Quantity.of(limitA, "A");
        String device = context.names().element(upstream);
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().conductor(conductor),
                context.names().shownConductor(conductor) + " bears " + wanted + ", the " + protector.kind() + " "
                        + context.names().shown(device) + " before it is rated " + is)
                .inCase(iz.solved().state().name()).figures(is, wanted)
                .because(surroundings(iz))
                .causedBy(device, "rating of the " + protector.kind(), is);
        ProtectorMends.atMost(context, upstream, limitA).forEach(builder::mend);
        double eachA = protector.ratingA() / ratio.value() / iz.cores();
        new SectionMends(context.plan(), context.names()).forRating(conductor, iz.rating(), eachA).ifPresent(builder::mend);
        new ParallelMends(context).forRating(conductor, iz.rating(), eachA).ifPresent(builder::mend);
        return builder.derived(RatingDerivation.of(context.plan(), conductor, iz.rating()))
                .derived(new Derivation("largest rating permitted", wanted, "r x Iz", List.of(
                        new Derivation.Input("r", Quantity.of(ratio.value(), "1"), ratio.name() + ", " + ratio.source()),
                        new Derivation.Input("Iz", Quantity.of(iz.amps(), "A"), context.names().conductor(conductor))),
                        "IEC 60364-4-43; r after the practice")).build();
    }

    private static String surroundings(Smallest iz) {
        ConductorRating rating = iz.rating();
        return "Its table gives " + Quantity.of(rating.tableA(), "A") + "; at " + Quantity.of(rating.ambientC(), "degC")
                + " and with "
                + rating.counted() + " together it keeps " + Quantity.of(rating.correctedA(), "A")
                + (iz.cores() > 1 ? ", " + iz.cores() + " cores in parallel " + Quantity.of(iz.amps(), "A") + "." : ".");
    }
}
