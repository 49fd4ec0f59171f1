// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.earth;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.NetworkIndex;
import org.loomwright.engine.earth.LossCase.BodyShift;
import org.loomwright.engine.earth.LossCase.Detour;
import org.loomwright.engine.earth.LossCase.HotPart;
import org.loomwright.engine.flow.FlowOptions;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.result.Quantity;

/** Tells the loss of straps in sentences: what a person would notice, and where the current goes. */
final class LossWords {
    private static final double TOLD_V = 1e-3;

    private final Plan plan;
    private final EarthNames names;

    LossWords(Plan plan, EarthNames names) {
        this.plan = plan;
        this.names = names;
    }

    /** What a person would notice. */
    String symptom(LossRank rank, List<Integer> bonds, LossCase worst, List<LossRow.Uncleared> uncleared) {
        return switch (rank) {
            case BURNS, OVERLOADS -> when(worst) + hot(worst.hot().get(0)) + ".";
            case DOES_NOT_CLEAR -> "Nothing, until " + names.carrier(NetworkIndex.Kind.CONDUCTOR, uncleared.get(0).conductor())
                    + " touches " + names.body(uncleared.get(0).body()) + ": then " + shownFuse(uncleared.get(0).protector())
                    + " does not open and what the current passes gets hot.";
            case STRANDS -> when(worst) + stops(worst) + "; what flows of " + amps(worst.carriedA())
                    + " takes bearings, hinges, hoses and control cables, which get hot or are eaten away.";
            case STOPS -> when(worst) + stops(worst) + bodies(worst) + ".";
            case BEARS -> "Nothing is noticed: " + takers(worst) + ".";
            case IDLE -> bonds.size() == 1 ? "Nothing is noticed: it carries nothing in any case."
                    : "Nothing is noticed: they carry nothing in any case.";
        };
    }

    /** {@code While cranking, } or {@code In case road, }. */
    String when(LossCase at) {
        return at.cranking() ? "While cranking, " : "In case " + at.caseName() + ", ";
    }

    /** Where the current goes, one sentence. */
    String way(LossCase at) {
        if (at.status() != OperatingPoint.Status.SOLVED && at.strandedA() == 0) {
            return "Without it the case has no operating point.";
        } else if (at.strandedA() > 0) {
            return "No declared way is left between its ends for " + amps(at.strandedA()) + ".";
        } else if (at.path().isEmpty()) {
            return "No other way takes up a hundredth of " + amps(at.carriedA()) + "; the current stops.";
        }
        List<String> steps = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Detour step : at.path()) {
            least = StrictMath.min(least, StrictMath.max(0, step.afterA()));
            if (step.kind() != NetworkIndex.Kind.EARTH_CONTACT && step.kind() != NetworkIndex.Kind.CASE_CONTACT) {
                steps.add(names.carrier(step.kind(), step.index()));
            }
        }
        return amps(least) + " now take the way by " + String.join(", ", steps.stream().distinct().toList()) + ".";
    }

    /** Bodies that move away from the minus, a sentence each. */
    List<String> moved(LossCase at) {
        List<String> moved = new ArrayList<>();
        for (BodyShift shift : at.bodies().stream().filter(BodyShift::rises).toList()) {
            String body = "Body " + names.body(shift.body());
            moved.add(Double.isNaN(shift.afterV()) ? body + " is left without potential."
                    : body + " goes from " + volts(shift.beforeV()) + " to " + volts(shift.afterV())
                            + " against the battery's minus.");
        }
        return moved;
    }

    /** {@code the return -W7 of -B3 carries 38 A and is rated for 11 A: its insulation smells and softens}. */
    String hot(HotPart part) {
        Detour at = part.detour();
        String carries = names.carrier(at.kind(), at.index()) + " carries " + amps(at.afterA()) + " and is rated for "
                + amps(at.ratedA());
        if (at.kind() == NetworkIndex.Kind.CONDUCTOR) {
            boolean melts = part.afterC() >= FlowOptions.COPPER_MELTS_C;
            return carries + ": " + (melts ? "it smokes and burns through"
                    : part.burns() ? "its insulation melts, it smokes or goes open" : "its insulation smells and hardens");
        } else if (at.kind() == NetworkIndex.Kind.ELEMENT && plan.elements().get(at.index()) instanceof Plan.Protector) {
            return carries + ": it opens, and what returns through it is dead";
        }
        return carries + ": it gets hot at its joints";
    }

    private String stops(LossCase at) {
        List<String> parts = new ArrayList<>();
        List<String> loads = new ArrayList<>();
        for (LossCase.LostLoad lost : at.loads()) {
            if ("starter".equals(plan.devices().get(plan.elements().get(lost.demand()).device()).kind())) {
                parts.add("the starter " + names.element(lost.demand()) + " does not turn");
            } else {
                loads.add(names.element(lost.demand()));
            }
        }
        if (!loads.isEmpty()) {
            parts.add(names.list(loads) + (loads.stream().distinct().count() == 1 ? " is" : " are") + " dead, weak or erratic");
        }
        if (!at.sources().isEmpty()) {
            parts.add(names.list(at.sources().stream().map(names::element).toList()) + " no longer charges");
        }
        if (at.status() == OperatingPoint.Status.CYCLING) {
            parts.add("relays chatter");
        } else if (at.status() == OperatingPoint.Status.COLLAPSED && loads.isEmpty()) {
            parts.add("what is on asks for more than can reach it");
        }
        return parts.isEmpty() ? "nothing stops" : String.join("; ", parts);
    }

    /** The body that stands highest above the minus by the loss. */
    private String bodies(LossCase at) {
        for (BodyShift shift : at.bodies()) {
            if (shift.rises() && !Double.isNaN(shift.afterV())) {
                return "; body " + names.body(shift.body()) + " stands at " + volts(shift.afterV())
                        + " against the battery's minus";
            }
        }
        return "";
    }

    private String takers(LossCase at) {
        List<String> takers = new ArrayList<>();
        for (Detour step : at.path()) {
            if (step.kind() == NetworkIndex.Kind.BOND || step.kind() == NetworkIndex.Kind.SEAM
                    || step.kind() == NetworkIndex.Kind.CONDUCTOR) {
                takers.add(names.carrier(step.kind(), step.index()));
            }
        }
        return takers.isEmpty() ? "all that is on still works" : names.list(takers) + " can carry it";
    }

    private String shownFuse(int protector) {
        return names.carrier(NetworkIndex.Kind.ELEMENT, protector);
    }

    static String amps(double amps) {
        return Quantity.of(amps, "A").toString();
    }

    /** Volts; less than a millivolt is what solving leaves, and nothing anybody could measure. */
    static String volts(double volts) {
        return Quantity.of(StrictMath.abs(volts) < TOLD_V ? 0 : volts, "V").toString();
    }
}
