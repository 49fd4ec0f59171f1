// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.schedule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/**
 * The cable schedule: one line a conductor, with where it comes from and goes to, what it is, how long it is cut, the way it
 * lies and the text of its label.
 */
public final class CableSchedule {
    private static final List<Column> COLUMNS = List.of(Column.text("cable", "cable"), Column.text("from", "from"),
            Column.text("to", "to"), Column.text("part", "type"), Column.number("sectionMm2", "section", "mm2"),
            Column.text("colour", "colour"), Column.number("lengthM", "length", "m"), Column.text("path", "path"),
            Column.text("label", "label"), Column.text("existing", ""));

    private CableSchedule() {
    }

    /**
     * The schedule of a plan.
     *
     * @param plan     the plan
     * @param existing existing wiring of the base vehicle is listed too, and marked
     */
    public static Table of(Plan plan, boolean existing) {
        Designations designations = new Designations(plan.arrangement());
        List<List<Object>> rows = new ArrayList<>();
        for (Plan.Conductor conductor : plan.conductors()) {
            Plan.Cable cable = plan.cables().get(conductor.cable());
            if (cable.existing() && !existing) {
                continue;
            }
            String from = designations.shown(plan.terminals().get(conductor.a()).id());
            String to = designations.shown(plan.terminals().get(conductor.b()).id());
            rows.add(Arrays.asList(designations.shown(cable.id()), from, to, cable.part(), section(conductor),
                    conductor.colour() == null ? "" : conductor.colour(), metres(cable.lengthMm()), path(plan, cable),
                    designations.shown(cable.id()) + "  " + from + " / " + to, cable.existing() ? "existing" : ""));
        }
        return new Table("Cable schedule", COLUMNS, rows, null);
    }

    private static BigDecimal section(Plan.Conductor conductor) {
        return Double.isFinite(conductor.sectionMm2())
                ? new BigDecimal(BigDecimal.valueOf(conductor.sectionMm2()).stripTrailingZeros().toPlainString())
                : null;
    }

    private static BigDecimal metres(double lengthMm) {
        return Double.isFinite(lengthMm) ? BigDecimal.valueOf(lengthMm).movePointLeft(3).setScale(2, RoundingMode.CEILING) : null;
    }

    private static String path(Plan plan, Plan.Cable cable) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < cable.path().size(); i++) {
            String duct = i < cable.ducts().size() ? cable.ducts().get(i) : "";
            parts.add(plan.runs().get(cable.path().get(i)).id() + (duct == null || duct.isEmpty() ? "" : "/" + duct));
        }
        return String.join(" ", parts);
    }
}
