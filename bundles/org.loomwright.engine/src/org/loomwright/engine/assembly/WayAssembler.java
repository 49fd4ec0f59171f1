// SPDX-License-Identifier: EPL-2.0
package org.loomwright.engine.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.loomwright.engine.assembly.Catalogue.ProtectorType;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.WaySpec;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Way;

/** Puts protectors into the ways of boxes. A way without protector, and a spare one, conducts nothing; the former is noted. */
final class WayAssembler {
    private final TerminalTable terminals;
    private final AssemblyScope scope;
    private final List<Plan.Element> elements;
    private final List<EmptyWay> empty = new ArrayList<>();
    private final Map<DevicePart, Map<String, WaySpec>> ways = new IdentityHashMap<>();

    WayAssembler(TerminalTable terminals, AssemblyScope scope, List<Plan.Element> elements) {
        this.terminals = terminals;
        this.scope = scope;
        this.elements = elements;
    }

    /** Ways in which nothing is fitted so far. */
    List<EmptyWay> empty() {
        return empty;
    }

    /** The ways of one device. */
    void addAll(int device, String deviceId, Device owner) {
        Set<String> taken = new HashSet<>();
        for (Way way : owner.getWays()) {
            if (way.getProtector() != null || Decimals.yes(way.getSpare())) {
                taken.add(way.getName());
            }
            if (way.getProtector() != null && !way.getProtector().eIsProxy() && !Decimals.yes(way.getSpare())) {
                add(device, deviceId + "/" + way.getName(), way, owner.getPart());
            }
        }
        for (WaySpec spec : owner.getPart() == null ? List.<WaySpec>of() : owner.getPart().getWays()) {
            if (!taken.contains(spec.getName())) {
                addEmpty(device, deviceId + "/" + spec.getName(), spec);
            }
        }
    }

    private void addEmpty(int device, String id, WaySpec spec) {
        int from = terminals.of(device, spec.getFrom());
        int out = terminals.of(device, spec.getOut());
        if (from < 0 || out < 0) {
            return;
        }
        String takes = spec.getForms() == null ? "" : spec.getForms().trim();
        ProtectorType first = Arrays.stream(takes.split("\\s+")).map(scope.parts()::smallest).filter(Objects::nonNull)
                .findFirst().orElse(null);
        double seatOhm = Decimals.thousandth(spec.getMilliohm());
        empty.add(new EmptyWay(id, takes, new Plan.Protector(id, device, from, out, id, null,
                first == null ? "fuse" : first.kind(), first == null ? null : first.form(),
                Double.NaN, Double.NaN, Double.NaN, scope.ohms("protector.cold"),
                seatOhm > 0 ? seatOhm : 0, Decimals.of(spec.getCurrentMaxA()), null, true,
                first == null ? List.of() : first.alike())));
    }

    private void add(int device, String id, Way way, DevicePart part) {
        WaySpec spec = ways.computeIfAbsent(part, WayAssembler::byName).get(way.getName());
        if (spec == null) {
            scope.problems().add(id, "part " + part.getName() + " has no way " + way.getName() + "; expected one of "
                    + String.join(", ", part.getWays().stream().map(WaySpec::getName).toList()));
            return;
        }
        int from = terminals.of(device, spec.getFrom());
        int out = terminals.of(device, spec.getOut());
        if (from < 0 || out < 0) {
            scope.problems().add(id, "way " + way.getName() + " of part " + part.getName()
                    + " does not say from which terminal to which outlet it leads");
            return;
        }
        ProtectorType fitted = scope.parts().protector(way.getProtector());
        if (Double.isNaN(fitted.ratingA())) {
            scope.problems().add(id, "part " + fitted.name() + " states no ratingA; what it protects cannot be judged");
        }
        double seatOhm = Decimals.thousandth(spec.getMilliohm());
        elements.add(new Plan.Protector(id, device, from, out, id, fitted.name(), fitted.kind(), fitted.form(),
                fitted.ratingA(), fitted.ratedV(), fitted.breakingA(),
                fitted.ohm() > 0 ? fitted.ohm() : scope.ohms("protector.cold"), seatOhm > 0 ? seatOhm : 0,
                Decimals.of(spec.getCurrentMaxA()), fitted.curve(),
                way.isSetRatingBy() && way.getRatingBy() == ChosenBy.SIZING, fitted.alike()));
    }

    private static Map<String, WaySpec> byName(DevicePart part) {
        Map<String, WaySpec> byName = new HashMap<>();
        part.getWays().forEach(spec -> byName.putIfAbsent(spec.getName(), spec));
        return byName;
    }
}
