// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.loomwright.model.files.ElementPath;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.Way;

/** Edits of the ways of boxes and holders. */
public final class BoxEdits {
    private BoxEdits() {
    }

    /**
     * Fits a protector in a way, instead of what was fitted; a reserved way is no longer reserved. A way that was not in use
     * is listed where the part's order puts it.
     *
     * @param box       the device
     * @param way       name of the way in the device's part
     * @param protector the protector; null empties the way
     * @param by        who chooses the rating: a study may not change what a person chose, nor the base vehicle
     * @throws IllegalArgumentException when the part has no such way or the protector does not fit it
     */
    public static void fitProtector(Device box, String way, ProtectorPart protector, ChosenBy by) {
        WaySpec spec = spec(box, way);
        Way known = find(box, way);
        if (by == ChosenBy.SIZING) {
            refuseStudy(box, known);
        }
        if (protector == null) {
            box.getWays().remove(known);
            return;
        }
        if (spec != null && spec.getForms() != null && !spec.getForms().isBlank()
                && !Arrays.asList(spec.getForms().trim().split("\\s+")).contains(protector.getForm())) {
            throw new IllegalArgumentException(protector.getName() + " (" + protector.getForm() + ") does not fit way " + way
                    + " of the " + ElementPath.of(box) + ", which takes " + spec.getForms().trim());
        }
        Way used = known == null ? add(box, way) : known;
        used.setProtector(protector);
        used.setRatingBy(by);
        if (used.getSpare() != null) {
            used.setSpare(null);
        }
    }

    /** Reserves a way for later; a protector fitted in it is taken out. */
    public static void reserveWay(Device box, String way) {
        spec(box, way);
        Way known = find(box, way);
        Way used = known == null ? add(box, way) : known;
        if (used.getProtector() != null) {
            used.setProtector(null);
        }
        if (used.isSetRatingBy()) {
            used.unsetRatingBy();
        }
        used.setSpare(Boolean.TRUE);
    }

    private static WaySpec spec(Device box, String way) {
        DevicePart part = box.getPart();
        if (part == null) {
            throw new IllegalArgumentException("the " + ElementPath.of(box) + " has no part yet, so its ways are not known");
        }
        return part.getWays().stream().filter(spec -> Objects.equals(spec.getName(), way)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the " + ElementPath.of(box) + " has no way " + way
                        + (part.getWays().isEmpty() ? "; its part " + part.getName() + " has none" : "; there are "
                        + String.join(", ", part.getWays().stream().map(Named::getName).filter(Objects::nonNull).toList()))));
    }

    private static Way find(Device box, String way) {
        return box.getWays().stream().filter(w -> Objects.equals(w.getName(), way)).findFirst().orElse(null);
    }

    private static Way add(Device box, String name) {
        List<String> order = box.getPart().getWays().stream().map(Named::getName).toList();
        int at = 0;
        while (at < box.getWays().size() && order.indexOf(box.getWays().get(at).getName()) < order.indexOf(name)) {
            at++;
        }
        Way way = VehicleFactory.eINSTANCE.createWay();
        way.setName(name);
        box.getWays().add(at, way);
        return way;
    }

    private static void refuseStudy(Device box, Way way) {
        if (way != null && way.getProtector() != null && way.isSetRatingBy() && way.getRatingBy() == ChosenBy.PERSON) {
            throw new IllegalArgumentException("the rating of way " + way.getName() + " of the " + ElementPath.of(box)
                    + " was chosen by a person");
        }
        if (Boolean.TRUE.equals(box.getExisting())) {
            throw new IllegalArgumentException("the " + ElementPath.of(box) + " belongs to the base vehicle");
        }
    }
}
