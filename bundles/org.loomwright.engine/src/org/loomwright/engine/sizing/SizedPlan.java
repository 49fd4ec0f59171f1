// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.engine.assembly.Plan;

/** A plan with other sections and protectors. */
final class SizedPlan {
    private SizedPlan() {
    }

    /** The plan with the options chosen for the open items. */
    static Plan of(Plan plan, OpenItems open, int[] choice) {
        List<Plan.Cable> cables = new ArrayList<>(plan.cables());
        List<Plan.Conductor> conductors = new ArrayList<>(plan.conductors());
        List<Plan.Element> elements = new ArrayList<>(plan.elements());
        for (int i = 0; i < open.cables().size(); i++) {
            Plan.SectionOption option = open.cable(i).options().get(choice[i]);
            for (int w : open.cable(i).cables()) {
                cables.set(w, with(cables.get(w), option));
            }
            for (int c : open.cable(i).conductors()) {
                conductors.set(c, with(conductors.get(c), option));
            }
        }
        for (OpenItems.WayItem way : open.ways()) {
            Plan.ProtectorOption option = way.options().get(choice[open.ofElement(way.element())]);
            elements.set(way.element(), with((Plan.Protector) elements.get(way.element()), option));
        }
        return with(plan, elements, cables, conductors);
    }

    /** The plan with other elements, cables and conductors. */
    static Plan with(Plan plan, List<Plan.Element> elements, List<Plan.Cable> cables, List<Plan.Conductor> conductors) {
        return new Plan(plan.vehicle(), plan.arrangement(), plan.practice(), plan.domains(), plan.zones(), plan.places(),
                plan.runs(), plan.bodies(), plan.bodyLinks(), plan.bonds(), plan.devices(), plan.terminals(), elements, cables,
                conductors, plan.cases(), plan.waivers());
    }

    private static Plan.Cable with(Plan.Cable of, Plan.SectionOption option) {
        return new Plan.Cable(of.id(), of.designation(), of.part(), of.partSource(), of.insulation(), option.sectionMm2(), true,
                of.path(), of.ducts(), of.lengthMm(), of.lengthParts(), of.zone(), of.maxC(), of.shortTimeMaxC(), of.sheathed(),
                of.cores(), option.outerDiameterMm(), of.existing(), of.ampacity(), of.grouping(), of.options());
    }

    private static Plan.Conductor with(Plan.Conductor of, Plan.SectionOption option) {
        return new Plan.Conductor(of.id(), of.cable(), of.colour(), of.a(), of.b(), option.sectionMm2(), option.r20MaxOhmPerM(),
                option.r20NominalOhmPerM(), of.jointsOhm(), of.parallelGroup(), of.endPartA(), of.endPartB(), of.lugA(),
                of.lugB());
    }

    private static Plan.Protector with(Plan.Protector of, Plan.ProtectorOption option) {
        return new Plan.Protector(of.id(), of.device(), of.a(), of.b(), of.way(), option.part(), of.kind(), of.form(),
                option.ratingA(), option.ratedV(), option.breakingA(), option.ohm() > 0 ? option.ohm() : of.ohm(), of.seatOhm(),
                of.wayMaxA(), option.curve(), true, of.options());
    }
}
