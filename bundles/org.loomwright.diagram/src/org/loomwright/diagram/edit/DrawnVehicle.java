// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.diagram.scene.HitIndex;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.Advice;
import org.loomwright.diagram.tool.EditRequest;
import org.loomwright.diagram.tool.Verdict;
import org.loomwright.model.edits.VehicleEdits;
import org.loomwright.model.edits.WiringFragment;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Way;

/**
 * A vehicle on one of its drawings: what gestures may do to it there, and the steps that do it. To be made anew when the model
 * or the
 * drawing has changed; belongs to the thread that owns the model.
 */
public final class DrawnVehicle implements Advice {
    /** Steps of positions on line and earth diagrams, px of the sheet. */
    private static final double SHEET_GRID_PX = 10;
    /** Steps of positions on plans, mm; finer ones are typed. */
    private static final double PLAN_GRID_MM = 10;

    private final Drawn drawn;
    private final Shifting shifting;
    private final Joining joining;
    private final Ground ground;
    private final Placing placing;
    private final Removing removing;
    private final Bending bending;
    private final Copying copying;

    private DrawnVehicle(Drawn drawn) {
        this.drawn = drawn;
        shifting = new Shifting(drawn);
        joining = new Joining(drawn);
        ground = new Ground(drawn);
        placing = new Placing(drawn, ground);
        removing = new Removing(drawn);
        bending = new Bending(drawn);
        copying = new Copying(drawn);
    }

    /**
     * A vehicle on a drawing.
     *
     * @param arrangement the arrangement looked at; null for what all arrangements share
     * @param hits        index of the scene that is shown; it may have been drawn from a copy of the vehicle
     */
    public static DrawnVehicle of(Vehicle vehicle, Arrangement arrangement, View view, HitIndex hits) {
        return new DrawnVehicle(new Drawn(vehicle, arrangement, view, hits));
    }

    /** Grid for positions, px of the sheet. */
    public double gridPx() {
        return drawn.scale() == null ? SHEET_GRID_PX : PLAN_GRID_MM / drawn.scale().mmPerPx();
    }

    /**
     * The step that does what a tool asked for.
     *
     * @throws IllegalArgumentException for a request that changes no model, {@link EditRequest.Copy} and {@link
     *                                  EditRequest.Rename},
     *                                  and for {@link EditRequest.Paste}, which needs a clipboard: see {@link #paste}
     */
    public Step step(EditRequest request) {
        if (request instanceof EditRequest.Move move) {
            Map<String, Point> byPx = new LinkedHashMap<>();
            move.elements().forEach(id -> byPx.put(id, new Point(move.dxPx(), move.dyPx())));
            return step("move", move.elements(), () -> shifting.move(byPx));
        }
        if (request instanceof EditRequest.MoveEach each) {
            return step("align", each.byPx().keySet(), () -> shifting.move(each.byPx()));
        }
        if (request instanceof EditRequest.Drop drop) {
            return step("drop", drop.elements(), () -> placing.put(drop.elements(), drop.target(), drop.at()));
        }
        if (request instanceof EditRequest.PlacePart place) {
            return new Step("place", place.part(), () -> placing.add(place.part(), place.target(), place.at()));
        }
        if (request instanceof EditRequest.Connect connect) {
            return new Step("connect", "", () -> joining.join(connect.from(), connect.to()));
        }
        if (request instanceof EditRequest.Reconnect fix) {
            return step("reconnect", Set.of(fix.end().core()), () -> joining.fix(fix.end(), fix.to()));
        }
        if (request instanceof EditRequest.Bend bend) {
            return step("bend", Set.of(bend.edge()), () -> bending.bend(bend.edge(), bend.bends()));
        }
        if (request instanceof EditRequest.MakePlace make) {
            return new Step("makeplace", "", () -> ground.make(make.at(), make.after()));
        }
        if (request instanceof EditRequest.MakeRun make) {
            return new Step("makerun", "", () -> joining.join(make.from(), make.to()));
        }
        if (request instanceof EditRequest.Delete delete) {
            return step("delete", delete.elements(), () -> removing.remove(delete.elements()));
        }
        if (request instanceof EditRequest.Cut cut) {
            return step("cut", cut.elements(), () -> removing.remove(cut.elements()));
        }
        if (request instanceof EditRequest.Duplicate twice) {
            return step("duplicate", twice.elements(), () -> copying.paste(copying.clip(twice.elements()), null));
        }
        if (request instanceof EditRequest.Named named) {
            return step("rename", Set.of(named.element()), () -> rename(named.element(), named.name()));
        }
        throw new IllegalArgumentException("no change of the vehicle: " + request);
    }

    private Step step(String verb, Set<String> elements, Supplier<Outcome> change) {
        String subject = elements.size() == 1 ? drawn.label(drawn.element(elements.iterator().next()))
                : Integer.toString(elements.size());
        return new Step(verb, subject, change);
    }

    /**
     * A copy for the clipboard, for {@link EditRequest.Copy} and {@link EditRequest.Cut}; it may be pasted into any vehicle.
     *
     * @throws IllegalArgumentException when nothing of it can be copied
     */
    public WiringFragment clip(Set<String> elements) {
        return copying.clip(elements);
    }

    /**
     * The step that adds what is in the clipboard.
     *
     * @param target element selected, see {@link EditRequest.Paste}; may be null
     */
    public Step paste(WiringFragment clipboard, String target) {
        return new Step("paste", "", () -> copying.paste(clipboard, target));
    }

    /** What a deletion takes along beside the elements, in words; empty for nothing. */
    public List<String> alsoGoes(Set<String> elements) {
        return removing.alsoGoes(elements);
    }

    /** The name of an element, to be changed; null for what has no name of its own. */
    public String name(String element) {
        EObject found = drawn.element(element);
        return found instanceof Named named && !(found instanceof Terminal) && !(found instanceof Way) ? named.getName() : null;
    }

    private Outcome rename(String id, String name) {
        EObject element = drawn.element(id);
        if (name(id) == null) {
            throw new IllegalArgumentException(drawn.label(element) + " is named by its part");
        }
        VehicleEdits.rename((Named) element, name.strip());
        return Outcome.selecting(Fragments.of(element));
    }

    /** On plans the vehicle's own origin, so that positions come to whole steps of its mm. */
    @Override
    public Point gridOrigin() {
        return drawn.scale() == null ? new Point(0, 0) : drawn.scale().toSheet(new Point(0, 0));
    }

    @Override
    public boolean movable(String element) {
        return shifting.movable(drawn.element(element));
    }

    @Override
    public String label(String element) {
        return drawn.label(drawn.element(element));
    }

    @Override
    public Verdict place(String part, String target, Point at) {
        return placing.place(part, target, at);
    }

    @Override
    public Verdict drop(Set<String> elements, String target, Point at) {
        return placing.drop(elements, target, at);
    }

    @Override
    public List<Ending> endings(String element) {
        return joining.endings(element);
    }

    @Override
    public String natural(String element, String otherEnding) {
        return joining.natural(element, otherEnding);
    }

    @Override
    public Verdict connect(String from, String to) {
        return joining.connect(from, to);
    }

    @Override
    public List<EdgeEnd> ends(String edge) {
        return joining.ends(edge);
    }

    @Override
    public String kept(EdgeEnd moved) {
        return joining.kept(moved);
    }

    @Override
    public Verdict reconnect(EdgeEnd end, String to) {
        return joining.reconnect(end, to);
    }

    @Override
    public List<Point> line(String edge) {
        return bending.line(edge);
    }

    @Override
    public boolean isPlace(String element) {
        return drawn.view().toScale() && drawn.element(element) instanceof Place;
    }

    @Override
    public Verdict makePlace(Point at) {
        return ground.makePlace(at);
    }

    @Override
    public Verdict makeRun(String from, String to) {
        return joining.connect(from, to);
    }
}
