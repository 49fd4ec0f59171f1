// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.util.Objects;
import org.loomwright.model.parts.ProtectorPart;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Placement;
import org.loomwright.model.vehicle.Return;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Terminal;
import org.loomwright.model.vehicle.Way;

/** Labels of arrangements, devices and cables. */
final class WiringLabels {
    private static final String EXISTING = "existing";

    private WiringLabels() {
    }

    /** {@code central  One box at the back, adopted}. */
    static String of(Arrangement arrangement) {
        return new LabelText(arrangement.getName()).add(arrangement.getLabel())
                .add(arrangement.isSetStatus() ? arrangement.getStatus() : null).text();
    }

    /** {@code -G10  LFP battery 200 Ah}: the device's own label, else its part's; then the figure people tell it by. */
    static String of(Device device) {
        String label = device.getLabel() != null || device.getPart() == null ? device.getLabel()
                : device.getPart().getLabel() != null ? device.getPart().getLabel() : Designated.name(device.getPart());
        return new LabelText(Designated.of(device)).add(label).add(Figures.of(device)).addIf(device.getExisting(), EXISTING)
                .text();
    }

    /** {@code M:  watts 65}. */
    static String of(Setting setting) {
        return new LabelText(setting.getElement() == null ? null : setting.getElement() + ":").addTo(setting.getQuantity())
                .addTo(setting.getValue() == null ? null : setting.getValue().toPlainString()).text();
    }

    /** {@code :3  15 A, blade-std-15}; {@code :4  spare}; {@code :5  empty}. */
    static String of(Way way) {
        ProtectorPart fitted = way.getProtector();
        boolean spare = Boolean.TRUE.equals(way.getSpare());
        return new LabelText(way.getName() == null ? null : ":" + way.getName()).add(way.getLabel())
                .add(fitted == null ? null : LabelText.quantity(fitted.getRatingA(), "A")).add(Designated.name(fitted))
                .add(spare ? "spare" : fitted == null ? "empty" : null).text();
    }

    /** {@code -X1:3}. */
    static String of(Terminal terminal) {
        return new LabelText(Designated.at(terminal)).add(terminal.getLabel()).text();
    }

    /** {@code -W12  2.5 mm2, 4.90 m twin-pvc}; the length where a person measured it, {@code to be sized} without section. */
    static String of(Cable cable) {
        LabelText text = new LabelText(Designated.of(cable)).add(cable.getLabel())
                .add(sectionOf(cable)).add(LabelText.metres(cable.getLengthMm()));
        String part = Designated.name(cable.getPart());
        return (part == null ? text : text.addTo(part)).addIf(cable.getExisting(), EXISTING).text();
    }

    private static String sectionOf(Cable cable) {
        if (cable.getSectionMm2() != null) {
            return LabelText.quantity(cable.getSectionMm2(), "mm2");
        }
        boolean byCores = !cable.getCores().isEmpty()
                && cable.getCores().stream().map(Core::getSectionMm2).allMatch(Objects::nonNull);
        return byCores ? null : "to be sized";
    }

    /** {@code RD  -X1:3 / -E4:L+}; the section where it is not the cable's. */
    static String of(Core core) {
        return new LabelText(core.getColour() == null ? core.getName() : core.getColour()).add(core.getLabel())
                .add(Designated.between(Designated.at(core.getA()), Designated.at(core.getB())))
                .add(core.getSectionMm2(), "mm2").addIf(core.getSpare(), "spare").text();
    }

    /** {@code -E4  at roof-front}. */
    static String of(Placement placement) {
        return new LabelText(Designated.of(placement.getDevice()))
                .add(placement.getPlace() == null ? null : "at " + Designated.name(placement.getPlace())).text();
    }

    /** {@code -E4  returns by own conductor}. */
    static String of(Return way) {
        String by = !way.isSetBy() ? null : switch (way.getBy()) {
            case OWN -> "returns by own conductor";
            case STRUCTURE -> "returns through the structure";
        };
        return new LabelText(Designated.of(way.getDevice())).add(by).text();
    }
}
