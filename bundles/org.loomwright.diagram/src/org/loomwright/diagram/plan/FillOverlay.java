// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.loomwright.diagram.overlay.OverlayKind;
import org.loomwright.diagram.overlay.OverlayScale;
import org.loomwright.diagram.overlay.OverlayValues;
import org.loomwright.engine.assembly.Assembly;
import org.loomwright.engine.assembly.Practice;
import org.loomwright.model.parts.DuctForm;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Vehicle;

/** The overlay of how full ducts are; the same in every case. */
public final class FillOverlay {
    private FillOverlay() {
    }

    /** Values by the ids of runs and ducts, with the limits of the practice in force for closed and openable ducts. */
    public static OverlayValues of(Vehicle vehicle, Arrangement arrangement) {
        Practice practice = Assembly.assemble(vehicle, arrangement, null).plan().practice();
        PlanContent content = PlanReader.read(vehicle, arrangement, PlanView.ABOVE);
        Map<String, Double> values = new LinkedHashMap<>();
        DuctFill.of(vehicle, arrangement, content).byRun().forEach((run, filled) -> {
            if (filled.known()) {
                values.put(content.runs().get(run).id(), 100 * filled.share());
                values.merge(filled.duct(), 100 * filled.share(), StrictMath::max);
            }
        });
        TreeSet<Double> limits = new TreeSet<>();
        vehicle.getDucts().forEach(duct -> limit(duct, practice, limits));
        if (arrangement != null) {
            arrangement.getDucts().forEach(duct -> limit(duct, practice, limits));
        }
        double largest = values.values().stream().mapToDouble(value -> value).max().orElse(0);
        return new OverlayValues(OverlayScale.upTo(OverlayKind.FILL, largest, List.copyOf(limits)), values);
    }

    private static void limit(Duct duct, Practice practice, TreeSet<Double> limits) {
        if (duct.getPart() != null && duct.getPart().getForm() != null) {
            limits.add(100 * practice.value(duct.getPart().getForm() == DuctForm.CLOSED ? "fill.closed" : "fill.openable"));
        }
    }
}
