// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Run;

/**
 * Where something is.
 *
 * @param place place; null when it is on a run or nowhere
 * @param run   run; null when it is at a place or nowhere
 * @param atMm  distance from the run's first place, mm; null at a place
 */
public record Spot(Place place, Run run, BigDecimal atMm) {
    /** Nobody says where. */
    public static final Spot NOWHERE = new Spot(null, null, null);
    private static final int DEEPEST = 100;

    /** At a place. */
    static Spot at(Place place) {
        return place == null ? NOWHERE : new Spot(place, null, null);
    }

    /** True when it is known. */
    public boolean known() {
        return place != null || run != null;
    }

    /**
     * Where a device is in an arrangement: the arrangement's own word comes first; what is mounted in another is where that is.
     *
     * @param arrangement null for what all arrangements share
     */
    public static Spot of(Device device, Arrangement arrangement) {
        Device seat = device;
        for (int depth = 0; seat != null && depth < DEEPEST; depth++) {
            Placement own = placement(seat, arrangement);
            if (own != null) {
                return at(own.getPlace());
            }
            if (seat.getPlace() != null) {
                return at(seat.getPlace());
            }
            if (seat.getRun() != null) {
                return new Spot(null, seat.getRun(), seat.getAtMm() == null ? BigDecimal.ZERO : seat.getAtMm());
            }
            seat = seat.getMountedIn();
        }
        return NOWHERE;
    }

    /** Where an end of a core is. */
    static Spot of(WireEnd end, Arrangement arrangement) {
        if (end instanceof WireEnd.Pin pin) {
            return of(pin.device(), arrangement);
        }
        EarthPoint point = end instanceof WireEnd.Earth earth ? earth.point() : null;
        return point == null ? NOWHERE : at(point.getPlace());
    }

    /** The arrangement's own word on where a shared device is; null when it has none. */
    static Placement placement(Device device, Arrangement arrangement) {
        return arrangement == null ? null
                : arrangement.getPlacements().stream().filter(each -> each.getDevice() == device).findFirst().orElse(null);
    }
}
