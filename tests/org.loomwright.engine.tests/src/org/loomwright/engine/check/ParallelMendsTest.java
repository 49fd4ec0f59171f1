// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.engine.fixture.PlanFixture;
import org.loomwright.engine.result.Finding;
import org.loomwright.engine.result.Mend;

/** A second cable beside the first: where it is offered, what it promises, and that the rules then hold. */
class ParallelMendsTest {
    /** A load of 12 V over a cable there and a cable back, each of a section, mm2, and a length, m. */
    private static PlanFixture loop(double amps, double sectionMm2, double thereM, double backM) {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100)
                .load("E1", "current", amps, 12).set("E1#load", "critical", true)
                .cable("W1", sectionMm2, thereM, "G1.30", "E1.L+").cable("W2", sectionMm2, backM, "E1.L-", "G1.31")
                .state("on", c -> c.on("E1").ambient(20));
    }

    private static PlanFixture doubled(PlanFixture fixture, List<Mend.Change> changes, double sectionMm2, double lengthM) {
        for (Mend.Change change : changes) {
            String first = ((Mend.AddParallel) change).cable();
            fixture.cable(first + "b", sectionMm2, lengthM, first.equals("W1") ? "G1.30" : "E1.L-",
                    first.equals("W1") ? "E1.L+" : "G1.31");
            fixture.set(first + "@1", "parallelGroup", first).set(first + "b@1", "parallelGroup", first);
        }
        return fixture;
    }

    private static List<Mend> doubling(Rule rule, PlanFixture fixture) {
        List<Finding> findings = CheckFixture.findings(rule, fixture);
        assertTrue(!findings.isEmpty());
        return findings.get(0).mends().stream().filter(mend -> mend.changes().stream()
                .anyMatch(Mend.AddParallel.class::isInstance)).toList();
    }

    @Test
    void oneMoreCableIsOfferedBesideAThickerOneAndKeepsTheDrop() {
        PlanFixture fixture = loop(10, 6, 12, 3);
        List<Finding> findings = CheckFixture.findings(new DropClassRule(), fixture);
        assertTrue(findings.get(0).mends().get(0).changes().get(0) instanceof Mend.UseSection);
        Mend mend = doubling(new DropClassRule(), fixture).get(0);
        assertEquals(List.of(new Mend.AddParallel("W1")), mend.changes());
        assertTrue(mend.text().startsWith("Lay another 6 mm2 cable beside -W1: the drop becomes 0."), mend.text());
        PlanFixture mended = doubled(loop(10, 6, 12, 3), mend.changes(), 6, 12);
        assertEquals(List.of(), CheckFixture.findings(new DropClassRule(), mended));
        assertEquals(List.of(), CheckFixture.findings(new ParallelShareRule(), mended));
    }

    @Test
    void whereOneIsNotEnoughASecondPairIsOffered() {
        Mend mend = doubling(new DropClassRule(), loop(10, 4, 6, 6)).get(0);
        assertEquals(List.of(new Mend.AddParallel("W1"), new Mend.AddParallel("W2")), mend.changes());
        PlanFixture mended = doubled(loop(10, 4, 6, 6), mend.changes(), 4, 6);
        assertEquals(List.of(), CheckFixture.findings(new DropClassRule(), mended));
        assertEquals(List.of(), CheckFixture.findings(new ParallelShareRule(), mended));
    }

    @Test
    void whereNeitherIsEnoughNothingIsOffered() {
        assertEquals(List.of(), doubling(new DropClassRule(), loop(10, 4, 14, 14)));
    }

    @Test
    void thinAndExistingCablesAreNotDoubled() {
        assertEquals(List.of(), doubling(new DropClassRule(), loop(2, 1, 12, 1)));
        assertEquals(1, doubling(new DropClassRule(), loop(2, 1, 12, 1).limit("parallel-share.proposed-from", 1)).size());
        assertEquals(List.of(), doubling(new DropClassRule(), loop(10, 6, 12, 3).set("W1", "existing", true)
                .set("W2", "existing", true)));
    }

    @Test
    void aFullStudOrATabTakesNoFurtherCable() {
        assertEquals(List.of(), doubling(new DropClassRule(), loop(10, 6, 12, 3).set("G1.30", "lugsMax", 1)));
        assertEquals(List.of(), doubling(new DropClassRule(), loop(10, 6, 12, 3).set("E1.L+", "form", "tab")));
    }

    @Test
    void aPracticeWithoutParallelConductorsOffersNoneAndRefusesThem() {
        PlanFixture fixture = loop(10, 6, 12, 3).choice("parallel-share.use", "forbidden");
        assertEquals(List.of(), doubling(new DropClassRule(), fixture));
        PlanFixture mended = doubled(loop(10, 6, 12, 3).choice("parallel-share.use", "forbidden"),
                List.of(new Mend.AddParallel("W1")), 6, 12);
        List<Finding> found = CheckFixture.findings(new ParallelShareRule(), mended);
        assertEquals(1, found.size());
        assertTrue(found.get(0).title().contains("one of 2 cores that share a current, which the practice does not allow"),
                found.get(0).title());
    }

    @Test
    void togetherTheyBearTheDeviceBeforeThem() {
        // the test table rates 10 mm2 for 70 A at 40 degrees Celsius
        PlanFixture fixture = fused();
        Mend mend = doubling(new DeviceRatingRule(), fixture).get(0);
        assertEquals(List.of(new Mend.AddParallel("W2")), mend.changes());
        PlanFixture mended = fused().cable("W2b", 10, 2, "F1.1", "E1.L+").set("W2@1", "parallelGroup", "W2")
                .set("W2b@1", "parallelGroup", "W2");
        assertEquals(List.of(), CheckFixture.findings(new DeviceRatingRule(), mended));
        assertEquals(List.of(), CheckFixture.findings(new ParallelShareRule(), mended));
    }

    private static PlanFixture fused() {
        return new PlanFixture().domain("12V", 12, "G1.30").battery("G1", 12, 0.004, 0.012, 100).box("F1", 1).fuse("F1", "1", 100)
                .load("E1", "current", 60, 12).cable("W1", 50, 0.1, "G1.30", "F1.30").cable("W2", 10, 2, "F1.1", "E1.L+")
                .cable("W3", 50, 1, "E1.L-", "G1.31").state("on", c -> c.on("E1").ambient(40));
    }

    @Test
    void aConductorThatWouldBeTooSmallAloneIsNotDoubled() {
        // with one of two lost the other would carry 90 A, rated for 70 A
        assertEquals(List.of(), doubling(new DeviceRatingRule(), fused().set("E1#load", "amps", 90.0)));
    }

    @Test
    void aThickerCableIsProposedForAllThatShareTheCurrent() {
        PlanFixture fixture = doubled(loop(10, 4, 20, 0.5), List.of(new Mend.AddParallel("W1")), 4, 20);
        Finding finding = CheckFixture.findings(new DropClassRule(), fixture).get(0);
        Mend.UseSection first = (Mend.UseSection) finding.mends().get(0).changes().get(0);
        assertEquals(List.of(new Mend.UseSection("W1", first.sectionMm2()), new Mend.UseSection("W1b", first.sectionMm2())),
                finding.mends().get(0).changes());
    }
}
