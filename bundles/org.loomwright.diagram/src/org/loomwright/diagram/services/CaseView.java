// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.services;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.loomwright.engine.cases.SolvedCase;
import org.loomwright.engine.check.CheckContext;
import org.loomwright.engine.flow.OperatingPoint;

/**
 * Figures of one case by element id. Immutable. What the case has no figure for is missing from the maps.
 *
 * @param name       case
 * @param status     whether it has an operating point
 * @param terminals  potential of terminals and earth points against the battery's minus, V
 * @param conductors by id of the core; also by id of the cable, of the core with the largest current there
 * @param loads      by the id under which findings name the load: its device where that has one load
 * @param protectors by id of the way or device
 * @param sources    current that a battery, alternator or charger gives, by id of the device, A; negative while it takes
 * @param bonds      straps, by id
 * @param seams      body links, by id
 * @param contacts   earth points and cases (id of the terminal): current into the body, A
 * @param bodies     potential of bodies against the battery's minus, V
 * @param waiting    standby current of loads that are not on, by the same ids, A
 * @param closed     ids of the contacts that are closed, device and name with a # between
 */
public record CaseView(String name, OperatingPoint.Status status, Map<String, Double> terminals,
        Map<String, Conductor> conductors, Map<String, Load> loads, Map<String, Protector> protectors,
        Map<String, Double> sources, Map<String, Strap> bonds, Map<String, Strap> seams, Map<String, Double> contacts,
        Map<String, Double> bodies, Map<String, Double> waiting, Set<String> closed) {
    public CaseView {
        terminals = Map.copyOf(terminals);
        conductors = Map.copyOf(conductors);
        loads = Map.copyOf(loads);
        protectors = Map.copyOf(protectors);
        sources = Map.copyOf(sources);
        bonds = Map.copyOf(bonds);
        seams = Map.copyOf(seams);
        contacts = Map.copyOf(contacts);
        bodies = Map.copyOf(bodies);
        waiting = Map.copyOf(waiting);
        closed = Set.copyOf(closed);
    }

    /**
     * A core.
     *
     * @param amps         current from a to b, A
     * @param dropV        voltage lost with the joints at its ends, V, without sign
     * @param temperatureC temperature of the conductor, degrees Celsius
     * @param ratingA      Iz in the case, A; NaN without a table
     */
    public record Conductor(double amps, double dropV, double temperatureC, double ratingA) {
        /** Current over rating. */
        public double loadShare() {
            return StrictMath.abs(amps) / ratingA;
        }
    }

    /**
     * A load that is on.
     *
     * @param volts     voltage at its terminals, everything included, V
     * @param amps      current, A
     * @param dropV     drop after the definition of the design, V; NaN where it is not supplied or in no domain
     * @param dropShare drop over nominal voltage; NaN likewise
     * @param limit     permitted share; NaN likewise
     */
    public record Load(double volts, double amps, double dropV, double dropShare, double limit) {
    }

    /**
     * A protective device.
     *
     * @param amps    heating current, A
     * @param ratingA rating at its ambient, A
     */
    public record Protector(double amps, double ratingA) {
        /** Current over rating. */
        public double loadShare() {
            return amps / ratingA;
        }
    }

    /**
     * A strap or seam.
     *
     * @param amps  current from a to b, A
     * @param dropV voltage lost, V, without sign
     */
    public record Strap(double amps, double dropV) {
    }

    static CaseView of(CheckContext context, SolvedCase solved) {
        return new CaseReader(context, solved).read();
    }

    /** True when the case has an operating point; the figures of others say little. */
    public boolean settled() {
        return status == OperatingPoint.Status.SOLVED;
    }

    /** An empty map that keeps its order while it is filled. */
    static <V> Map<String, V> filling() {
        return new LinkedHashMap<>();
    }
}
