// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.tool.Advice;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.edits.BondEdits;
import org.loomwright.model.edits.ConnectEdits;
import org.loomwright.model.edits.Connections;
import org.loomwright.model.edits.CoreEnd;
import org.loomwright.model.edits.RunLengths;
import org.loomwright.model.edits.StructureEdits;
import org.loomwright.model.edits.WireEnd;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;

/**
 * Edges drawn and fixed elsewhere: cables between terminals and earth points, runs between places on the plan, straps between
 * earth
 * points or bodies on the earth diagram.
 */
final class Joining {
    private final Drawn drawn;

    Joining(Drawn drawn) {
        this.drawn = drawn;
    }

    List<Advice.Ending> endings(String id) {
        EObject element = drawn.element(id);
        if (itself(element)) {
            return List.of(new Advice.Ending(id, drawn.label(element)));
        }
        if (drawn.view() == View.EARTH) {
            return List.of();
        }
        return Connections.ends(element).stream().map(end -> new Advice.Ending(end.id(), end instanceof WireEnd.Pin pin
                ? pin.terminal() : end.shown())).toList();
    }

    /** True for what an edge ends at as a whole on this drawing. */
    private boolean itself(EObject element) {
        return switch (drawn.view()) {
            case PLAN, SIDE -> element instanceof Place;
            case LINE -> false;
            case EARTH -> element instanceof Body || element instanceof EarthPoint;
        };
    }

    String natural(String id, String other) {
        EObject element = drawn.element(id);
        if (itself(element)) {
            return other == null || connect(other, id).possible() ? id : null;
        }
        if (drawn.view() == View.EARTH) {
            return null;
        }
        WireEnd from = other == null ? null : WireEnd.find(drawn.vehicle(), other);
        if (other != null && from == null) {
            return null;
        }
        WireEnd end = drawn.connections().natural(element, from);
        return end == null ? null : end.id();
    }

    Verdict connect(String from, String to) {
        EObject a = drawn.element(from);
        EObject b = drawn.element(to);
        if (itself(a) || itself(b)) {
            return whole(a, b);
        }
        if (drawn.view() == View.EARTH) {
            return Verdict.refused("on the earth diagram straps are drawn between earth points or bodies");
        }
        WireEnd one = WireEnd.find(drawn.vehicle(), from);
        WireEnd other = WireEnd.find(drawn.vehicle(), to);
        return verdict(drawn.connections().between(one, other), () -> "cable from " + one.shown() + " to " + other.shown());
    }

    private Verdict whole(EObject a, EObject b) {
        try {
            if (a instanceof Place from && b instanceof Place to) {
                StructureEdits.requireRun(drawn.vehicle(), from, to);
                double mm = RunLengths.straightMm(from, to);
                return Verdict.allowed("run from " + drawn.label(a) + " to " + drawn.label(b)
                        + (Double.isNaN(mm) ? "" : ", " + Drawn.mm(mm).toPlainString() + " mm straight"));
            }
            if (a instanceof EarthPoint one && b instanceof EarthPoint other) {
                BondEdits.requireJoint(drawn.vehicle(), one, other);
                return Verdict.allowed("strap from " + one.getName() + " to " + other.getName());
            }
            if (a instanceof Body one && b instanceof Body other) {
                BondEdits.requireJoint(drawn.vehicle(), one, other);
                return Verdict.allowed("strap from " + drawn.label(a) + " to " + drawn.label(b));
            }
        } catch (IllegalArgumentException refused) {
            return Verdict.refused(refused.getMessage());
        }
        return Verdict.refused(drawn.view() == View.EARTH ? "straps join earth points, or bodies"
                : "runs join places, cables join terminals");
    }

    private static Verdict verdict(Connections.Answer answer, Supplier<String> what) {
        return !answer.possible() ? Verdict.refused(answer.text())
                : answer.text().isEmpty() ? Verdict.allowed(what.get()) : Verdict.warned(answer.text());
    }

    /** Joins two endings. */
    Outcome join(String from, String to) {
        EObject a = drawn.element(from);
        EObject b = drawn.element(to);
        Verdict verdict = connect(from, to);
        if (!verdict.possible()) {
            throw new IllegalArgumentException(verdict.text());
        }
        EObject made = a instanceof Place one && b instanceof Place other ? StructureEdits.addRun(drawn.vehicle(), one, other)
                : itself(a) && a instanceof EarthPoint one ? BondEdits.join(drawn.vehicle(), one, (EarthPoint) b)
                : itself(a) ? BondEdits.join(drawn.vehicle(), (Body) a, (Body) b)
                : ConnectEdits.connect(drawn.vehicle(), drawn.arrangement(), WireEnd.find(drawn.vehicle(), from),
                        WireEnd.find(drawn.vehicle(), to), null);
        List<String> told = verdict.kind() == Verdict.Kind.WARNED ? List.of(verdict.text()) : List.of();
        return new Outcome(java.util.Set.of(Fragments.of(made)), told);
    }

    List<Advice.EdgeEnd> ends(String edge) {
        EObject element = drawn.element(edge);
        List<Advice.EdgeEnd> ends = new ArrayList<>();
        if (element instanceof Cable cable && drawn.view() != View.EARTH) {
            for (Core core : cable.getCores()) {
                for (CoreEnd end : CoreEnd.values()) {
                    WireEnd at = WireEnd.of(end.of(core));
                    String owner = at instanceof WireEnd.Pin pin ? Fragments.of(pin.device()) : at == null ? null : at.id();
                    if (owner != null && ends.stream().noneMatch(each -> each.at().equals(owner))) {
                        ends.add(new Advice.EdgeEnd(Fragments.of(core), end, owner));
                    }
                }
            }
        } else if (element instanceof Run run && drawn.view().toScale()) {
            whole(edge, run.getFrom(), run.getTo(), ends);
        } else if (element instanceof Bond bond && drawn.view() == View.EARTH) {
            whole(edge, bond.getA(), bond.getB(), ends);
        }
        return ends;
    }

    private static void whole(String edge, EObject a, EObject b, List<Advice.EdgeEnd> ends) {
        if (a != null && b != null) {
            ends.add(new Advice.EdgeEnd(edge, CoreEnd.A, Fragments.of(a)));
            ends.add(new Advice.EdgeEnd(edge, CoreEnd.B, Fragments.of(b)));
        }
    }

    String kept(Advice.EdgeEnd moved) {
        EObject element = drawn.element(moved.core());
        if (element instanceof Core core) {
            WireEnd end = WireEnd.of(moved.end().other().of(core));
            return end == null ? null : end.id();
        }
        EObject kept = other(element, moved.end());
        return kept == null ? null : Fragments.of(kept);
    }

    private static EObject other(EObject edge, CoreEnd end) {
        return edge instanceof Run run ? end == CoreEnd.A ? run.getTo() : run.getFrom()
                : edge instanceof Bond bond ? end == CoreEnd.A ? bond.getB() : bond.getA() : null;
    }

    Verdict reconnect(Advice.EdgeEnd end, String to) {
        EObject element = drawn.element(end.core());
        if (element instanceof Core core) {
            WireEnd other = WireEnd.of(end.end().other().of(core));
            WireEnd there = WireEnd.find(drawn.vehicle(), to);
            return other == null ? Verdict.allowed("") : verdict(drawn.connections().between(other, there, core),
                    () -> "from " + other.shown() + " to " + there.shown());
        }
        EObject kept = other(element, end.end());
        return kept == null ? Verdict.refused("nothing that can be fixed elsewhere")
                : connect(Fragments.of(kept), to);
    }

    /** Fixes an end elsewhere; other cores of the cable that ended at the same device follow to their likely terminals. */
    Outcome fix(Advice.EdgeEnd end, String to) {
        Verdict verdict = reconnect(end, to);
        if (!verdict.possible()) {
            throw new IllegalArgumentException(verdict.text());
        }
        EObject element = drawn.element(end.core());
        List<String> told = new ArrayList<>();
        if (element instanceof Core core) {
            cores(core, end, WireEnd.find(drawn.vehicle(), to), told);
        } else if (element instanceof Run run) {
            StructureEdits.reconnect(run, end.end(), drawn.element(to, Place.class)).forEach(cable ->
                    told.add("-" + cable.getName() + " takes its shortest way, since its path has a gap now"));
        } else if (element instanceof Bond bond) {
            EObject there = drawn.element(to);
            if (!(there instanceof EarthPoint)) {
                throw new IllegalArgumentException("a strap ends at an earth point");
            }
            BondEdits.reconnect(bond, end.end(), (EarthPoint) there);
        }
        if (verdict.kind() == Verdict.Kind.WARNED) {
            told.add(verdict.text());
        }
        return new Outcome(null, told);
    }

    private void cores(Core core, Advice.EdgeEnd end, WireEnd there, List<String> told) {
        Cable cable = (Cable) core.eContainer();
        ConnectEdits.reconnect(drawn.vehicle(), drawn.arrangement(), core, end.end(), there);
        EObject target = there instanceof WireEnd.Pin pin ? pin.device() : drawn.element(there.id());
        for (Core other : cable.getCores()) {
            for (CoreEnd which : CoreEnd.values()) {
                WireEnd at = WireEnd.of(which.of(other));
                if (other != core && at instanceof WireEnd.Pin pin && Fragments.of(pin.device()).equals(end.at())) {
                    follow(other, which, target, told);
                }
            }
        }
    }

    private void follow(Core core, CoreEnd which, EObject target, List<String> told) {
        Connections now = Connections.of(drawn.vehicle(), drawn.arrangement());
        WireEnd far = WireEnd.of(which.other().of(core));
        WireEnd likely = far == null ? null : now.natural(target, far);
        if (likely == null) {
            told.add("core " + core.getName() + " of -" + ((Cable) core.eContainer()).getName() + " still ends at "
                    + WireEnd.of(which.of(core)).shown());
        } else {
            ConnectEdits.reconnect(drawn.vehicle(), drawn.arrangement(), core, which, likely);
        }
    }
}
