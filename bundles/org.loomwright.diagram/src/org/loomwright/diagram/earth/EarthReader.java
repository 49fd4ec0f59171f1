// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.loomwright.diagram.services.DrawingRequest;
import org.loomwright.engine.assembly.Plan;
import org.loomwright.engine.result.Designations;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.ReturnPolicy;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;

/** Reads the content of an earth diagram from the model; what is not finished is shown as far as it goes. */
final class EarthReader {
    private final DrawingRequest request;
    private final Vehicle vehicle;
    private final Designations designations;
    private final Map<String, EarthContent.Stud> studs = new LinkedHashMap<>();

    private EarthReader(DrawingRequest request) {
        this.request = request;
        vehicle = request.vehicle();
        designations = new Designations(request.arrangement() == null ? "" : request.arrangement().getName());
    }

    static EarthContent read(DrawingRequest request) {
        return new EarthReader(request).content();
    }

    private EarthContent content() {
        List<EarthContent.Body> bodies = new ArrayList<>();
        vehicle.getBodies().forEach(body -> bodies.add(body(body)));
        List<EarthContent.Join> joins = new ArrayList<>();
        vehicle.getBonds().forEach(bond -> bond(bond, joins));
        vehicle.getBodyLinks().forEach(link -> seam(link, joins));
        cables(vehicle.getCables());
        cases(vehicle.getDevices());
        if (request.arrangement() != null) {
            cables(request.arrangement().getCables());
            cases(request.arrangement().getDevices());
        }
        return new EarthContent(bodies, joins, List.copyOf(studs.values()));
    }

    private EarthContent.Body body(Body body) {
        boolean own = body.isSetReturnPolicy();
        ReturnPolicy policy = own ? body.getReturnPolicy() : vehicle.isSetReturnPolicy() ? vehicle.getReturnPolicy() : null;
        String words = policy == ReturnPolicy.FORBIDDEN ? "no returns of loads"
                : policy == ReturnPolicy.LISTED_LOADS ? "returns of listed loads only" : null;
        return new EarthContent.Body(Fragments.of(body), body.getName(), body.getLabel(), words,
                policy == ReturnPolicy.FORBIDDEN);
    }

    private void bond(Bond bond, List<EarthContent.Join> joins) {
        int a = bond.getA() == null ? -1 : vehicle.getBodies().indexOf(bond.getA().getBody());
        int b = bond.getB() == null ? -1 : vehicle.getBodies().indexOf(bond.getB().getBody());
        if (a < 0 || b < 0 || a == b) {
            return;
        }
        double section = bond.getPart() == null ? Double.NaN : number(bond.getPart().getSectionMm2());
        String words = bond.getPart() == null ? "bolted joint" : "strap " + EarthText.section(section);
        joins.add(new EarthContent.Join(Fragments.of(bond), designations.shown(bond.getName()), words, a, b,
                Fragments.of(bond.getA()), bond.getA().getName(), Fragments.of(bond.getB()), bond.getB().getName(), section,
                ohm(Fragments.of(bond), bond.getMilliohm())));
    }

    private double ohm(String id, BigDecimal milliohm) {
        if (request.study() != null) {
            for (Plan.Bond bond : request.study().plan().bonds()) {
                if (bond.id().equals(id)) {
                    return bond.ohm();
                }
            }
        }
        return number(milliohm) / 1000;
    }

    private void seam(BodyLink link, List<EarthContent.Join> joins) {
        int a = vehicle.getBodies().indexOf(link.getA());
        int b = vehicle.getBodies().indexOf(link.getB());
        if (a >= 0 && b >= 0 && a != b) {
            joins.add(new EarthContent.Join(Fragments.of(link), designations.shown(link.getName()), "seam", a, b, null, null,
                    null, null, Double.NaN, number(link.getMilliohm()) / 1000));
        }
    }

    private void cables(List<Cable> cables) {
        for (Cable cable : cables) {
            for (Core core : cable.getCores()) {
                end(cable, core, core.getA(), core.getB(), false);
                end(cable, core, core.getB(), core.getA(), true);
            }
        }
    }

    /** The id under which the engine names a core: the cable's where it is alone, else with its colour or number. */
    private static String coreId(Cable cable, Core core) {
        String id = Fragments.of(cable);
        long colours = cable.getCores().stream().map(Core::getColour).filter(Objects::nonNull).distinct().count();
        return cable.getCores().size() == 1 ? id
                : id + "#" + (colours == cable.getCores().size() ? core.getColour() : cable.getCores().indexOf(core) + 1);
    }

    private void end(Cable cable, Core core, Attachment here, Attachment there, boolean forward) {
        if (here instanceof EarthPoint point && vehicle.getBodies().contains(point.getBody())) {
            Device device = there instanceof Terminal terminal && terminal.eContainer() instanceof Device at ? at : null;
            String shown = device != null ? designations.shown(Fragments.of(device))
                    : there instanceof EarthPoint other ? other.getName() : designations.shown(Fragments.of(cable));
            double section = number(core.getSectionMm2() == null ? cable.getSectionMm2() : core.getSectionMm2());
            add(Fragments.of(point), point.getName(), point.getLabel(), vehicle.getBodies().indexOf(point.getBody()),
                    new EarthContent.Entry(Fragments.of(cable), coreId(cable, core), forward, shown,
                            device == null ? null : device.getLabel(), section));
        }
    }

    private void cases(List<Device> devices) {
        for (Device device : devices) {
            int body = device.getBody() == null ? -1 : vehicle.getBodies().indexOf(device.getBody());
            if (body < 0 || device.getPart() == null) {
                continue;
            }
            for (TerminalSpec terminal : device.getPart().getTerminals()) {
                if (terminal.getRole() == TerminalRole.CASE) {
                    String id = Fragments.of(device) + "." + terminal.getName();
                    add(id, "case", null, body, new EarthContent.Entry(Fragments.of(device), id, true,
                            designations.shown(Fragments.of(device)), device.getLabel(), Double.NaN));
                }
            }
        }
    }

    private void add(String id, String shown, String label, int body, EarthContent.Entry entry) {
        EarthContent.Stud known = studs.get(id);
        List<EarthContent.Entry> entries = new ArrayList<>(known == null ? List.of() : known.entries());
        entries.add(entry);
        studs.put(id, new EarthContent.Stud(id, shown, label, body, entries));
    }

    private static double number(BigDecimal value) {
        return value == null ? Double.NaN : value.doubleValue();
    }
}
