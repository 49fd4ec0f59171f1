// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.loomwright.model.parts.DevicePart;
import org.loomwright.model.parts.Named;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Setting;

/** The one figure by which people tell a device: what a battery holds, a load draws, a converter gives, a relay carries. */
final class Figures {
    private final DevicePart part;
    private final List<Setting> settings;

    private Figures(DevicePart part, List<Setting> settings) {
        this.part = part;
        this.settings = settings;
    }

    /** Of a part; null where it has no such figure or more than one. */
    static String of(DevicePart part) {
        return part == null || part.eIsProxy() ? null : new Figures(part, List.of()).text();
    }

    /** Of a device, whose settings go before what its part says. */
    static String of(Device device) {
        DevicePart part = device.getPart();
        return part == null || part.eIsProxy() ? null : new Figures(part, device.getSettings()).text();
    }

    private String text() {
        if (!part.getWays().isEmpty()) {
            return part.getWays().size() == 1 ? null : part.getWays().size() + " ways";
        }
        String text = one(part.getCells(), "capacityAh", cell -> cell.getCapacityAh(), "Ah");
        text = text != null ? text : one(part.getConverters(), "limitA", converter -> converter.getLimitA(), "A");
        text = text != null ? text : one(part.getRegulators(), "limitA", source -> source.getLimitA(), "A");
        text = text != null ? text : one(part.getDemands(), "watts", demand -> demand.getWatts(), "W");
        text = text != null ? text : one(part.getDemands(), "amps", demand -> demand.getAmps(), "A");
        return text != null ? text : one(part.getContacts(), "continuousA", contact -> contact.getContinuousA(), "A");
    }

    private <E extends Named> String one(List<E> elements, String quantity, Function<E, BigDecimal> figure, String unit) {
        return elements.size() == 1 ? LabelText.quantity(set(elements.get(0), quantity, figure), unit) : null;
    }

    private <E extends Named> BigDecimal set(E element, String quantity, Function<E, BigDecimal> figure) {
        return settings.stream()
                .filter(setting -> Objects.equals(setting.getElement(), element.getName())
                        && quantity.equals(setting.getQuantity()) && setting.getValue() != null)
                .map(Setting::getValue).findFirst().orElseGet(() -> figure.apply(element));
    }
}
