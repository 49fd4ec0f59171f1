// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.ConductorMaterial;
import org.loomwright.model.parts.CurvePoint;
import org.loomwright.model.parts.FuseCurve;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.PartsLibrary;

class CatalogueTest {
    private final TestParts parts = new TestParts();

    private static AssemblyResult assemble(TestVehicle van, Catalogue earlier) {
        return Assembly.assemble(van.vehicle, null, null, earlier);
    }

    private Catalogue read(PartsLibrary... libraries) {
        return new CatalogueReader(List.of(libraries), Catalogue.EMPTY).catalogue();
    }

    @Test
    void twoVehiclesWithTheSameLibrariesShareOne() {
        Catalogue first = assemble(new TestVehicle(parts), Catalogue.EMPTY).catalogue();
        assertSame(first, assemble(new TestVehicle(parts), first).catalogue());
    }

    @Test
    void librariesReadTwiceThatSayTheSameShareOne() {
        Catalogue first = assemble(new TestVehicle(new TestParts()), Catalogue.EMPTY).catalogue();
        AssemblyResult second = assemble(TestVehicle.simple(), first);
        assertSame(first, second.catalogue());
        assertSame(first.cables().get(0).options(), second.plan().cables().get(0).options());
    }

    @Test
    void aLibraryThatWasChangedGivesAnother() {
        Catalogue first = assemble(new TestVehicle(parts), Catalogue.EMPTY).catalogue();
        parts.cablePart("single").getRows().get(0).setR20MaxMilliohmPerM(TestParts.number("13.0"));
        Catalogue second = assemble(new TestVehicle(parts), first).catalogue();
        assertNotSame(first, second);
        assertEquals(0.013, second.cables().get(0).option(1.5).r20MaxOhmPerM());
    }

    @Test
    void librariesThatAreUsedAreRead() {
        PartsLibrary own = PartsFactory.eINSTANCE.createPartsLibrary();
        own.setName("own");
        own.getUses().add(parts.library);
        parts.library.getUses().add(own);
        assertEquals(List.of("single", "twin"), read(own).cables().stream().map(Catalogue.CableType::name).toList());
    }

    @Test
    void aNameInTwoLibrariesIsToldWithItsLibrary() {
        PartsLibrary own = PartsFactory.eINSTANCE.createPartsLibrary();
        own.setName("own");
        CablePart part = PartsFactory.eINSTANCE.createCablePart();
        part.setName("single");
        own.getCables().add(part);
        assertEquals(List.of("own/single", "test/single", "twin"),
                read(own, parts.library).cables().stream().map(Catalogue.CableType::name).toList());
    }

    @Test
    void aStatedNominalResistanceGoesBeforeTheComputedOne() {
        parts.cablePart("single").getRows().get(0).setR20NominalMilliohmPerM(TestParts.number("12.1"));
        parts.cablePart("twin").setConductor(ConductorMaterial.ALUMINIUM);
        Catalogue catalogue = read(parts.library);
        assertEquals(0.0121, catalogue.cables().get(0).option(1.5).r20NominalOhmPerM());
        // IEC 60028: 0.017241 ohm mm2/m for annealed copper
        assertEquals(0.017241 / 2.5, catalogue.cables().get(0).option(2.5).r20NominalOhmPerM());
        // IEC 60889: 0.028264 ohm mm2/m for hard-drawn aluminium
        assertEquals(0.028264 / 2.5, catalogue.cables().get(1).option(2.5).r20NominalOhmPerM());
    }

    @Test
    void curvesComeRisingAndWithTheirProtectors() {
        FuseCurve curve = PartsFactory.eINSTANCE.createFuseCurve();
        curve.setName("blade");
        for (String[] gate : new String[][] {{"6", "0.1"}, {"1.35", "600"}, {"2", "5"}}) {
            CurvePoint point = PartsFactory.eINSTANCE.createCurvePoint();
            point.setTimesRated(TestParts.number(gate[0]));
            point.setSeconds(TestParts.number(gate[1]));
            curve.getSlowest().add(point);
        }
        parts.protectorPart("f10").setCurve(curve);
        Plan.FuseCurve read = read(parts.library).protectors().get(0).curve();
        assertEquals(List.of(1.35, 2.0, 6.0), read.slowestTimes());
        assertEquals(List.of(600.0, 5.0, 0.1), read.slowestSeconds());
    }

    @Test
    void protectorsOfOneFormAreOfferedByRating() {
        parts.protector("slow-10", "10");
        parts.protector("other", "7.5").setForm("strip");
        Catalogue.ProtectorType f10 = read(parts.library).protectors().get(0);
        assertEquals(List.of("f5", "f10", "slow-10", "f20"), f10.alike().stream().map(Plan.ProtectorOption::part).toList());
    }
}
