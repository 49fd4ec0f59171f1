// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.loomwright.engine.flow.OperatingPoint;
import org.loomwright.engine.heat.ConductorRating;

/**
 * Which network of a case is wanted.
 *
 * @param variant  what the loads and sources do
 * @param ratings  rating of each conductor, from which it warms by its own current; null when all stay at their ambient
 * @param heldC    temperature at which each conductor is held, degrees Celsius, NaN for one that warms by its own current; null
 *                 for none held
 * @param held     solved network whose contacts stay as they are and whose conductor temperatures hold; null for none
 * @param leftOut  ids of elements, conductors, bonds, links and earth points that are not there
 */
public record NetworkOptions(Variant variant, List<ConductorRating> ratings, double[] heldC, Held held, Set<String> leftOut) {
    public NetworkOptions {
        leftOut = java.util.Collections.unmodifiableSet(new TreeSet<>(leftOut));
    }

    /** What the loads and sources do. */
    public enum Variant {
        /** As in the case, every load that is on at its running current. */
        RUNNING,
        /** As running, loads that are on only part of the time at their standby current. */
        BASE,
        /** Loads at nominal-voltage current from stiff sources, as the drop is defined. */
        DESIGN
    }

    /** A solved network of the same plan. */
    public record Held(CaseNetwork at, OperatingPoint point) {
    }

    /** The case as it runs. */
    public static NetworkOptions running(List<ConductorRating> ratings) {
        return new NetworkOptions(Variant.RUNNING, ratings, null, null, Set.of());
    }

    /** The drop's network, with contacts and conductor temperatures of a solved running network. */
    public static NetworkOptions design(CaseNetwork at, OperatingPoint point) {
        return new NetworkOptions(Variant.DESIGN, null, null, new Held(at, point), Set.of());
    }

    /** The same for another variant. */
    public NetworkOptions variant(Variant other) {
        return new NetworkOptions(other, ratings, heldC, held, leftOut);
    }

    /** The same with conductors held at temperatures, degrees Celsius; NaN for one that is not. */
    public NetworkOptions heldAt(double[] temperatureC) {
        return new NetworkOptions(variant, ratings, temperatureC.clone(), held, leftOut);
    }

    /** The same without one more thing, by its id. */
    public NetworkOptions without(String id) {
        Set<String> more = new TreeSet<>(leftOut);
        more.add(id);
        return new NetworkOptions(variant, ratings, heldC, held, more);
    }
}
