// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Derivation.Input;
import org.loomwright.engine.result.Quantity;

/** How the figures of one conductor's row come about. */
final class ConductorDerivations {
    private final CheckContext context;
    private final DeviceCurves curves;

    ConductorDerivations(CheckContext context, DeviceCurves curves) {
        this.context = context;
        this.curves = curves;
    }

    List<Derivation> of(ConductorProtection row) {
        List<Derivation> found = new ArrayList<>();
        for (Feed feed : row.feeds()) {
            for (Fault fault : feed.faults()) {
                found.add(current(fault));
                if (fault.wayBack()) {
                    found.add(clearing(fault));
                }
            }
        }
        for (ReturnDuty duty : row.duties()) {
            found.add(duty(duty));
        }
        if (row.overload() != null && row.overload().protector() >= 0) {
            found.add(rating(row.overload()));
            found.add(conventional(row.overload()));
        }
        if (row.heat() != null) {
            found.add(peak(row));
            found.add(adiabatic(row));
        }
        return found;
    }

    private Derivation current(Fault fault) {
        String name = fault.extreme().word() + " fault current at " + terminal(fault.terminal()) + " to " + partner(fault);
        return new Derivation(name, Quantity.of(fault.totalA(), "A"), "U / Rloop",
                List.of(new Input("U", Quantity.of(fault.openV(), "V"), "voltage before the fault, no load"),
                        new Input("Rloop", Quantity.of(1000 * fault.loopOhm(), "mohm"),
                                fault.wayBack() ? "U / I of the whole network, its meshes and sources included"
                                        : "nothing closes the loop"),
                        new Input("through the conductor", Quantity.of(fault.throughA(), "A"),
                                context.names().conductor(fault.conductor()))),
                fault.extreme() == Extreme.LARGEST
                        ? "nodal analysis; batteries full, warm and new, all sources, nominal wires at 20 degC, smallest joints"
                        : "nodal analysis; batteries at state.rest-charge, state.cold and aged, "
                                + (fault.linked() ? "links closed, " : "links open, ")
                                + "largest wires at their highest temperature, largest joints");
    }

    private Derivation clearing(Fault fault) {
        List<Input> inputs = new ArrayList<>();
        for (Clearing.Step step : fault.clearing().steps()) {
            CurvePair curve = curves.cold(step.protector());
            Plan.Protector protector = (Plan.Protector) context.plan().elements().get(step.protector());
            inputs.add(new Input("I", Quantity.of(step.currentA(), "A"), context.names().element(step.protector())));
            inputs.add(new Input("In", Quantity.of(protector.ratingA(), "A"), String.valueOf(protector.part())));
            inputs.add(new Input("f(T)", Quantity.of(curve.factor(), "1"), curve.source() + " at "
                    + Quantity.of(curves.coldC(protector.device()), "degC")));
            inputs.add(new Input("opens at", Quantity.of(step.atS(), "s"), curve.source()));
        }
        if (fault.clearing().remainingA() > 0) {
            inputs.add(new Input("flows on", Quantity.of(fault.clearing().remainingA(), "A"),
                    fault.clearing().known() ? "no device on its way opens for certain" : "a device on its way states no curve"));
        }
        inputs.add(new Input("I2t", Quantity.of(fault.clearing().letThroughA2s(), "A2s"), "let through to the conductor"));
        return new Derivation("time to clear the " + fault.extreme().word() + " fault at " + terminal(fault.terminal()) + " to "
                + partner(fault), Quantity.of(fault.clearing().seconds(), "s"), "slowest curve at I / (In x f(T))", inputs,
                "straight lines in logarithms between the gates, constant I2t above the last");
    }

    private Derivation duty(ReturnDuty duty) {
        String device = duty.protector() < 0 ? "no device" : context.names().element(duty.protector());
        return new Derivation("fault current carried for " + device, Quantity.of(duty.largestA(), "A"), "share of the fault",
                List.of(new Input("fault", Quantity.of(duty.largest().totalA(), "A"), context.names()
                        .conductor(duty.largest().conductor()) + " at " + terminal(duty.largest().terminal())),
                        new Input("smallest carried", Quantity.of(duty.smallestA(), "A"), context.names()
                                .conductor(duty.smallest().conductor()) + " at " + terminal(duty.smallest().terminal()))),
                "nodal analysis");
    }

    private Derivation rating(OverloadFigures figures) {
        Practice.Limit limit = context.practice().limit(figures.ratioLimit());
        return new Derivation("largest rated current permitted", Quantity.of(figures.ratio() * figures.izA(), "A"), "r x Iz",
                List.of(new Input("r", Quantity.of(figures.ratio(), "1"), limit.name() + ", " + limit.source()),
                        new Input("Iz", Quantity.of(figures.izA(), "A"), "smallest rating over the cases"),
                        new Input("In", Quantity.of(figures.inA(), "A"), context.names().element(figures.protector()))),
                "IEC 60364-4-43");
    }

    private Derivation conventional(OverloadFigures figures) {
        Practice.Limit limit = context.practice().limit(ConductorRows.OVERLOAD);
        CurvePair curve = curves.cold(figures.protector());
        return new Derivation("steady temperature just below I2", Quantity.of(figures.steadyBelowC(), "degC"),
                "I2^2 R(T) = (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref), solved for T",
                List.of(new Input("I2", Quantity.of(figures.i2A(), "A"), curve == null ? "no curve" : curve.source()),
                        new Input("Iz", Quantity.of(figures.izA(), "A"), "smallest rating over the cases"),
                        new Input("I2 permitted", Quantity.of(figures.overloadFactor() * figures.izA(), "A"),
                                limit.name() + ", " + limit.source())),
                "heat balance that the published rating implies; IEC 60364-4-43 for I2 <= 1.45 Iz");
    }

    private Derivation peak(ConductorProtection row) {
        ShortTransient heat = row.heat();
        return new Derivation("peak temperature in a short circuit", Quantity.of(heat.peakC(), "degC"),
                "C dT/dt = I^2 R(T) - (T - Ta) Iz^2 R(Tmax) / (Tmax - Tref), for the current that makes it hottest",
                List.of(new Input("I", Quantity.of(heat.worstA(), "A"), "between " + Quantity.of(heat.smallestA(), "A")
                        + " at the far end and " + Quantity.of(heat.largestA(), "A") + " at the near end"),
                        new Input("t", Quantity.of(heat.seconds(), "s"), "slowest curves of the devices before it"),
                        new Input("Tstart", Quantity.of(heat.startC(), "degC"), "hottest case"),
                        new Input("limit", Quantity.of(heat.limitC(), "degC"), part(row.conductor()))),
                "heat balance that the published rating implies; IEC 60949 for the heat capacity");
    }

    private Derivation adiabatic(ConductorProtection row) {
        ShortTransient heat = row.heat();
        double section = context.plan().conductors().get(row.conductor()).sectionMm2();
        return new Derivation("I2t that it withstands", Quantity.of(heat.withstandA2s(), "A2s"), "k^2 S^2",
                List.of(new Input("k", Quantity.of(heat.k(), "1"), "226 sqrt(ln((234.5 + Tlimit) / (234.5 + Tstart)))"),
                        new Input("S", Quantity.of(section, "mm2"), context.names().conductor(row.conductor())),
                        new Input("I2t let through", Quantity.of(heat.letThroughA2s(), "A2s"), "largest over the same currents")),
                "IEC 60364-5-54, IEC 60949");
    }

    private String part(int conductor) {
        Plan.Cable cable = context.plan().cables().get(context.plan().conductors().get(conductor).cable());
        return "short-time limit of " + cable.part();
    }

    private String terminal(int terminal) {
        return context.plan().terminals().get(terminal).id();
    }

    private String partner(Fault fault) {
        return fault.target() == Fault.Target.RETURN ? terminal(fault.partner())
                : context.plan().bodies().get(fault.partner()).id();
    }
}
