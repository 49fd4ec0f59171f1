// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.plan;

import java.util.List;
import org.loomwright.model.parts.DeviceKind;

/**
 * What a plan shows, in mm of one view; ids are the model's fragments.
 *
 * @param vehicle  outline of the vehicle in this view
 * @param stated   the file states that outline; else it was derived from what lies in the vehicle
 * @param zones    zones, also those without an outline
 * @param bodies   bodies that state an outline in this view
 * @param places   places
 * @param runs     runs, ends as indexes of places
 * @param devices  devices that have a spot
 * @param cables   cables, those without a way included
 */
record PlanContent(Outline vehicle, boolean stated, List<Zone> zones, List<Body> bodies, List<Place> places, List<Run> runs,
        List<Device> devices, List<Cable> cables) {
    PlanContent {
        zones = List.copyOf(zones);
        bodies = List.copyOf(bodies);
        places = List.copyOf(places);
        runs = List.copyOf(runs);
        devices = List.copyOf(devices);
        cables = List.copyOf(cables);
    }

    /** A zone with the number of its places; outline null where it states none in this view. */
    record Zone(String id, String label, String environment, boolean hot, boolean wet, Outline outline, int places) {
    }

    /** A body. */
    record Body(String id, String name, Outline outline) {
    }

    /** A place with its earth points. */
    record Place(String id, String name, Spot spot, List<String> earthPoints) {
        Place {
            earthPoints = List.copyOf(earthPoints);
        }
    }

    /** A run. */
    record Run(String id, int from, int to) {
    }

    /**
     * A device.
     *
     * @param place    index of the place it sits at, or -1
     * @param run      index of the run it sits on, or -1
     * @param share    where on the run, as a share of its length
     * @param alongMm  size of its part along the vehicle, 0 when not stated
     * @param upMm     size of its part across it in this view, 0 when not stated
     */
    record Device(String id, String designation, String label, DeviceKind kind, boolean existing, int place, int run,
            double share, double alongMm, double upMm) {
    }

    /**
     * A cable.
     *
     * @param path    runs in order; empty when it lies at one place or has no way
     * @param ducts   id of the duct for each run of the path, empty text where it lies open; empty when the way is not known
     * @param start   index of the place where the path begins, or -1
     * @param areaMm2 cross section over its insulation, NaN when not known
     * @param sectionMm2 section of its conductors, NaN when still open
     * @param back    it holds return conductors only
     * @param known   its way is known
     */
    record Cable(String id, String designation, List<Integer> path, List<String> ducts, int start, double areaMm2,
            double sectionMm2, boolean back, boolean existing, boolean known) {
        Cable {
            path = List.copyOf(path);
            ducts = List.copyOf(ducts);
        }
    }
}
