// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.math.BigDecimal;
import org.loomwright.model.parts.AmpacityPoint;
import org.loomwright.model.parts.AmpacityTable;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.CableRow;
import org.loomwright.model.parts.Cell;
import org.loomwright.model.parts.Coil;
import org.loomwright.model.parts.Contact;
import org.loomwright.model.parts.CountBasis;
import org.loomwright.model.parts.Demand;
import org.loomwright.model.parts.DeviceKind;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Driver;
import org.loomwright.model.parts.Element;
import org.loomwright.model.parts.LoadLaw;
import org.loomwright.model.parts.OcvPoint;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.parts.PartsLibrary;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.Regulated;
import org.loomwright.model.parts.RestState;
import org.loomwright.model.parts.RunsOn;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.parts.WaySpec;

/** A small library for tests; its figures are round numbers, except the two ISO 6722 resistances that say so. */
final class TestParts {
    private static final PartsFactory MAKE = PartsFactory.eINSTANCE;

    final PartsLibrary library = MAKE.createPartsLibrary();

    TestParts() {
        library.setName("test");
        AmpacityTable table = MAKE.createAmpacityTable();
        table.setName("round");
        table.setCounts(CountBasis.CIRCUITS);
        table.setReferenceC(number("30"));
        table.setMaxC(number("90"));
        for (String[] point : new String[][] {{"2.5", "30"}, {"1.5", "20"}, {"16", "100"}}) {
            AmpacityPoint at = MAKE.createAmpacityPoint();
            at.setSectionMm2(number(point[0]));
            at.setAmps(number(point[1]));
            table.getPoints().add(at);
        }
        library.getAmpacityTables().add(table);
        // ISO 6722-1 table of conductor resistances at 20 degrees Celsius: 2.5 mm2 7.60, 16 mm2 1.16 milliohm/m
        cable("single", 1, "1.5", "12.7", "2.5", "7.60", "16", "1.16").setAmpacity(table);
        cable("twin", 2, "1.5", "12.7", "2.5", "7.60");
        protector("f10", "10");
        protector("f20", "20");
        protector("f5", "5");
        StrapPart strap = MAKE.createStrapPart();
        strap.setName("strap");
        strap.setSectionMm2(number("16"));
        strap.setMilliohmPerM(number("1.2"));
        library.getStraps().add(strap);
        battery();
        alternator();
        box();
        load();
        relay();
        handSwitch("switch", DeviceKind.SWITCH, RestState.OPEN);
        handSwitch("isolator", DeviceKind.ISOLATOR, RestState.CLOSED);
        ignition();
        starter();
        DevicePart bar = device("bar", DeviceKind.BUSBAR, "N1", "N2", "N3");
        bar.getTerminals().forEach(terminal -> terminal.setBar("N"));
    }

    static BigDecimal number(String text) {
        return text == null ? null : new BigDecimal(text);
    }

    CablePart cablePart(String name) {
        return library.getCables().stream().filter(p -> p.getName().equals(name)).findFirst().orElseThrow();
    }

    ProtectorPart protectorPart(String name) {
        return library.getProtectors().stream().filter(p -> p.getName().equals(name)).findFirst().orElseThrow();
    }

    DevicePart devicePart(String name) {
        return library.getDevices().stream().filter(p -> p.getName().equals(name)).findFirst().orElseThrow();
    }

    CablePart cable(String name, int cores, String... sectionsAndMilliohm) {
        CablePart part = MAKE.createCablePart();
        part.setName(name);
        part.setCores(cores);
        part.setSheathed(cores > 1);
        part.setMaxC(number("90"));
        for (int i = 0; i < sectionsAndMilliohm.length; i += 2) {
            CableRow row = MAKE.createCableRow();
            row.setSectionMm2(number(sectionsAndMilliohm[i]));
            row.setR20MaxMilliohmPerM(number(sectionsAndMilliohm[i + 1]));
            part.getRows().add(row);
        }
        library.getCables().add(part);
        return part;
    }

    ProtectorPart protector(String name, String ratingA) {
        ProtectorPart part = MAKE.createProtectorPart();
        part.setName(name);
        part.setForm("blade");
        part.setRatingA(number(ratingA));
        library.getProtectors().add(part);
        return part;
    }

    DevicePart device(String name, DeviceKind kind, String... terminals) {
        DevicePart part = MAKE.createDevicePart();
        part.setName(name);
        part.setKind(kind);
        for (String terminal : terminals) {
            TerminalSpec spec = MAKE.createTerminalSpec();
            spec.setName(terminal);
            part.getTerminals().add(spec);
        }
        library.getDevices().add(part);
        return part;
    }

    static TerminalSpec terminal(DevicePart part, String name) {
        return part.getTerminals().stream().filter(t -> t.getName().equals(name)).findFirst().orElseThrow();
    }

    static <T extends Element> T between(DevicePart part, T element, String name, String a, String b) {
        element.setName(name);
        element.setA(terminal(part, a));
        element.setB(terminal(part, b));
        return element;
    }

    static Contact contact(DevicePart part, String name, String a, String b, Driver driver, RestState rest) {
        Contact contact = between(part, MAKE.createContact(), name, a, b);
        contact.setDriver(driver);
        contact.setRest(rest);
        part.getContacts().add(contact);
        return contact;
    }

    static Coil coil(DevicePart part, String name, String a, String b) {
        Coil coil = between(part, MAKE.createCoil(), name, a, b);
        coil.setOhm(number("85"));
        coil.setPickUpV(number("8"));
        coil.setDropOutV(number("2"));
        part.getCoils().add(coil);
        return coil;
    }

    static Demand demand(DevicePart part, String name, String a, String b, LoadLaw law) {
        Demand demand = between(part, MAKE.createDemand(), name, a, b);
        demand.setLaw(law);
        part.getDemands().add(demand);
        return demand;
    }

    private void battery() {
        DevicePart part = device("battery", DeviceKind.BATTERY, "30", "31");
        Cell cell = between(part, MAKE.createCell(), "cell", "30", "31");
        cell.setNominalV(number("12"));
        cell.setRMinMilliohm(number("4"));
        cell.setRMaxMilliohm(number("12"));
        cell.setCapacityAh(number("100"));
        for (String[] point : new String[][] {{"1", "12.8"}, {"0", "11.8"}, {"0.5", "12.3"}}) {
            OcvPoint ocv = MAKE.createOcvPoint();
            ocv.setCharge(number(point[0]));
            ocv.setVolt(number(point[1]));
            cell.getOcv().add(ocv);
        }
        part.getCells().add(cell);
    }

    private void alternator() {
        DevicePart part = device("alternator", DeviceKind.ALTERNATOR, "B+", "case");
        terminal(part, "case").setRole(TerminalRole.CASE);
        Regulated source = between(part, MAKE.createRegulated(), "source", "B+", "case");
        source.setSetV(number("14.2"));
        source.setLimitA(number("90"));
        source.setRunsOn(RunsOn.ENGINE);
        part.getRegulators().add(source);
    }

    private void box() {
        DevicePart part = device("box", DeviceKind.BOX, "30", "1", "2", "3");
        for (String name : new String[] {"1", "2", "3"}) {
            WaySpec way = MAKE.createWaySpec();
            way.setName(name);
            way.setFrom(terminal(part, "30"));
            way.setOut(terminal(part, name));
            way.setForms("blade");
            way.setMilliohm(number("0.5"));
            part.getWays().add(way);
        }
    }

    private void load() {
        DevicePart part = device("lamp", DeviceKind.LAMP, "L+", "L-");
        Demand demand = demand(part, "load", "L+", "L-", LoadLaw.POWER);
        demand.setWatts(number("60"));
        demand.setRefV(number("12"));
    }

    private void relay() {
        DevicePart part = device("relay", DeviceKind.RELAY, "30", "85", "86", "87");
        contact(part, "contact", "30", "87", Driver.COIL, RestState.OPEN).setCoil(coil(part, "coil", "86", "85"));
    }

    private void handSwitch(String name, DeviceKind kind, RestState rest) {
        contact(device(name, kind, "1", "2"), "contact", "1", "2", Driver.HAND, rest);
    }

    private void ignition() {
        DevicePart part = device("ignition", DeviceKind.SWITCH, "30", "15", "50", "75", "61");
        contact(part, "run", "30", "15", Driver.IGNITION, RestState.OPEN);
        contact(part, "start", "30", "50", Driver.START, RestState.OPEN);
        contact(part, "accessory", "30", "75", Driver.ACCESSORY, RestState.OPEN);
        contact(part, "running", "30", "61", Driver.ENGINE, RestState.OPEN);
    }

    private void starter() {
        DevicePart part = device("starter", DeviceKind.STARTER, "30", "50", "case", "M");
        terminal(part, "case").setRole(TerminalRole.CASE);
        terminal(part, "M").setRole(TerminalRole.INTERNAL);
        contact(part, "contact", "30", "M", Driver.COIL, RestState.OPEN).setCoil(coil(part, "coil", "50", "case"));
        demand(part, "motor", "M", "case", LoadLaw.RESISTANCE).setOhms(number("0.04"));
    }
}
