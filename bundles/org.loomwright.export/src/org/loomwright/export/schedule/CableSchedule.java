// SPDX-License-Identifier: EPL-2.0
package org.loomwright.export.schedule;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.export.table.Column;
import org.loomwright.export.table.Table;

/**
 * The cable schedule: one line a conductor, with where it comes from and goes to, what it is, how long it is cut, the way it
 * lies and the text of its label. A cable that is pulled with no core connected yet has one line that says so.
 */
public final class CableSchedule {
    private static final String NOT_CONNECTED = "not connected";
    private static final List<Column> COLUMNS = List.of(Column.text("cable", "cable"), Column.text("from", "from"),
            Column.text("to", "to"), Column.text("part", "type"), Column.number("sectionMm2", "section", "mm2"),
            Column.text("colour", "colour"), Column.number("lengthM", "length", "m"), Column.text("path", "path"),
            Column.text("label", "label"), Column.text("existing", ""), Column.text("open", ""));

    private CableSchedule() {
    }

    /**
     * The schedule of a plan.
     *
     * @param plan     the plan
     * @param open     ids of the cables whose section is not chosen yet; they have none in the schedule, which says so
     * @param existing existing wiring of the base vehicle is listed too, and marked
     */
    public static Table of(Plan plan, Set<String> open, boolean existing) {
        Designations designations = new Designations(plan.arrangement());
        Map<Integer, List<Plan.Conductor>> conductors = plan.conductors().stream()
                .collect(Collectors.groupingBy(Plan.Conductor::cable));
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < plan.cables().size(); i++) {
            Plan.Cable cable = plan.cables().get(i);
            if (!cable.existing() || existing) {
                rows.addAll(rows(plan, cable, open.contains(cable.id()), conductors.getOrDefault(i, List.of()), designations));
            }
        }
        return new Table("Cable schedule", COLUMNS, rows, null);
    }

    private static List<List<Object>> rows(Plan plan, Plan.Cable cable, boolean open, List<Plan.Conductor> conductors,
            Designations designations) {
        List<List<Object>> rows = new ArrayList<>();
        for (Plan.Conductor conductor : conductors) {
            String from = designations.shown(plan.terminals().get(conductor.a()).id());
            String to = designations.shown(plan.terminals().get(conductor.b()).id());
            rows.add(row(plan, cable, designations.shown(cable.id()), from, to,
                    open ? Double.NaN : conductor.sectionMm2(), open, conductor.colour()));
        }
        if (rows.isEmpty()) {
            rows.add(row(plan, cable, designations.shown(cable.id()), NOT_CONNECTED, NOT_CONNECTED,
                    open ? Double.NaN : cable.sectionMm2(), open, null));
        }
        return rows;
    }

    private static List<Object> row(Plan plan, Plan.Cable cable, String shown, String from, String to, double sectionMm2,
            boolean open, String colour) {
        return Arrays.asList(shown, from, to, cable.part(), section(sectionMm2), colour == null ? "" : colour,
                CutLength.metres(cable.lengthMm()), path(plan, cable), shown + "  " + from + " / " + to,
                cable.existing() ? "existing" : "", open ? "section open" : "");
    }

    private static BigDecimal section(double sectionMm2) {
        return Double.isFinite(sectionMm2)
                ? new BigDecimal(BigDecimal.valueOf(sectionMm2).stripTrailingZeros().toPlainString())
                : null;
    }

    private static String path(Plan plan, Plan.Cable cable) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < cable.path().size(); i++) {
            String duct = cable.ducts().get(i);
            parts.add(plan.runs().get(cable.path().get(i)).id()
                    + (duct.isEmpty() ? "" : "/" + duct.substring(duct.lastIndexOf('/') + 1)));
        }
        return String.join(" ", parts);
    }
}
