// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.math.BigDecimal;
import java.util.function.Consumer;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.TerminalRole;
import org.loomwright.model.parts.TerminalSpec;
import org.loomwright.model.vehicle.Attachment;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Terminal;

/** What holds for a cable: cores against its part, sections on offer, a path without gaps, ends that exist. */
final class CableRules {
    private CableRules() {
    }

    static void check(Cable cable, Consumer<Violation> found) {
        path(cable, found);
        CablePart part = cable.getPart();
        if (part != null && !part.eIsProxy()) {
            if (part.getCores() != null && cable.getCores().size() > part.getCores()) {
                found.accept(Violation.blocking("cable-cores", cable, "cores", "uses " + cable.getCores().size()
                        + " cores of " + part.getName() + ", which has " + part.getCores(), "at most " + part.getCores()));
            }
            section(part, cable, cable.getSectionMm2(), found);
        }
        if (cable.getCores().isEmpty()) {
            found.accept(Violation.notice("cable-empty", cable, "cores", "no core is listed", "cores with their ends"));
        }
        for (Core core : cable.getCores()) {
            core(core, found);
            if (part != null && !part.eIsProxy()) {
                section(part, core, core.getSectionMm2(), found);
            }
        }
    }

    private static void section(CablePart part, org.eclipse.emf.ecore.EObject owner, BigDecimal section,
            Consumer<Violation> found) {
        if (section == null || part.getRows().stream()
                .anyMatch(row -> row.getSectionMm2() != null && row.getSectionMm2().compareTo(section) == 0)) {
            return;
        }
        found.accept(Violation.blocking("section-offer", owner, "sectionMm2",
                part.getName() + " is not made in " + section.toPlainString() + " mm2",
                "one of " + part.getRows().stream().map(row -> String.valueOf(row.getSectionMm2()))
                        .collect(java.util.stream.Collectors.joining(", "))));
    }

    private static void core(Core core, Consumer<Violation> found) {
        boolean spare = Boolean.TRUE.equals(core.getSpare());
        if (!spare && (core.getA() == null || core.getB() == null)) {
            found.accept(Violation.blocking("core-ends", core, core.getA() == null ? "a" : "b", "an end goes nowhere",
                    "both ends, or spare=\"true\""));
            return;
        }
        if (core.getA() != null && core.getA() == core.getB()) {
            found.accept(Violation.blocking("core-ends", core, "b", "begins and ends at the same terminal",
                    "two different ends"));
        }
        TerminalSpec a = spec(core, core.getA(), "a", found);
        TerminalSpec b = spec(core, core.getB(), "b", found);
        if (a != null && b != null && (opposed(a, b) || opposed(b, a))) {
            found.accept(Violation.notice("wrong-net", core, "b",
                    "joins a plus terminal with a minus terminal", "terminals of one side"));
        }
    }

    private static boolean opposed(TerminalSpec a, TerminalSpec b) {
        // batteries in series are joined plus to minus by intent
        boolean series = a.eContainer() instanceof DevicePart one && b.eContainer() instanceof DevicePart other
                && !one.getCells().isEmpty() && !other.getCells().isEmpty();
        return !series && a.isSetRole() && b.isSetRole() && a.getRole() == TerminalRole.PLUS && b.getRole() == TerminalRole.MINUS;
    }

    /** The terminal's description in the part; reports a terminal that the part does not have. */
    private static TerminalSpec spec(Core core, Attachment end, String feature, Consumer<Violation> found) {
        if (!(end instanceof Terminal terminal) || !(terminal.eContainer() instanceof Device device)
                || device.getPart() == null || device.getPart().eIsProxy()) {
            return null;
        }
        DevicePart part = device.getPart();
        for (TerminalSpec spec : part.getTerminals()) {
            if (terminal.getName().equals(spec.getName())) {
                if (spec.isSetRole() && spec.getRole() == TerminalRole.INTERNAL) {
                    found.accept(Violation.blocking("terminal-internal", core, feature,
                            device.getName() + "." + terminal.getName() + " lies inside the device", "an outer terminal"));
                }
                return spec;
            }
        }
        found.accept(Violation.blocking("terminal-unknown", core, feature,
                device.getName() + " (" + part.getName() + ") has no terminal " + terminal.getName(),
                "one of " + part.getTerminals().stream()
                        .filter(spec -> !spec.isSetRole() || spec.getRole() != TerminalRole.INTERNAL)
                        .map(TerminalSpec::getName).collect(java.util.stream.Collectors.joining(", "))));
        return null;
    }

    private static void path(Cable cable, Consumer<Violation> found) {
        for (int i = 1; i < cable.getPath().size(); i++) {
            Run before = cable.getPath().get(i - 1);
            Run here = cable.getPath().get(i);
            if (!touches(before, here.getFrom()) && !touches(before, here.getTo())) {
                found.accept(Violation.blocking("path-gap", cable, "path",
                        "run " + here.getName() + " does not begin where " + before.getName() + " ends",
                        "runs that join each other"));
            }
        }
    }

    private static boolean touches(Run run, Place place) {
        return place != null && (place == run.getFrom() || place == run.getTo());
    }
}
