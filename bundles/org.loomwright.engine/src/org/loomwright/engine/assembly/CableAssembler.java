// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomwright.engine.assembly.Catalogue.CableType;
import org.loomwright.engine.assembly.Plan.SectionOption;
import org.loomwright.engine.assembly.RunGraph.Query;
import org.loomwright.engine.assembly.RunGraph.Route;
import org.loomwright.model.parts.EndPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Assembles cables and their conductors. A cable without part or length is told and left out with its cores, one without
 * section is told and counts with the smallest on offer; a core without resistance or with an unknown end is left out alone.
 */
final class CableAssembler {
    private final AssemblyScope scope;
    private final StructureAssembler structure;
    private final DeviceAssembler devices;
    private final CableRoutes routes;
    private final List<Plan.Cable> cables = new ArrayList<>();
    private final List<Plan.Conductor> conductors = new ArrayList<>();

    CableAssembler(Vehicle vehicle, Arrangement arrangement, StructureAssembler structure, DeviceAssembler devices,
            AssemblyScope scope) {
        this.scope = scope;
        this.structure = structure;
        this.devices = devices;
        routes = new CableRoutes(structure, scope.problems());
        List<Draft> drafts = new ArrayList<>();
        vehicle.getCables().forEach(cable -> draft(cable, drafts));
        if (arrangement != null) {
            arrangement.getCables().forEach(cable -> draft(cable, drafts));
        }
        routes.answer();
        drafts.forEach(this::add);
    }

    List<Plan.Cable> cables() {
        return cables;
    }

    List<Plan.Conductor> conductors() {
        return conductors;
    }

    /** A core with both ends known. */
    private record Wire(Core core, String id, int a, int b) {
    }

    /** A cable while its route is looked for. */
    private record Draft(Cable cable, String id, CableType type, List<Wire> wires, CableRoutes.Wanted route) {
    }

    private void draft(Cable cable, List<Draft> drafts) {
        String id = ModelIds.of(cable);
        if (cable.getPart() == null || cable.getPart().eIsProxy()) {
            scope.problems().add(id, "the cable has no part; it is left out");
            return;
        }
        CableType type = scope.parts().cable(cable.getPart());
        List<Wire> wires = wires(cable, id);
        Set<Query> ends = new LinkedHashSet<>();
        boolean here = false;
        for (Wire wire : wires) {
            if (devices.together(wire.a(), wire.b())) {
                here = true;
                continue;
            }
            Query ab = new Query(devices.spotOf(wire.a()), devices.spotOf(wire.b()));
            if (!ends.contains(new Query(ab.b(), ab.a()))) {
                ends.add(ab);
            }
        }
        drafts.add(new Draft(cable, id, type, wires, routes.wanted(cable, id, ends, here)));
    }

    private List<Wire> wires(Cable cable, String id) {
        List<Wire> wires = new ArrayList<>();
        boolean byColour = coloursDiffer(cable.getCores());
        for (int i = 0; i < cable.getCores().size(); i++) {
            Core core = cable.getCores().get(i);
            if (Decimals.yes(core.getSpare()) || core.getA() == null && core.getB() == null) {
                continue;
            }
            String wireId = cable.getCores().size() == 1 ? id : id + "#" + (byColour ? core.getColour() : i + 1);
            if (core.getA() == null || core.getB() == null) {
                scope.problems().add(wireId, "the core is connected at one end only; expected both ends, or spare");
                continue;
            }
            int a = attached(core.getA(), wireId, "a");
            int b = attached(core.getB(), wireId, "b");
            if (a >= 0 && b >= 0) {
                wires.add(new Wire(core, wireId, a, b));
            }
        }
        return wires;
    }

    private static boolean coloursDiffer(List<Core> cores) {
        Set<String> colours = new LinkedHashSet<>();
        for (Core core : cores) {
            if (core.getColour() == null || core.getColour().isEmpty() || !colours.add(core.getColour())) {
                return false;
            }
        }
        return true;
    }

    private int attached(Attachment attachment, String wireId, String end) {
        int terminal = devices.terminals().of(attachment);
        if (terminal < 0) {
            scope.problems().add(wireId, "end " + end + ": " + devices.terminals().whyUnknown(attachment));
        }
        return terminal;
    }

    private void add(Draft draft) {
        Cable cable = draft.cable();
        boolean open = cable.getSectionMm2() == null
                && draft.wires().stream().anyMatch(wire -> wire.core().getSectionMm2() == null);
        if (open) {
            scope.problems().add(draft.id(), "the cable has no section yet; "
                    + (draft.type().options().isEmpty() ? "it is left out, since its part offers none"
                            : "it counts with the smallest of its part until somebody gives one or it is sized"));
            if (draft.type().options().isEmpty()) {
                return;
            }
        }
        Route route = routes.of(draft.route());
        double measuredMm = Decimals.of(cable.getLengthMm());
        if (route == null && Double.isNaN(measuredMm)) {
            if (!draft.wires().isEmpty()) {
                routes.tellWhy(draft.route());
            }
            return;
        }
        double tailMm = scope.practice().value("length.tail");
        double pathMm = route == null ? Double.NaN : route.lengthMm();
        Plan.LengthParts parts = new Plan.LengthParts(pathMm, Decimals.or(cable.getTailAMm(), tailMm),
                Decimals.or(cable.getTailBMm(), tailMm), pathMm * scope.practice().value("length.slack"), measuredMm);
        double lengthMm = Double.isNaN(measuredMm)
                ? parts.pathMm() + parts.tailAMm() + parts.tailBMm() + parts.slackMm()
                : measuredMm;
        List<Integer> path = route == null ? List.of() : route.runs();
        double sectionMm2 = open ? draft.type().options().get(0).sectionMm2() : Decimals.of(cable.getSectionMm2());
        SectionOption option = draft.type().option(sectionMm2);
        int number = cables.size();
        cables.add(new Plan.Cable(draft.id(), cable.getName(), draft.type().name(), draft.type().source(),
                draft.type().insulation(), sectionMm2, open || cable.isSetSectionBy() && cable.getSectionBy() == ChosenBy.SIZING,
                path,
                ducts(cable, path), lengthMm, parts, hottestZone(draft, path), draft.type().maxC(),
                draft.type().shortTimeMaxC(), draft.type().sheathed(), draft.type().cores(),
                option == null ? Double.NaN : option.outerDiameterMm(), Decimals.yes(cable.getExisting()),
                draft.type().ampacity(), draft.type().grouping(), draft.type().options()));
        draft.wires().forEach(wire -> add(wire, number, draft.type(), sectionMm2));
    }

    private void add(Wire wire, int cable, CableType type, double cableMm2) {
        Core core = wire.core();
        double sectionMm2 = Decimals.or(core.getSectionMm2(), cableMm2);
        SectionOption option = type.option(sectionMm2);
        if (option == null) {
            scope.problems().add(wire.id(), "part " + type.name() + " is not on offer with " + Decimals.text(sectionMm2)
                    + " mm2; expected one of "
                    + String.join(", ", type.options().stream().map(o -> Decimals.text(o.sectionMm2())).toList()));
            return;
        }
        if (!(option.r20MaxOhmPerM() > 0)) {
            scope.problems().add(wire.id(), "part " + type.name() + " states no resistance for " + Decimals.text(sectionMm2)
                    + " mm2; expected r20MaxMilliohmPerM above 0");
            return;
        }
        conductors.add(new Plan.Conductor(wire.id(), cable, core.getColour(), wire.a(), wire.b(), sectionMm2,
                option.r20MaxOhmPerM(), option.r20NominalOhmPerM(), 2 * scope.ohms("joint.end-max"), core.getParallelGroup(),
                nameOf(core.getAEnd()), nameOf(core.getBEnd()), holeMm(core.getAEnd()), holeMm(core.getBEnd())));
    }

    private List<String> ducts(Cable cable, List<Integer> path) {
        if (cable.getDucts().isEmpty()) {
            return Collections.nCopies(path.size(), "");
        }
        List<String> ducts = new ArrayList<>();
        for (int run : path) {
            String found = "";
            for (Duct duct : cable.getDucts()) {
                for (Run of : duct.getRuns()) {
                    found = found.isEmpty() && structure.indexOf(of) == run ? ModelIds.of(duct) : found;
                }
            }
            ducts.add(found);
        }
        return ducts;
    }

    private int hottestZone(Draft draft, List<Integer> path) {
        int zone = -1;
        for (int run : path) {
            zone = structure.hotter(zone, structure.runs().get(run).zone());
        }
        for (Wire wire : draft.wires()) {
            zone = structure.hotter(zone, zoneOf(wire.a()));
            zone = structure.hotter(zone, zoneOf(wire.b()));
        }
        return zone;
    }

    private int zoneOf(int terminal) {
        Plan.Terminal of = devices.terminals().all().get(terminal);
        return of.device() >= 0 ? devices.devices().get(of.device()).zone()
                : of.place() >= 0 ? structure.places().get(of.place()).zone() : -1;
    }

    private static String nameOf(EndPart end) {
        return end == null ? null : end.getName();
    }

    private static double holeMm(EndPart end) {
        return end == null ? Double.NaN : Decimals.of(end.getStudMm());
    }
}
