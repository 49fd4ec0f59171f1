// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.rules;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Named;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Way;

/** What holds for a device: where it is, that its ways and settings exist in its part, that its protectors fit. */
final class DeviceRules {
    private DeviceRules() {
    }

    static void check(Device device, Consumer<Violation> found) {
        place(device, found);
        DevicePart part = device.getPart();
        if (part == null || part.eIsProxy()) {
            return;
        }
        for (Way way : device.getWays()) {
            way(part, way, found);
        }
        for (Setting setting : device.getSettings()) {
            setting(part, setting, found);
        }
    }

    private static void place(Device device, Consumer<Violation> found) {
        int places = (device.getPlace() != null ? 1 : 0) + (device.getRun() != null ? 1 : 0)
                + (device.getMountedIn() != null ? 1 : 0);
        if (places != 1) {
            found.accept(Violation.blocking("device-place", device, "place",
                    places == 0 ? "it is nowhere" : "it is in " + places + " places at once",
                    "exactly one of place, run (with atMm) and mountedIn"));
        }
        Set<Device> seen = new HashSet<>();
        for (Device at = device; at != null; at = at.getMountedIn()) {
            if (!seen.add(at)) {
                found.accept(Violation.blocking("device-mounting", device, "mountedIn", "it is mounted in itself in the end",
                        "a device that has a place"));
                return;
            }
        }
    }

    private static void way(DevicePart part, Way way, Consumer<Violation> found) {
        WaySpec spec = part.getWays().stream().filter(each -> each.getName() != null && each.getName().equals(way.getName()))
                .findFirst().orElse(null);
        if (spec == null) {
            found.accept(Violation.blocking("way-unknown", way, "name",
                    part.getName() + " has no way " + way.getName(), "one of " + names(part.getWays())));
            return;
        }
        if (way.getProtector() == null || way.getProtector().eIsProxy() || spec.getForms() == null) {
            return;
        }
        if (Boolean.TRUE.equals(way.getSpare())) {
            found.accept(Violation.notice("way-spare", way, "spare", "a spare way with a protector fitted",
                    "a spare way without one"));
        }
        String form = way.getProtector().getForm();
        if (!Arrays.asList(spec.getForms().trim().split("\\s+")).contains(form)) {
            found.accept(Violation.blocking("way-form", way, "protector",
                    way.getProtector().getName() + " of form " + form + " does not fit", spec.getForms()));
        }
    }

    private static void setting(DevicePart part, Setting setting, Consumer<Violation> found) {
        if (setting.getElement() == null || setting.getQuantity() == null) {
            return;
        }
        EObject element = part.eContents().stream()
                .filter(each -> each instanceof Named named && setting.getElement().equals(named.getName())
                        && !(each instanceof WaySpec))
                .findFirst().orElse(null);
        if (element == null) {
            found.accept(Violation.blocking("setting-element", setting, "element",
                    part.getName() + " has no element " + setting.getElement(), "the name of one of its elements"));
            return;
        }
        EStructuralFeature feature = element.eClass().getEStructuralFeature(setting.getQuantity());
        if (feature == null || feature.getEAnnotation(StructureRules.RANGE) == null) {
            found.accept(Violation.blocking("setting-quantity", setting, "quantity",
                    "a " + Names.kind(element) + " has no number " + setting.getQuantity(), "for example "
                            + element.eClass().getEAllAttributes().stream()
                                    .filter(each -> each.getEAnnotation(StructureRules.RANGE) != null)
                                    .map(EStructuralFeature::getName).limit(4)
                                    .collect(java.util.stream.Collectors.joining(", "))));
        }
    }

    private static String names(java.util.List<? extends Named> all) {
        return all.stream().map(Named::getName).collect(java.util.stream.Collectors.joining(", "));
    }
}
