// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.List;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Derivation;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Quantity;

/**
 * What sizing came to.
 *
 * @param objective  what was to be least
 * @param cables     cables whose section was open, in the plan's order
 * @param protectors protectors whose rating was open, in the plan's order
 * @param before     totals of what was open as it stood; NaN in its figures where sections were missing
 * @param after      totals of what was open as chosen
 * @param cost       figure of the objective
 * @param bound      no design of the design problem has a smaller figure
 * @param gap        (cost - bound) / cost; 0 means proven
 * @param rounds     times that a choice was put to the check
 * @param alone      totals were each cable sized on its own; null when that is not possible
 * @param troubles   what cannot be met with what the library offers
 * @param sensitivity what single limits cost, the most expensive first; empty when not asked for
 * @param plan       the plan as sized
 */
public record SizingResult(SizingObjective objective, List<SizedCable> cables, List<SizedProtector> protectors, Totals before,
        Totals after, double cost, double bound, double gap, int rounds, Totals alone, List<Finding> troubles,
        List<LimitCost> sensitivity, Plan plan) {
    public SizingResult {
        cables = List.copyOf(cables);
        protectors = List.copyOf(protectors);
        troubles = List.copyOf(troubles);
        sensitivity = List.copyOf(sensitivity);
    }

    /** The same with other troubles. */
    SizingResult withTroubles(List<Finding> all) {
        return new SizingResult(objective, cables, protectors, before, after, cost, bound, gap, rounds, alone, all, sensitivity,
                plan);
    }

    /** The same with other words about its cables. */
    SizingResult withCables(List<SizedCable> all) {
        return new SizingResult(objective, all, protectors, before, after, cost, bound, gap, rounds, alone, troubles, sensitivity,
                plan);
    }

    /**
     * A cable that was sized.
     *
     * @param id          id of the cable
     * @param part        its part
     * @param lengthMm    length, mm
     * @param currentA    largest current of its cores in any case, A
     * @param currentCase case it belongs to, null when it never carries a current
     * @param beforeMm2   section before, mm2; NaN when there was none
     * @param afterMm2    section chosen, mm2
     * @param dropV       largest drop over its cores in any case, at the currents of nominal voltage, V
     * @param hotC        highest temperature of its cores, degrees Celsius; NaN when it is not known
     * @param limiting    what stands against the next smaller section; null for the smallest
     * @param why         the same in words
     * @param protector   id of the way or element that protects it, null when there is none
     * @param derivations how the figures came about
     */
    public record SizedCable(String id, String part, double lengthMm, double currentA, String currentCase, double beforeMm2,
            double afterMm2, double dropV, double hotC, Constraint limiting, String why, String protector,
            List<Derivation> derivations) {
        public SizedCable {
            derivations = List.copyOf(derivations);
        }

        /** Whether the section is another than before. */
        public boolean changed() {
            return beforeMm2 != afterMm2;
        }
    }

    /**
     * A protector that was sized.
     *
     * @param way         id of the way
     * @param beforePart  part before, null when nothing was fitted
     * @param beforeA     rated current before, A; NaN when nothing was fitted
     * @param afterPart   part chosen
     * @param afterA      rated current chosen, A
     * @param currentA    largest current in any case, A
     * @param limiting    what stands against the next smaller rating; null for the smallest
     * @param why         the same in words
     * @param derivations how the figures came about
     */
    public record SizedProtector(String way, String beforePart, double beforeA, String afterPart, double afterA,
            double currentA, Constraint limiting, String why, List<Derivation> derivations) {
        public SizedProtector {
            derivations = List.copyOf(derivations);
        }

        /** Whether another part is to be fitted. */
        public boolean changed() {
            return !java.util.Objects.equals(beforePart, afterPart);
        }
    }

    /**
     * Totals of what was open.
     *
     * @param copperKg copper in the cables, kg
     * @param money    price of cables and protectors in the library's prices; NaN when some part has none
     * @param sections number of different sections
     */
    public record Totals(double copperKg, double money, int sections) {
    }

    /**
     * What one load's limits cost.
     *
     * @param element  the load
     * @param limit    the limit loosened
     * @param wholeKg  copper that would be saved without the limit at all, kg
     * @param pointKg  copper that one per cent of nominal voltage more would save, kg
     * @param pointMoney money that it would save
     */
    public record LimitCost(String element, Quantity limit, double wholeKg, double pointKg, double pointMoney) {
    }
}
