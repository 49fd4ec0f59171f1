// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Vehicle;

/** Edits that join ends by cables, and fix ends elsewhere. What may be joined is judged by {@link Connections}. */
public final class ConnectEdits {
    private ConnectEdits() {
    }

    /**
     * Joins two ends by a new cable in an arrangement, named by the first free number. Its section is left to be sized.
     *
     * @param arrangement null for a cable that all arrangements share
     * @param part        null for the single-core cable used most, there or in the vehicle, else the first of the libraries
     * @throws IllegalArgumentException when the ends may not be joined, or there is no single-core cable
     */
    public static Cable connect(Vehicle vehicle, Arrangement arrangement, WireEnd a, WireEnd b, CablePart part) {
        Connections.Answer answer = Connections.of(vehicle, arrangement).between(a, b);
        if (!answer.possible()) {
            throw new IllegalArgumentException(answer.text());
        }
        EObject holder = arrangement == null ? vehicle : arrangement;
        CablePart chosen = part == null ? usual(vehicle, arrangement) : part;
        return WiringEdits.addCable(holder, NewNames.unshadowed(holder, "W"), chosen, a.attachment(), b.attachment());
    }

    /**
     * Fixes an end of a core elsewhere. The end part and the place in the stack belonged to the old end and go; a measured length
     * no longer holds and goes too. A path that a person fixed stays.
     *
     * @throws IllegalArgumentException when the two ends may not be joined
     */
    public static void reconnect(Vehicle vehicle, Arrangement arrangement, Core core, CoreEnd end, WireEnd to) {
        WireEnd kept = WireEnd.of(end.other().of(core));
        if (kept != null) {
            Connections.Answer answer = Connections.of(vehicle, arrangement).between(kept, to, core);
            if (!answer.possible()) {
                throw new IllegalArgumentException(answer.text());
            }
        }
        if (WireEnd.of(end.of(core)) != null && WireEnd.of(end.of(core)).equals(to)) {
            return;
        }
        Scopes.require(to, "terminal or earth point");
        Scopes.requireVisible(core, to instanceof WireEnd.Pin pin ? pin.device() : ((WireEnd.Earth) to).point());
        VehicleEdits.disconnect(core, end);
        VehicleEdits.connect(core, end, to.attachment());
        if (core.eContainer() instanceof Cable cable && cable.getLengthMm() != null) {
            cable.setLengthMm(null);
        }
    }

    /** The single-core cable that is used most. */
    static CablePart usual(Vehicle vehicle, Arrangement arrangement) {
        Map<CablePart, Integer> uses = new LinkedHashMap<>();
        Stream<Cable> own = arrangement == null ? Stream.of() : arrangement.getCables().stream();
        List<Cable> all = Stream.concat(own, vehicle.getCables().stream()).toList();
        all.stream().map(Cable::getPart).filter(part -> part != null && !part.eIsProxy() && single(part))
                .forEach(part -> uses.merge(part, 1, Integer::sum));
        CablePart most = null;
        for (Map.Entry<CablePart, Integer> each : uses.entrySet()) {
            most = most == null || each.getValue() > uses.get(most) ? each.getKey() : most;
        }
        return most != null ? most : new WrittenParts(vehicle).cables().stream().filter(ConnectEdits::single).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the vehicle's libraries have no single-core cable"));
    }

    private static boolean single(CablePart part) {
        return part.getCores() == null || part.getCores() == 1;
    }
}
