// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.flow.Network;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.FindingBuilder;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;

/**
 * A battery is charged and discharged within its maker's currents, and not charged below its lowest temperature; a lithium
 * battery whose part states none takes the practice's.
 */
final class BatteryLimitRule implements Rule {
    private static final String LITHIUM = "battery-limit.lithium-charge-min";
    private static final int NAMED = 3;
    /** Share of the capacity, 1/h, below which a current is taken for a trickle of the arithmetic. */
    private static final double NO_CURRENT = 1e-6;

    @Override
    public String slug() {
        return "battery-limit";
    }

    @Override
    public String says() {
        return "Batteries are charged and discharged within their makers' currents and temperatures.";
    }

    @Override
    public List<String> limits() {
        return List.of(LITHIUM);
    }

    @Override
    public List<Finding> check(CheckContext context) {
        List<Finding> findings = new ArrayList<>();
        for (int e = 0; e < context.plan().elements().size(); e++) {
            if (context.plan().elements().get(e) instanceof Plan.Cell cell) {
                for (SolvedCase solved : context.settled()) {
                    double amps = solved.running().elementA(e);
                    if (Beyond.above(amps, cell.chargeMaxA()) && !limitsItself(solved, e)) {
                        findings.add(charged(context, solved, e, cell, amps));
                    } else if (Beyond.above(-amps, cell.dischargeMaxA())) {
                        findings.add(discharged(context, solved, e, cell, -amps));
                    }
                    if (amps > NO_CURRENT * cell.capacityAh()) {
                        cold(context, solved, e, cell, amps, findings);
                    }
                }
            }
        }
        return findings;
    }

    /** Takes what it accepts: a lead battery, whose current falls by itself as it fills. */
    private static boolean limitsItself(SolvedCase solved, int e) {
        int item = solved.running().at().elementItem()[e];
        return item >= 0 && solved.running().at().network().items().get(item) instanceof Network.Emf cell
                && cell.chargeOhm() > cell.ohm();
    }

    private Finding charged(CheckContext context, SolvedCase solved, int e, Plan.Cell cell, double amps) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(cell.chargeMaxA(), "A");
        FindingBuilder builder = limit(context, solved, e, " is charged with " + is + ", its maker permits " + wanted, is, wanted)
                .because("It overheats, or its own management cuts it off while the source is still giving.");
        for (int s = 0; s < context.plan().elements().size(); s++) {
            double givenA = givenA(context, solved, s);
            if (givenA > NO_CURRENT * cell.capacityAh()) {
                builder.causedBy(context.names().element(s), "charging source", Quantity.of(givenA, "A"));
            }
        }
        return builder.mend(Mend.inWords("Charge it over a converter that is limited to " + wanted
                + ", or take a larger bank.")).build();
    }

    /** Current that a regulated source or a converter delivers, A; 0 for other elements. */
    private static double givenA(CheckContext context, SolvedCase solved, int source) {
        int item = solved.running().at().elementItem()[source];
        Plan.Element element = context.plan().elements().get(source);
        return item < 0 ? 0 : element instanceof Plan.Regulated ? StrictMath.abs(solved.running().elementA(source))
                : element instanceof Plan.Converter ? solved.running().point().outputA()[item] : 0;
    }

    private Finding discharged(CheckContext context, SolvedCase solved, int e, Plan.Cell cell, double amps) {
        Quantity is = Quantity.of(amps, "A");
        Quantity wanted = Quantity.of(cell.dischargeMaxA(), "A");
        FindingBuilder builder = limit(context, solved, e, " gives " + is + ", its maker permits " + wanted, is, wanted)
                .because("Its own management may cut it off, or it ages fast.");
        solved.state().demands().stream().map(Plan.DemandState::demand).sorted((p, q) -> Double.compare(
                StrictMath.abs(solved.running().elementA(q)), StrictMath.abs(solved.running().elementA(p)))).limit(NAMED)
                .forEach(load -> builder.causedBy(context.names().element(load), "load that is on",
                        Quantity.of(StrictMath.abs(solved.running().elementA(load)), "A")));
        return builder.mend(Mend.inWords("Take a battery or a bank that gives at least " + is
                + ", or run fewer loads at once.")).build();
    }

    private FindingBuilder limit(CheckContext context, SolvedCase solved, int e, String text, Quantity is, Quantity wanted) {
        String id = context.names().element(e);
        return Finding.of(slug(), Severity.ERROR, id, "Battery " + context.names().shown(id) + text)
                .inCase(solved.state().name()).figures(is, wanted)
                .derived(new Derivation("current of the battery", is, "operating point of the case", List.of(
                        new Derivation.Input("limit", wanted, context.plan().elements().get(e).id())), "maker's figure"));
    }

    private void cold(CheckContext context, SolvedCase solved, int e, Plan.Cell cell, double amps, List<Finding> findings) {
        Practice.Limit lithium = context.practice().limit(LITHIUM);
        boolean stated = !Double.isNaN(cell.chargeMinC());
        double leastC = stated ? cell.chargeMinC() : "liFePO4".equals(cell.chemistry()) ? lithium.value() : Double.NaN;
        for (Plan.CellState state : solved.state().cells()) {
            if (state.cell() == e && Beyond.below(state.temperatureC(), leastC)) {
                Quantity is = Quantity.of(state.temperatureC(), "degC");
                Quantity wanted = Quantity.of(leastC, "degC");
                String id = context.names().element(e);
                findings.add(Finding.of(slug(), Severity.ERROR, id, "Battery " + context.names().shown(id) + " is charged with "
                        + Quantity.of(amps, "A") + " at " + is + ", " + wanted + " at least")
                        .inCase(solved.state().name()).figures(is, wanted)
                        .because(stated ? "Its part states the lowest temperature for charging."
                                : "Its part states none; " + lithium.name() + " of the practice holds (" + lithium.source()
                                + ").")
                        .because("Charged too cold it is damaged for good.")
                        .mend(Mend.inWords("Warm the battery, or keep the charging source off until it is warm enough."))
                        .build());
            }
        }
    }
}
