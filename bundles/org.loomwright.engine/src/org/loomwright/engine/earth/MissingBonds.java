// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.CaseEarth.ContactFlow;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * Bodies that take return current and that no strap, seam or minus cable joins with the rest, so that the current goes home
 * through the return of some device. A body without any way home is told by the check.
 */
final class MissingBonds {
    static final String RULE = "body-unbonded";
    private static final String SMALLEST = "section-min.single";

    private final Plan plan;
    private final EarthNames names;
    private final PlanItems items;

    MissingBonds(Plan plan, EarthNames names, PlanItems items) {
        this.plan = plan;
        this.names = names;
        this.items = items;
    }

    /** Current that leaves a part of the structure into a device. */
    private record Leak(EarthNetwork network, String caseName, ContactFlow contact) {
        double amps() {
            return StrictMath.abs(contact.currentA());
        }
    }

    /** One finding a part of the structure that lacks its bond. */
    List<Finding> findings(List<EarthNetwork> networks, List<CaseEarth> cases) {
        List<Finding> findings = new ArrayList<>();
        if (networks.isEmpty()) {
            return findings;
        }
        StructureParts parts = new StructureParts(plan, networks.get(0));
        for (int body = 0; body < plan.bodies().size(); body++) {
            if (parts.partOf(body) == body && !parts.cleanlyHome(body) && parts.home(body)) {
                Leak leak = largest(parts, body, networks, cases);
                if (leak != null) {
                    findings.add(finding(parts, leak));
                }
            }
        }
        return findings;
    }

    private Leak largest(StructureParts parts, int part, List<EarthNetwork> networks, List<CaseEarth> cases) {
        Leak largest = null;
        for (int k = 0; k < cases.size(); k++) {
            for (ContactFlow contact : cases.get(k).contacts()) {
                int body = body(contact.terminal());
                boolean out = contact.currentA() < -StrapLoads.NOTHING_A;
                if (cases.get(k).settled() && out && parts.partOf(body) == part
                        && (largest == null || -contact.currentA() > largest.amps())) {
                    largest = new Leak(networks.get(k), cases.get(k).caseName(), contact);
                }
            }
        }
        return largest;
    }

    private int body(int terminal) {
        Plan.Terminal at = plan.terminals().get(terminal);
        return at.device() < 0 ? at.body() : plan.devices().get(at.device()).body();
    }

    private Finding finding(StructureParts parts, Leak leak) {
        int body = body(leak.contact().terminal());
        Quantity amps = Quantity.of(leak.amps(), "A");
        int start = leak.network().solved().at().terminalNode()[leak.contact().terminal()];
        int[] way = leak.network().way(start, leak.network().home());
        FindingBuilder builder = Finding.of(RULE, Severity.ERROR, names.body(body), "Body " + names.body(body)
                + " takes return current and no strap joins it with the battery's minus: " + amps
                        + " go home through the return of a device")
                .inCase(leak.caseName());
        List<Input> inputs = new ArrayList<>();
        List<String> steps = new ArrayList<>();
        for (int item : way == null ? new int[0] : way) {
            NetworkIndex.Owner owner = leak.network().index().owner(item);
            if (owner != null) {
                double through = StrictMath.abs(leak.network().solved().itemA(item));
                steps.add(names.carrier(owner.kind(), owner.index()));
                inputs.add(new Input(names.carrier(owner.kind(), owner.index()), Quantity.of(through, "A"), items.id(owner)));
                builder.causedBy(items.id(owner), "lies on the way the current takes", Quantity.of(through, "A"));
            }
        }
        builder.because("The current takes the way by " + String.join(", ", steps.stream().distinct().toList()) + ".");
        mend(parts, body, leak, builder);
        return builder.derived(LossFindings.kirchhoff("current out of " + names.body(body), amps, "operating point of the case",
                inputs))
                .build();
    }

    /** A strap to the nearest body that is home, thick enough for the current; in words where no distance is known. */
    private void mend(StructureParts parts, int body, Leak leak, FindingBuilder builder) {
        int nearest = -1;
        double nearestMm = Double.NaN;
        for (int other = 0; other < plan.bodies().size(); other++) {
            if (parts.cleanlyHome(parts.partOf(other))) {
                double mm = PlaceDistance.betweenBodies(plan, body, other);
                if (nearest < 0 || mm < nearestMm || Double.isNaN(nearestMm) && !Double.isNaN(mm)) {
                    nearest = other;
                    nearestMm = mm;
                }
            }
        }
        if (nearest < 0) {
            return;
        }
        String between = names.body(body) + " to " + names.body(nearest);
        Practice.Limit limit = StrapLoads.limit(plan.practice(), false);
        double allowedOhm = limit.value() / leak.amps() - 2 * plan.practice().value(StrapLoads.JOINT) / 1000;
        if (!(nearestMm > 0) || !(allowedOhm > 0)) {
            builder.mend(Mend.inWords("Fit a strap from " + between + "."));
            return;
        }
        double section = StrictMath.ceil(StrictMath.max(plan.practice().value(SMALLEST), StrapLoads.COPPER_OHM_MM2_PER_M
                * plan.practice().value(StrapLoads.LAY) * nearestMm / 1000 / allowedOhm));
        builder.mend(new Mend("Fit a strap from " + between + ", " + Figures.three(section) + " mm2 or more on "
                + Figures.three(nearestMm)
                + " mm: at " + Quantity.of(leak.amps(), "A") + " it loses at most " + Quantity.of(limit.value(), "V") + ".",
                List.of(new Mend.AddBond(names.body(body), names.body(nearest), section, nearestMm))));
    }
}
