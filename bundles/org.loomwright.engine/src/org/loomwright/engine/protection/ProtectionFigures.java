// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.protection;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.StudyResult;
import org.loomwright.engine.result.StudyResult.ElementFigures;

/** Derives the figures of the protection study when asked: of a conductor or its cable, of a protective device or its box. */
final class ProtectionFigures implements StudyResult.Explainer {
    private final CheckContext context;
    private final List<ConductorProtection> conductors;
    private final List<DeviceProtection> devices;
    private final DeviceCurves curves;

    ProtectionFigures(CheckContext context, List<ConductorProtection> conductors, List<DeviceProtection> devices,
            DeviceCurves curves) {
        this.context = context;
        this.conductors = List.copyOf(conductors);
        this.devices = List.copyOf(devices);
        this.curves = curves;
    }

    @Override
    public List<ElementFigures> explain(String element) {
        Plan plan = context.plan();
        List<ElementFigures> figures = new ArrayList<>();
        ConductorDerivations ofConductors = new ConductorDerivations(context, curves);
        for (ConductorProtection row : conductors) {
            Plan.Conductor core = plan.conductors().get(row.conductor());
            if (core.id().equals(element) || plan.cables().get(core.cable()).id().equals(element)) {
                add(figures, context.names().conductor(row.conductor()), ofConductors.of(row));
            }
        }
        DeviceDerivations ofDevices = new DeviceDerivations(context, curves);
        for (DeviceProtection row : devices) {
            Plan.Element protector = plan.elements().get(row.protector());
            if (protector.id().equals(element) || context.names().element(row.protector()).equals(element)
                    || plan.devices().get(protector.device()).id().equals(element)) {
                add(figures, context.names().element(row.protector()), ofDevices.of(row));
            }
        }
        return figures;
    }

    private static void add(List<ElementFigures> figures, String id, List<Derivation> derivations) {
        if (!derivations.isEmpty()) {
            figures.add(new ElementFigures(id, null, derivations));
        }
    }
}
