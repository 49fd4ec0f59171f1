// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.sizing;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.common.util.BasicMonitor;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.sizing.SizingResult.SizedCable;

/** Loads of constant current on bare cables: no end joints, 20 degrees Celsius, sections of a test's own, a drop limit in volts. */
final class OneLoad {
    private OneLoad() {
    }

    /** Sections with a resistance of rho over section, ohm mm2/m. */
    static List<Plan.SectionOption> sections(double rho, List<Double> sectionsMm2) {
        List<Plan.SectionOption> options = new ArrayList<>();
        sectionsMm2.forEach(mm2 -> options.add(new Plan.SectionOption(mm2, rho / mm2, rho / mm2, 2, 9 * mm2, mm2)));
        return options;
    }

    /** Sections from one to another, each by a share larger than the one before. */
    static List<Double> stepped(double fromMm2, double toMm2, double step) {
        List<Double> all = new ArrayList<>();
        for (double mm2 = fromMm2; mm2 <= toMm2; mm2 *= 1 + step) {
            all.add(mm2);
        }
        return all;
    }

    /** A cable without joints and rating that offers these sections. */
    static PlanFixture bare(PlanFixture fixture, String cable, List<Plan.SectionOption> options) {
        Plan.SectionOption last = options.get(options.size() - 1);
        return fixture.set(cable, "ampacity", null).set(cable, "options", options).set(cable, "sectionMm2", last.sectionMm2())
                .set(cable + "@1", "sectionMm2", last.sectionMm2()).set(cable + "@1", "r20MaxOhmPerM", last.r20MaxOhmPerM())
                .set(cable + "@1", "jointsOhm", 1e-9);
    }

    /** A wire of next to no resistance that stays as it is. */
    static PlanFixture ideal(PlanFixture fixture, String cable) {
        return fixture.set(cable, "ampacity", null).set(cable, "existing", true).set(cable + "@1", "jointsOhm", 1e-9)
                .set(cable + "@1", "r20MaxOhmPerM", 1e-9);
    }

    /** The section for a current over so many metres of one conductor, there and back together; NaN when none keeps the limit. */
    static double sectionMm2(double amps, double lengthM, double limitV, List<Plan.SectionOption> options) {
        PlanFixture fixture = new PlanFixture().limit("drop-class.other", limitV / 12).limit("section-min.single", 0.01)
                .domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).load("E1", "current", amps, 12)
                .cable("W1", 1, lengthM, "G1.30", "E1.L+").cable("W2", 1, 0.001, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(20));
        SizingResult result = sized(ideal(bare(fixture, "W1", options), "W2").build());
        return result.troubles().isEmpty() ? section(result, "W1") : Double.NaN;
    }

    static SizingResult sized(Plan plan) {
        return SizingStudy.run(plan, List.of(), new SizingOptions(SizingObjective.COPPER, true, List.of(), false),
                new BasicMonitor());
    }

    static double section(SizingResult result, String cable) {
        return result.cables().stream().filter(each -> each.id().equals(cable)).mapToDouble(SizedCable::afterMm2).findFirst()
                .orElseThrow();
    }
}
