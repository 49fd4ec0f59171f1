// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.check.DropBreakdown.Part;
import org.loomwright.engine.check.DropBreakdown.Share;
import org.loomwright.engine.heat.ConductorRating;
import org.loomwright.engine.heat.ConductorTemperature;
import org.loomwright.engine.heat.DutyCycle;
import org.loomwright.engine.heat.Ratings;
import org.loomwright.engine.result.Figures;
import org.loomwright.engine.result.Mend;
import org.loomwright.engine.result.Quantity;

/**
 * Finds sections on offer that mend a finding. A drop is computed anew with the conductor's share scaled by resistance at the
 * same current and temperature; a rating is read from the cable's table. Existing wiring is left as it is.
 */
final class SectionMends {
    private final Plan plan;
    private final ElementNames names;

    SectionMends(Plan plan, ElementNames names) {
        this.plan = plan;
        this.names = names;
    }

    /**
     * The smallest change of sections that brings a drop to a limit: one cable where one is enough, the one with the largest
     * share first, else several together.
     *
     * @param limitV permitted drop, V
     */
    Optional<Mend> forDrop(DropBreakdown parts, double limitV) {
        return forDrop(parts, 0, limitV);
    }

    /**
     * The same for a drop that is only partly in the breakdown.
     *
     * @param restV part of the drop beside that of the breakdown, which stays, V
     */
    Optional<Mend> forDrop(DropBreakdown parts, double restV, double limitV) {
        List<String> cables = cablesByShare(parts);
        for (String cable : cables) {
            for (Plan.SectionOption option : larger(cable)) {
                double dropV = restV + dropWith(parts, Map.of(cable, option));
                if (!Beyond.above(dropV, limitV)) {
                    return Optional.of(mend(Map.of(cable, option), dropV, limitV));
                }
            }
        }
        Map<String, Plan.SectionOption> together = new LinkedHashMap<>();
        while (true) {
            String thickest = null;
            double most = 0;
            for (String cable : cables) {
                double volts = metalV(parts, cable, together.get(cable));
                if (volts > most && next(cable, together.get(cable)) != null) {
                    most = volts;
                    thickest = cable;
                }
            }
            if (thickest == null) {
                return Optional.empty();
            }
            together.put(thickest, next(thickest, together.get(thickest)));
            double dropV = restV + dropWith(parts, together);
            if (!Beyond.above(dropV, limitV)) {
                return Optional.of(mend(together, dropV, limitV));
            }
        }
    }

    /**
     * The next section on offer of a conductor's cable whose rating, in the same surroundings, reaches a current.
     *
     * @param rating  rating of the present section in the case that counts
     * @param neededA current to be carried, A
     */
    Optional<Mend> forRating(int conductor, ConductorRating rating, double neededA) {
        Plan.Cable cable = plan.cables().get(plan.conductors().get(conductor).cable());
        for (Plan.SectionOption option : larger(cable.id())) {
            double amps = Ratings.of(cable, option.sectionMm2(), rating.ambientC(), rating.counted()).correctedA();
            if (!Beyond.below(amps, neededA)) {
                return Optional.of(new Mend("Use " + mm2(option) + " for " + names.shown(cable.id()) + ": it carries "
                        + Quantity.of(amps, "A") + " in these surroundings.", changes(cable.id(), option)));
            }
        }
        return Optional.empty();
    }

    /** The next section on offer of a conductor's cable that stays within its temperature over a duty. */
    Optional<Mend> forPeak(int conductor, ConductorRating rating, DutyCycle duty, double onA, double offA) {
        Plan.Cable cable = plan.cables().get(plan.conductors().get(conductor).cable());
        for (Plan.SectionOption option : larger(cable.id())) {
            ConductorRating there = Ratings.of(cable, option.sectionMm2(), rating.ambientC(), rating.counted());
            if (!(there.atReferenceA() > 0) || !(there.maxC() > there.referenceC())) {
                continue;
            }
            double peakC = duty.peakC(new ConductorTemperature(option.r20MaxOhmPerM(), option.sectionMm2(), 0,
                    there.atReferenceA(), there.referenceC(), there.maxC(), there.ambientC()), onA, offA);
            if (!Beyond.above(peakC, there.maxC())) {
                return Optional.of(new Mend("Use " + mm2(option) + " for " + names.shown(cable.id()) + ": it stays below "
                        + Quantity.of(peakC, "degC") + ".", changes(cable.id(), option)));
            }
        }
        return Optional.empty();
    }

    /** The smallest section on offer of a cable at or above one, whatever it carries. */
    Optional<Mend> atLeast(Plan.Cable cable, double sectionMm2) {
        for (Plan.SectionOption option : larger(cable.id())) {
            if (option.sectionMm2() >= sectionMm2) {
                return Optional.of(new Mend("Use " + mm2(option) + " for " + names.shown(cable.id()) + ".",
                        changes(cable.id(), option)));
            }
        }
        return Optional.empty();
    }

    private Mend mend(Map<String, Plan.SectionOption> sections, double dropV, double limitV) {
        List<String> words = new ArrayList<>();
        List<Mend.Change> changes = new ArrayList<>();
        sections.forEach((cable, option) -> {
            words.add(mm2(option) + " for " + names.shown(cable));
            changes.addAll(changes(cable, option));
        });
        return new Mend("Use " + String.join(", ", words) + ": the drop becomes " + Quantity.of(dropV, "V") + ", permitted are "
                + Quantity.of(limitV, "V") + ".", changes);
    }

    /** A cable and those whose cores share a current with its own take the section together. */
    private List<Mend.Change> changes(String cable, Plan.SectionOption option) {
        Set<String> cables = new LinkedHashSet<>(List.of(cable));
        for (Plan.Conductor core : plan.conductors()) {
            if (core.parallelGroup() != null && plan.cables().get(core.cable()).id().equals(cable)) {
                plan.conductors().stream().filter(other -> core.parallelGroup().equals(other.parallelGroup())
                        && StrictMath.min(core.a(), core.b()) == StrictMath.min(other.a(), other.b())
                        && StrictMath.max(core.a(), core.b()) == StrictMath.max(other.a(), other.b()))
                        .forEach(other -> cables.add(plan.cables().get(other.cable()).id()));
            }
        }
        return cables.stream().<Mend.Change>map(each -> new Mend.UseSection(each, option.sectionMm2())).toList();
    }

    private static String mm2(Plan.SectionOption option) {
        return Figures.three(option.sectionMm2()) + " mm2";
    }

    private double dropWith(DropBreakdown parts, Map<String, Plan.SectionOption> sections) {
        double dropV = parts.dropV();
        for (Map.Entry<String, Plan.SectionOption> entry : sections.entrySet()) {
            dropV += metalV(parts, entry.getKey(), entry.getValue()) - metalV(parts, entry.getKey(), null);
        }
        return dropV;
    }

    /** Volts lost in the metal of a cable, with another section where one is given. */
    private double metalV(DropBreakdown parts, String cable, Plan.SectionOption option) {
        double volts = 0;
        for (Share share : parts.shares()) {
            if (share.part() == Part.CABLE && share.element().equals(cable)) {
                volts += option == null ? share.volts()
                        : share.volts() * option.r20MaxOhmPerM() / plan.conductors().get(share.index()).r20MaxOhmPerM();
            }
        }
        return volts;
    }

    private List<String> cablesByShare(DropBreakdown parts) {
        List<String> cables = new ArrayList<>();
        parts.byElement().forEach(entry -> {
            if (parts.shares().stream().anyMatch(s -> s.part() == Part.CABLE && s.element().equals(entry.getKey()))) {
                cables.add(entry.getKey());
            }
        });
        return cables;
    }

    private Plan.SectionOption next(String cable, Plan.SectionOption present) {
        for (Plan.SectionOption option : larger(cable)) {
            if (present == null || option.sectionMm2() > present.sectionMm2()) {
                return option;
            }
        }
        return null;
    }

    private List<Plan.SectionOption> larger(String cableId) {
        for (Plan.Cable cable : plan.cables()) {
            if (cable.id().equals(cableId)) {
                return cable.existing() ? List.of()
                        : cable.options().stream().filter(option -> option.sectionMm2() > cable.sectionMm2())
                                .sorted((a, b) -> Double.compare(a.sectionMm2(), b.sectionMm2())).toList();
            }
        }
        return List.of();
    }
}
