// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.loomwright.model.parts.StrapPart;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Vehicle;

/** Edits that join structure bodies by straps. */
public final class BondEdits {
    /** Straps are cut to steps of this length, mm. */
    private static final double STEP_MM = 50;

    private BondEdits() {
    }

    /**
     * Joins two earth points: by the strap used most, as long as the straight distance of their places, rounded up to 50 mm; by a
     * bolted joint where the places are not known or the same, or the libraries have no strap.
     *
     * @throws IllegalArgumentException when they may not be joined
     */
    public static Bond join(Vehicle vehicle, EarthPoint a, EarthPoint b) {
        requireJoint(vehicle, a, b);
        double straightMm = RunLengths.straightMm(a.getPlace(), b.getPlace());
        StrapPart strap = straightMm > 0 ? usual(vehicle) : null;
        Bond bond = WiringEdits.addBond(vehicle, NewNames.unshadowed(vehicle, "WE"), a, b, strap);
        if (strap != null) {
            bond.setLengthMm(BigDecimal.valueOf((long) (STEP_MM * StrictMath.ceil(straightMm / STEP_MM))));
        }
        return bond;
    }

    /** Joins two bodies, on earth points that carry no strap yet; each is added where there is none. */
    public static Bond join(Vehicle vehicle, Body a, Body b) {
        requireJoint(vehicle, a, b);
        return join(vehicle, free(vehicle, a), free(vehicle, b));
    }

    /** Fixes an end of a bond at another earth point. */
    public static void reconnect(Bond bond, CoreEnd end, EarthPoint to) {
        Scopes.require(to, "earth point");
        Scopes.requireVisible(bond, to);
        EarthPoint kept = end == CoreEnd.A ? bond.getB() : bond.getA();
        if (kept == to) {
            throw new IllegalArgumentException("a bond joins two earth points, not one with itself");
        }
        if (end == CoreEnd.A) {
            bond.setA(to);
        } else {
            bond.setB(to);
        }
    }

    /** Refuses to join what may not be joined; see {@link #join(Vehicle, EarthPoint, EarthPoint)}. */
    public static void requireJoint(Vehicle vehicle, EarthPoint a, EarthPoint b) {
        Scopes.require(a, "earth point");
        Scopes.require(b, "earth point");
        if (a == b) {
            throw new IllegalArgumentException("a strap joins two earth points, not " + a.getName() + " with itself");
        }
        if (a.getBody() != null && a.getBody() == b.getBody()) {
            throw new IllegalArgumentException(a.getName() + " and " + b.getName() + " are on one body, "
                    + a.getBody().getName());
        }
        vehicle.getBonds().stream().filter(bond -> bond.getA() == a && bond.getB() == b || bond.getA() == b && bond.getB() == a)
                .findFirst().ifPresent(bond -> {
                    throw new IllegalArgumentException("-" + bond.getName() + " joins " + a.getName() + " and " + b.getName()
                            + " already");
                });
    }

    /** Refuses to join what may not be joined; see {@link #join(Vehicle, Body, Body)}. */
    public static void requireJoint(Vehicle vehicle, Body a, Body b) {
        Scopes.require(a, "body");
        Scopes.require(b, "body");
        Scopes.requireVisible(vehicle, a);
        Scopes.requireVisible(vehicle, b);
        if (a == b) {
            throw new IllegalArgumentException("a strap joins two bodies, not " + a.getName() + " with itself");
        }
    }

    private static EarthPoint free(Vehicle vehicle, Body body) {
        return vehicle.getEarthPoints().stream().filter(point -> point.getBody() == body && vehicle.getBonds().stream()
                .noneMatch(bond -> bond.getA() == point || bond.getB() == point)).findFirst()
                .orElseGet(() -> StructureEdits.addEarthPoint(vehicle, body, null));
    }

    private static StrapPart usual(Vehicle vehicle) {
        Map<StrapPart, Integer> uses = new LinkedHashMap<>();
        vehicle.getBonds().stream().map(Bond::getPart).filter(part -> part != null && !part.eIsProxy())
                .forEach(part -> uses.merge(part, 1, Integer::sum));
        StrapPart most = null;
        for (Map.Entry<StrapPart, Integer> each : uses.entrySet()) {
            most = most == null || each.getValue() > uses.get(most) ? each.getKey() : most;
        }
        return most != null ? most : new WrittenParts(vehicle).straps().stream().findFirst().orElse(null);
    }
}
