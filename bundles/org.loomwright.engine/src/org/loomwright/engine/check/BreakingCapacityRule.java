// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.protection.DeviceProtection;
import org.loomwright.engine.protection.Verdict;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A protective device breaks the largest fault at its own load terminals, at the highest voltage that stands there. Behind
 * another device that breaks all of it, a share is enough.
 */
final class BreakingCapacityRule implements Rule {
    private static final String BRANCH = "breaking-capacity.branch";

    @Override
    public String slug() {
        return "breaking-capacity";
    }

    @Override
    public String says() {
        return "A protective device can break the largest short circuit at its terminals.";
    }

    @Override
    public List<String> limits() {
        return List.of(BRANCH);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        Inherited inherited = new Inherited(context);
        for (DeviceProtection row : context.protection().devices()) {
            if (row.breakingVerdict() != Verdict.FAILS || inherited.device(row.protector())) {
                continue;
            }
            Plan.Protector device = (Plan.Protector) context.plan().elements().get(row.protector());
            double neededA = row.breakingA() * (backed(context, row) ? context.practice().value(BRANCH) : 1);
            if (Beyond.above(neededA, device.breakingA())) {
                findings.add(current(context, row, device, neededA));
            }
            if (Beyond.above(row.highestV(), device.ratedV())) {
                findings.add(voltage(context, row, device));
            }
        }
        return findings;
    }

    /** Whether every device next upstream breaks the whole fault. */
    private static boolean backed(CheckContext context, DeviceProtection row) {
        return !row.selectivity().isEmpty() && row.selectivity().stream().allMatch(pair -> !Beyond.below(
                ((Plan.Protector) context.plan().elements().get(pair.upstream())).breakingA(), row.breakingA()));
    }

    private Finding current(CheckContext context, DeviceProtection row, Plan.Protector device, double neededA) {
        Quantity is = Quantity.of(neededA, "A");
        Quantity wanted = Quantity.of(device.breakingA(), "A");
        String name = context.names().shown(context.names().element(row.protector()));
        FindingBuilder builder = Finding.of(slug(), Severity.ERROR, context.names().element(row.protector()),
                "A short circuit at " + context.names().shown(context.plan().terminals().get(row.loadTerminal()).id())
                        + " gives " + Quantity.of(row.breakingA(), "A") + ", the "
                        + Quantity.of(device.ratingA(), "A") + " " + device.kind() + " " + name
                        + " breaks " + wanted)
                .figures(is, wanted)
                .because(neededA == row.breakingA() ? "No device before it breaks the whole fault."
                        : "The device before it breaks the whole fault, so that " + is + " would be enough.")
                .because("Beyond its breaking capacity it may burst or keep an arc.")
                .because("The current is that of full, new batteries and all sources through cold copper and good joints.");
        for (int e : sources(context, row)) {
            builder.causedBy(context.names().element(e), "source of the fault's current", null);
        }
        mends(context, row, device, name, neededA).forEach(builder::mend);
        return ProtectionReasons.derived(builder, context, device.id()).build();
    }

    private static List<Integer> sources(CheckContext context, DeviceProtection row) {
        List<Integer> found = new ArrayList<>();
        int span = context.circuits().spanOf(row.loadTerminal() == device(context, row).a() ? device(context, row).b()
                : device(context, row).a());
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Cell cell && context.circuits().spanOf(cell.a()) == span) {
                found.add(e);
            }
        }
        return found;
    }

    private static Plan.Protector device(CheckContext context, DeviceProtection row) {
        return (Plan.Protector) context.plan().elements().get(row.protector());
    }

    private static List<Mend> mends(CheckContext context, DeviceProtection row, Plan.Protector device, String name,
            double neededA) {
        Plan.ProtectorOption option = device.options().stream()
                .filter(o -> !Beyond.below(o.breakingA(), neededA) && !Beyond.below(o.ratedV(), row.highestV())
                        && o.ratingA() == device.ratingA())
                .min(Comparator.comparingDouble(Plan.ProtectorOption::breakingA)).orElse(null);
        if (option != null && device.way() != null) {
            return List.of(new Mend("Fit " + option.part() + " at " + name + ": it breaks "
                    + Quantity.of(option.breakingA(), "A") + ".", List.of(new Mend.FitProtector(device.way(), option.part()))));
        }
        return List.of(Mend.inWords("Put a holder and a DC fuse of " + Quantity.of(device.ratingA(), "A")
                + " that breaks at least " + Quantity.of(neededA, "A") + " in the place of " + name
                + ", or next before it."));
    }

    private Finding voltage(CheckContext context, DeviceProtection row, Plan.Protector device) {
        Quantity is = Quantity.of(row.highestV(), "V");
        Quantity wanted = Quantity.of(device.ratedV(), "V");
        String name = context.names().shown(context.names().element(row.protector()));
        return ProtectionReasons.derived(Finding.of(slug(), Severity.ERROR, context.names().element(row.protector()),
                "The " + device.kind() + " " + name + " has to break " + is + ", it is rated " + wanted)
                .figures(is, wanted).because("An arc goes out only while the voltage is within the rating.")
                .mend(Mend.inWords("Fit one rated at least " + is + " at " + name + ".")), context, device.id()).build();
    }
}
