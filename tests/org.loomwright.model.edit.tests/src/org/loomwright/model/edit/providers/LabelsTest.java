// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.provider.IEditingDomainItemProvider;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.files.ReadFile;
import org.loomwright.model.files.VehicleFiles;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.parts.Stock;
import org.loomwright.model.practice.Practice;
import org.loomwright.model.practice.PracticePackage;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;

/** Labels as people read them. */
class LabelsTest {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<%1$s:%2$s xmi:version=\"2.0\""
            + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:%1$s=\"http://loomwright.org/%1$s/1\" format=\"1.0\" ";
    private static final String PARTS = HEAD.formatted("parts", "PartsLibrary") + """
            name="base" label="Basic parts">
              <cables name="twin-pvc" label="Twin, sheathed" cores="2">
                <rows sectionMm2="2.5" outerDiameterMm="7.9"/>
                <rows sectionMm2="0.50"/>
                <rows sectionMm2="2.081" size="AWG 14"/>
              </cables>
              <protectors name="blade-15" kind="fuse" form="blade" ratingA="15" ratedV="32"/>
              <protectors name="strip-60" label="Strip 60 A" kind="fuse" form="strip" ratingA="60"/>
              <devices name="lfp-200" label="LFP battery 200 Ah" kind="battery">
                <terminals name="30"/>
                <terminals name="31"/>
                <cells name="G" a="30" b="31" capacityAh="200"/>
              </devices>
              <devices name="lamp" label="Work light" kind="lamp">
                <terminals name="L+"/>
                <terminals name="L-"/>
                <demands name="E" a="L+" b="L-" law="power" watts="48"/>
              </devices>
              <devices name="box" label="Fuse box" kind="box">
                <terminals name="30"/>
                <terminals name="3"/>
                <terminals name="4"/>
                <ways name="3" from="30" out="3"/>
                <ways name="4" from="30" out="4"/>
              </devices>
              <ducts name="conduit" innerDiameterMm="23"/>
              <ducts name="channel" label="Channel" innerWidthMm="56" innerHeightMm="36"/>
              <passages name="gland" clampMinMm="5" clampMaxMm="10"/>
              <ends name="lug" label="Cable lug" sectionMinMm2="25" sectionMaxMm2="35" studMm="8"/>
              <straps name="strap-16" label="Braided strap" sectionMm2="16" studMm="8"/>
              <consumables name="tie" label="Cable tie" unit="piece" per="cable-metre" quantity="3"/>
              <consumables name="tape" unit="roll"/>
            </parts:PartsLibrary>
            """;
    private static final String STOCK = HEAD.formatted("parts", "Stock") + """
            name="garage" label="What lies there">
              <cables cable="base.parts#twin-pvc" sectionMm2="2.5" colour="RD BK" metres="42"/>
              <pieces protector="base.parts#blade-15" quantity="20"/>
              <pieces duct="base.parts#conduit" quantity="4.5"/>
              <pieces consumable="base.parts#tape" quantity="2"/>
            </parts:Stock>
            """;
    private static final String PRACTICE = HEAD.formatted("practice", "Practice") + """
            name="team">
              <limits name="length.tail" label="Tail" value="150" unit="mm"/>
              <limits name="drop.critical" value="0.03" unit="1"/>
              <choices name="return" value="forbidden"/>
              <ruleSettings rule="section-min" enabled="false" reason="sensor leads"/>
              <ruleSettings rule="way-limit" severity="warning"/>
            </practice:Practice>
            """;
    private static final String VEHICLE = HEAD.formatted("vehicle", "Vehicle") + """
            name="wren" label="Wren, trailer" libraries="base.parts#/" adopted="near">
              <domains name="house" nominalV="12" source="G10.30"/>
              <zones name="roof" label="Roof" ambientMinC="-30" ambientMaxC="65" wetness="IP54"/>
              <places name="p" xMm="2700" yMm="-300" zMm="1050" zone="roof"/>
              <places name="q"/>
              <bodies name="frame" label="Frame" material="steel" milliohm="0.1"/>
              <bodies name="shell"/>
              <runs name="R1" from="p" to="q" lengthMm="800"/>
              <runs name="R2" from="p" to="q"/>
              <ducts name="D1" part="conduit" runs="R1 R2" existing="true"/>
              <passages name="P1" run="R1" atMm="40" panel="back wall" part="gland"/>
              <bodyLinks name="seam" a="frame" b="shell" milliohm="0.2"/>
              <earthPoints name="XE1" label="Stud" body="frame" studMm="8"/>
              <earthPoints name="XE2" body="shell"/>
              <bonds name="WE1" a="XE1" b="XE2" part="strap-16" lengthMm="350" condition="worn"/>
              <bonds name="WE2" a="XE1" b="XE2" condition="good"/>
              <devices name="G10" part="lfp-200" place="p"/>
              <devices name="E1" label="Light, rear" part="lamp" place="q" existing="true"/>
              <devices name="E2" label="Light, front" part="lamp" place="q">
                <settings element="E" quantity="watts" value="60"/>
              </devices>
              <devices name="fridge" place="q"/>
              <cables name="W12" part="twin-pvc" sectionMm2="2.5" lengthMm="4900">
                <cores colour="RD" a="G10.30" b="E1.L+"/>
                <cores colour="BK" a="XE1" sectionMm2="1.5"/>
                <cores spare="true"/>
              </cables>
              <cables name="W13" label="Feed" part="twin-pvc" existing="true"/>
              <cases name="evening" label="At the camp" kind="parked" ignition="off">
                <ambients zone="roof" ambientC="60"/>
                <batteries device="G10" charge="0.8" temperatureC="-10" age="0.5"/>
                <positions device="E1" contact="S" closed="true"/>
                <demands device="E1" factor="0.5" onS="60" periodS="600"/>
                <demands device="E2" factor="0"/>
              </cases>
              <cases name="crank" kind="cranking" ignition="start" engine="true" engineRpm="150"/>
              <days name="day">
                <steps case="evening" hours="6.5" sun="0.2"/>
              </days>
              <arrangements name="near" label="One box" status="asBuilt">
                <devices name="X1" part="box" place="p">
                  <ways name="3" protector="blade-15"/>
                  <ways name="4" spare="true"/>
                  <ways name="5"/>
                </devices>
                <placements device="E1" place="p"/>
                <returns device="E1" by="structure"/>
              </arrangements>
              <readingSets name="first" when="2031-04-02" arrangement="near">
                <readings a="G10.30" b="E1.L+" kind="voltage" value="0.12" unit="V"/>
              </readingSets>
              <fitRecords name="f1" when="2031-04-03" what="Strap renewed"/>
              <waivers rule="section-min" element="W12" reason="sensor lead"/>
            </vehicle:Vehicle>
            """;
    @TempDir
    Path folder;
    private final LoomwrightAdapterFactory factory = new LoomwrightAdapterFactory();
    private Vehicle vehicle;

    @BeforeEach
    void read() throws Exception {
        Files.writeString(folder.resolve("base.parts"), PARTS);
        Files.writeString(folder.resolve("garage.stock"), STOCK);
        Files.writeString(folder.resolve("team.practice"), PRACTICE);
        Files.writeString(folder.resolve("wren.vehicle"), VEHICLE);
        ReadFile<Vehicle> read = new VehicleFiles().openVehicle(folder.resolve("wren.vehicle"));
        assertEquals(List.of(), read.faults());
        vehicle = read.root();
    }

    @AfterEach
    void dispose() {
        factory.dispose();
    }

    private String label(EObject object) {
        return ((IItemLabelProvider) factory.adapt(object, IItemLabelProvider.class)).getText(object);
    }

    private List<String> labels(EObject root, EClass type) {
        List<String> labels = new ArrayList<>();
        root.eAllContents().forEachRemaining(object -> {
            if (object.eClass() == type) {
                labels.add(label(object));
            }
        });
        return labels;
    }

    private List<String> labels(EClass type) {
        return labels(vehicle, type);
    }

    @Test
    void vehicleAndArrangement() {
        assertEquals("wren  Wren, trailer", label(vehicle));
        assertEquals(List.of("near  One box, as built"), labels(VehiclePackage.Literals.ARRANGEMENT));
        assertEquals(List.of("house  12 V, -G10:30"), labels(VehiclePackage.Literals.DOMAIN));
    }

    @Test
    void structure() {
        assertEquals(List.of("roof  Roof, -30 to 65 degC, IP54"), labels(VehiclePackage.Literals.ZONE));
        assertEquals(List.of("p  x 2700, y -300, z 1050 mm, roof", "q"), labels(VehiclePackage.Literals.PLACE));
        assertEquals(List.of("frame  Frame, steel, 0.1 mohm", "shell"), labels(VehiclePackage.Literals.BODY));
        assertEquals(List.of("R1  p / q, 0.80 m", "R2  p / q"), labels(VehiclePackage.Literals.RUN));
        assertEquals(List.of("D1  conduit, R1 R2, existing"), labels(VehiclePackage.Literals.DUCT));
        assertEquals(List.of("P1  gland, back wall, R1 at 40 mm"), labels(VehiclePackage.Literals.PASSAGE));
        assertEquals(List.of("seam  frame / shell, 0.2 mohm"), labels(VehiclePackage.Literals.BODY_LINK));
        assertEquals(List.of("-XE1  Stud, frame, M8", "-XE2  shell"), labels(VehiclePackage.Literals.EARTH_POINT));
        assertEquals(List.of("-WE1  -XE1 / -XE2, strap-16, 350 mm, worn", "-WE2  -XE1 / -XE2, bolted joint"),
                labels(VehiclePackage.Literals.BOND));
    }

    @Test
    void devicesByTheirOwnLabelElseTheirParts() {
        assertEquals(List.of("-G10  LFP battery 200 Ah", "-E1  Light, rear, 48 W, existing", "-E2  Light, front, 60 W", "fridge",
                "-X1  Fuse box, 2 ways"), labels(VehiclePackage.Literals.DEVICE));
        assertEquals(List.of(":3  15 A, blade-15", ":4  spare", ":5  empty"), labels(VehiclePackage.Literals.WAY));
        assertTrue(labels(VehiclePackage.Literals.TERMINAL).contains("-G10:30"));
        assertEquals(List.of("E:  watts 60"), labels(VehiclePackage.Literals.SETTING));
        assertEquals(List.of("-E1  at p"), labels(VehiclePackage.Literals.PLACEMENT));
        assertEquals(List.of("-E1  returns through the structure"), labels(VehiclePackage.Literals.RETURN));
    }

    @Test
    void cablesAndCores() {
        assertEquals(List.of("-W12  2.5 mm2, 4.90 m twin-pvc", "-W13  Feed, to be sized twin-pvc, existing"),
                labels(VehiclePackage.Literals.CABLE));
        assertEquals(List.of("RD  -G10:30 / -E1:L+", "BK  -XE1 / ..., 1.5 mm2", "spare"), labels(VehiclePackage.Literals.CORE));
    }

    @Test
    void casesAndDays() {
        assertEquals(List.of("evening  At the camp, parked, ignition off", "crank  cranking, ignition start, 150 1/min"),
                labels(VehiclePackage.Literals.CASE));
        assertEquals(List.of("roof  60 degC"), labels(VehiclePackage.Literals.ZONE_AMBIENT));
        assertEquals(List.of("-G10  charge 0.8, -10 degC, age 0.5"), labels(VehiclePackage.Literals.BATTERY_STATE));
        assertEquals(List.of("-E1  S, closed"), labels(VehiclePackage.Literals.SWITCH_POSITION));
        assertEquals(List.of("-E1  x 0.5, 60 s of 600 s", "-E2  off"), labels(VehiclePackage.Literals.DEMAND_STATE));
        assertEquals(List.of("day  1 step"), labels(VehiclePackage.Literals.DAY));
        assertEquals(List.of("6.5 h  evening, sun 0.2"), labels(VehiclePackage.Literals.DAY_STEP));
    }

    @Test
    void records() {
        assertEquals(List.of("first  2031-04-02, near"), labels(VehiclePackage.Literals.READING_SET));
        assertEquals(List.of("-G10:30 / -E1:L+  0.12 V, voltage"), labels(VehiclePackage.Literals.READING));
        assertEquals(List.of("2031-04-03  Strap renewed"), labels(VehiclePackage.Literals.FIT_RECORD));
        assertEquals(List.of("section-min  at W12, sensor lead"), labels(VehiclePackage.Literals.WAIVER));
    }

    @Test
    void parts() {
        PartsLibrary library = vehicle.getLibraries().get(0);
        assertEquals("base  Basic parts", label(library));
        assertEquals(List.of("twin-pvc  Twin, sheathed, 0.50 to 2.5 mm2"), labels(library, PartsPackage.Literals.CABLE_PART));
        assertEquals(List.of("2.5 mm2  outer diameter 7.9 mm", "0.50 mm2", "2.081 mm2  AWG 14"),
                labels(library, PartsPackage.Literals.CABLE_ROW));
        assertEquals(List.of("blade-15  15 A, 32 V", "strip-60  Strip 60 A"),
                labels(library, PartsPackage.Literals.PROTECTOR_PART));
        assertEquals(List.of("lfp-200  LFP battery 200 Ah", "lamp  Work light, 48 W", "box  Fuse box, 2 ways"),
                labels(library, PartsPackage.Literals.DEVICE_PART));
        assertEquals(List.of("conduit  inside 23 mm", "channel  Channel, inside 56 x 36 mm"),
                labels(library, PartsPackage.Literals.DUCT_PART));
        assertEquals(List.of("gland  for 5 to 10 mm"), labels(library, PartsPackage.Literals.PASSAGE_PART));
        assertEquals(List.of("lug  Cable lug, M8, 25 to 35 mm2"), labels(library, PartsPackage.Literals.END_PART));
        assertEquals(List.of("strap-16  Braided strap, 16 mm2, M8"), labels(library, PartsPackage.Literals.STRAP_PART));
        assertEquals(List.of("tie  Cable tie, 3 piece per cable-metre", "tape"),
                labels(library, PartsPackage.Literals.CONSUMABLE_PART));
    }

    @Test
    void stockAndPractice() {
        Stock stock = new VehicleFiles().openStock(folder.resolve("garage.stock")).root();
        assertEquals("garage  What lies there", label(stock));
        assertEquals(List.of("42 m  twin-pvc 2.5 mm2 RD BK"), labels(stock, PartsPackage.Literals.CABLE_STOCK));
        assertEquals(List.of("20 pcs  blade-15", "4.5 m  conduit", "2 roll  tape"),
                labels(stock, PartsPackage.Literals.PIECE_STOCK));
        Practice practice = new VehicleFiles().openPractice(folder.resolve("team.practice")).root();
        assertEquals("team", label(practice));
        assertEquals(List.of("length.tail  Tail, 150 mm", "drop.critical  0.03"),
                labels(practice, PracticePackage.Literals.LIMIT));
        assertEquals(List.of("return  forbidden"), labels(practice, PracticePackage.Literals.CHOICE));
        assertEquals(List.of("section-min  off, sensor leads", "way-limit  warning"),
                labels(practice, PracticePackage.Literals.RULE_SETTING));
    }

    static Stream<EClass> concreteClasses() {
        return Stream.of(PartsPackage.eINSTANCE, PracticePackage.eINSTANCE, VehiclePackage.eINSTANCE)
                .map(EPackage::getEClassifiers).flatMap(List::stream)
                .filter(EClass.class::isInstance).map(EClass.class::cast).filter(type -> !type.isAbstract());
    }

    @ParameterizedTest
    @MethodSource("concreteClasses")
    void newObjectsHaveALabelIconPropertiesAndChildren(EClass type) {
        EObject object = EcoreUtil.create(type);
        String label = label(object);
        assertFalse(label.isBlank() || label.contains("null") || label.startsWith("_UI_"), label);
        assertNotNull(((IItemLabelProvider) factory.adapt(object, IItemLabelProvider.class)).getImage(object));
        assertNotNull(((IItemPropertySource) factory.adapt(object, IItemPropertySource.class)).getPropertyDescriptors(object));
        assertNotNull(((IEditingDomainItemProvider) factory.adapt(object, IEditingDomainItemProvider.class)).getChildren(object));
    }

    @ParameterizedTest
    @CsvSource({"W12,-W12", "XE8,-XE8", "fridge,fridge", "Q1a,-Q1a", "R-old,R-old", "WXYZ1,WXYZ1", "b1,b1"})
    void onlyDesignationsHaveTheMinus(String name, String shown) {
        vehicle.getDevices().get(0).setName(name);
        vehicle.getDevices().get(0).setLabel("x");
        assertEquals(shown + "  x, 200 Ah", label(vehicle.getDevices().get(0)));
    }
}
