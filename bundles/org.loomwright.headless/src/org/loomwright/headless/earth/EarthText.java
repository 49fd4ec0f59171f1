// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.earth;

import java.io.PrintWriter;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.ElementNames;
import org.loomwright.engine.earth.EarthTable;
import org.loomwright.engine.earth.LossCase;
import org.loomwright.engine.earth.LossRank;
import org.loomwright.engine.earth.LossRow;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.Designations;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;
import org.loomwright.engine.result.Severity;
import org.loomwright.export.table.Table;
import org.loomwright.export.table.TextTable;
import org.loomwright.headless.Style;
import org.loomwright.headless.WrappedText;
import org.loomwright.headless.check.CheckedVehicle;

/** Writes the earth study of a vehicle for people. */
final class EarthText {
    private static final int LISTED = 8;
    private static final double TOLD_V = 1e-3;
    private final PrintWriter out;
    private final Style style;
    private final Severity threshold;

    /** A report on {@code out} that leaves out findings below the threshold. */
    EarthText(PrintWriter out, Style style, Severity threshold) {
        this.out = out;
        this.style = style;
        this.threshold = threshold;
    }

    /** Writes one vehicle. */
    void write(StudiedEarth studied) {
        EarthTable earth = studied.table();
        EarthTables tables = new EarthTables(earth);
        head(studied);
        findings(studied.vehicle());
        if (earth.plan().bodies().isEmpty()) {
            out.println();
            out.println("  The vehicle has no structure bodies.");
        } else {
            table(tables.straps(),
                    "each in the case nearest to its limits; section that would do for these currents, faults aside");
            losses(earth);
            table(tables.bodies(), "potential against the battery's minus" + minus(earth));
            table(tables.currents(), "of straps and seams, case by case");
            table(tables.contacts(), "each in the case in which it carries most");
        }
        table(tables.returns(),
                "each load where it draws most; 'others': what their currents cause of it; 'other': by the other kind of return");
        out.println();
    }

    private static String minus(EarthTable earth) {
        return earth.minus() < 0 ? ""
                : ", " + new Designations(earth.plan().arrangement()).shown(earth.plan().terminals().get(earth.minus()).id());
    }

    private void head(StudiedEarth studied) {
        CheckedVehicle vehicle = studied.vehicle();
        Plan plan = vehicle.plan();
        out.println(style.strong(plan.vehicle()) + (vehicle.label().isEmpty() ? "" : "  " + vehicle.label())
                + style.faint("  " + vehicle.file()));
        out.println("  " + (plan.arrangement().isEmpty() ? "no arrangement"
                : "arrangement " + style.strong(plan.arrangement()) + (vehicle.adopted() ? " (adopted)" : ""))
                + ", practice " + plan.practice().name() + ", " + counted(plan.bodies().size(), "body", "bodies") + ", "
                + counted(plan.bonds().size(), "strap", "straps") + ", " + counted(studied.table().cases().size(), "case",
                        "cases"));
        out.println("  " + counted(count(vehicle, Severity.ERROR), "error", "errors") + ", "
                + counted(count(vehicle, Severity.WARNING), "warning", "warnings") + ", "
                + counted(count(vehicle, Severity.NOTE), "note", "notes"));
    }

    private static int count(CheckedVehicle vehicle, Severity severity) {
        return (int) vehicle.standing(severity).stream().filter(finding -> finding.severity() == severity).count();
    }

    private static String counted(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more);
    }

    private void findings(CheckedVehicle vehicle) {
        List<Finding> standing = vehicle.standing(threshold);
        standing.forEach(finding -> finding(finding, vehicle));
        if (standing.isEmpty()) {
            out.println();
            out.println("  Nothing found at or above severity " + threshold.slug() + ".");
        }
        vehicle.accepted(threshold).forEach(finding -> finding(finding, vehicle));
    }

    private void finding(Finding finding, CheckedVehicle vehicle) {
        String word = finding.accepted() != null ? "accepted" : finding.severity().slug();
        out.println();
        out.println("  " + style.severity(finding.severity(), word + " ".repeat(StrictMath.max(0, 8 - word.length()))) + "  "
                + style.strong(vehicle.designations().shown(finding.element()))
                + style.faint("  " + finding.rule() + (finding.caseName() == null ? "" : ", case " + finding.caseName())));
        WrappedText.write(out, "    ", "", finding.title());
        if (finding.is() != null && finding.wanted() != null) {
            WrappedText.write(out, "    ", "figures  ", finding.is() + ", limit " + finding.wanted());
        }
        if (finding.accepted() != null) {
            WrappedText.write(out, "    ", "reason   ", finding.accepted());
        }
        finding.why().forEach(why -> WrappedText.write(out, "    ", "why      ", why));
        for (Mend mend : finding.mends()) {
            WrappedText.write(out, "    ", "mend     ", mend.text());
        }
    }

    private void losses(EarthTable earth) {
        if (earth.losses().isEmpty()) {
            return;
        }
        out.println();
        out.println("  " + style.strong("Lost straps") + style.faint("  one at a time, the worst first"));
        int rank = 1;
        for (LossRow row : earth.losses()) {
            loss(earth, row, rank++);
        }
        if (!earth.pairs().isEmpty()) {
            out.println();
            out.println("  " + style.strong("Two straps lost") + style.faint("  where that is worse than either alone"));
            rank = 1;
            for (LossRow row : earth.pairs()) {
                loss(earth, row, rank++);
            }
        }
    }

    private void loss(EarthTable earth, LossRow row, int number) {
        Designations shown = new Designations(earth.plan().arrangement());
        String straps = String.join(" and ", row.bonds().stream().map(bond -> shown.shown(earth.plan().bonds().get(bond).id()))
                .toList());
        LossCase worst = row.worst();
        out.println();
        out.println("    " + number + "  " + style.strong(straps) + "  " + word(row.rank()) + (worst == null ? ""
                : style.faint("  case " + worst.caseName() + ", carried " + Quantity.of(worst.carriedA(), "A"))));
        WrappedText.write(out, "       ", "", row.symptom());
        if (worst != null && worst.status() != OperatingPoint.Status.SOLVED) {
            WrappedText.write(out, "       ", "state      ", "no operating point is left; voltages after the loss are not known");
        }
        if (worst != null) {
            hot(earth, worst, shown);
            stopped(earth, worst);
        }
        for (LossRow.Uncleared fault : row.uncleared()) {
            ElementNames names = ElementNames.of(earth.plan());
            WrappedText.write(out, "       ", "not cleared  ", names.shownConductor(fault.conductor()) + " to "
                    + earth.plan().bodies().get(fault.body()).id() + ": " + Quantity.of(fault.afterA(), "A") + " instead of "
                    + Quantity.of(fault.beforeA(), "A") + ", " + names.shownElement(fault.protector()) + " takes "
                    + Quantity.of(fault.afterS(), "s"));
        }
    }

    private void hot(EarthTable earth, LossCase worst, Designations shown) {
        for (LossCase.HotPart part : worst.hot().stream().limit(LISTED).toList()) {
            LossCase.Detour at = part.detour();
            WrappedText.write(out, "       ", "too much   ", shown.shown(at.element()) + ": " + Quantity.of(at.beforeA(), "A")
                    + " before, "
                    + Quantity.of(at.afterA(), "A") + " after, rated " + Quantity.of(at.ratedA(), "A")
                    + (Double.isNaN(part.afterC()) ? "" : ", reaches " + Quantity.of(part.afterC(), "degC") + " of "
                            + Quantity.of(part.maxC(), "degC")));
        }
        if (!worst.path().isEmpty()) {
            WrappedText.write(out, "       ", "way        ", String.join(", ", worst.path().stream()
                    .map(at -> shown.shown(at.element()) + " " + Quantity.of(at.afterA(), "A")).distinct().toList()));
        }
        for (LossCase.BodyShift shift : worst.bodies().stream().filter(LossCase.BodyShift::rises).limit(LISTED).toList()) {
            WrappedText.write(out, "       ", "body       ", earth.plan().bodies().get(shift.body()).id() + " from "
                    + volts(shift.beforeV()) + (Double.isNaN(
                    shift.afterV()) ? ", then without potential" : " to " + volts(shift.afterV())));
        }
    }

    /** Less than a millivolt is what solving leaves. */
    private static String volts(double volts) {
        return Quantity.of(StrictMath.abs(volts) < TOLD_V ? 0 : volts, "V").toString();
    }

    private void stopped(EarthTable earth, LossCase worst) {
        ElementNames names = ElementNames.of(earth.plan());
        List<String> loads = worst.loads().stream().map(load -> names.shownElement(load.demand())
                + (Double.isNaN(load.afterV()) ? "" : " " + volts(load.afterV()))).toList();
        if (!loads.isEmpty()) {
            List<String> shown = loads.subList(0, StrictMath.min(LISTED, loads.size()));
            WrappedText.write(out, "       ", "loads      ", String.join(", ", shown)
                    + (loads.size() > shown.size() ? " and " + (loads.size() - shown.size()) + " more" : ""));
        }
        if (!worst.sources().isEmpty()) {
            WrappedText.write(out, "       ", "sources    ", String.join(", ", worst.sources().stream()
                    .map(names::shownElement).toList()));
        }
    }

    private static String word(LossRank rank) {
        return switch (rank) {
            case BURNS -> "burns a conductor";
            case OVERLOADS -> "overloads what takes over";
            case DOES_NOT_CLEAR -> "keeps a fuse from clearing";
            case STRANDS -> "leaves the current no way";
            case STOPS -> "stops loads";
            case BEARS -> "is borne by the rest";
            case IDLE -> "changes nothing";
        };
    }

    private void table(Table table, String says) {
        if (!table.rows().isEmpty() && table.columns().size() > 1) {
            out.println();
            out.println("  " + style.strong(table.title()) + style.faint("  " + says));
            new TextTable(table, "    ").all().forEach(out::println);
        }
    }
}
