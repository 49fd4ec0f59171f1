// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import java.math.BigDecimal;
import java.util.Objects;
import org.loomwright.model.vehicle.Body;
import org.loomwright.model.vehicle.BodyLink;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.BondCondition;
import org.loomwright.model.vehicle.Domain;
import org.loomwright.model.vehicle.Duct;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Passage;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.Zone;

/** Labels of a vehicle and of what it is made of. */
final class StructureLabels {
    private static final String EXISTING = "existing";

    private StructureLabels() {
    }

    /** {@code otter  Otter, small 4x4}. */
    static String of(Vehicle vehicle) {
        return new LabelText(vehicle.getName()).add(vehicle.getLabel() == null ? vehicle.getKind() : vehicle.getLabel()).text();
    }

    /** {@code house  12 V of the load bed, -G10:30}. */
    static String of(Domain domain) {
        return new LabelText(domain.getName()).add(domain.getLabel()).add(domain.getNominalV(), "V")
                .add(Designated.at(domain.getSource())).text();
    }

    /** {@code roof  Roof and rack, -30 to 65 degC, IP54}. */
    static String of(Zone zone) {
        return new LabelText(zone.getName()).add(zone.getLabel())
                .add(LabelText.range(zone.getAmbientMinC(), zone.getAmbientMaxC(), "degC")).add(zone.getWetness()).text();
    }

    /** {@code dash  Dashboard, x 2700, y 300, z 1050 mm, in-cab}. */
    static String of(Place place) {
        boolean known = place.getXMm() != null || place.getYMm() != null || place.getZMm() != null;
        return new LabelText(place.getName()).add(place.getLabel()).add(known ? "x " + plain(place.getXMm()) + ", y "
                + plain(place.getYMm()) + ", z " + plain(place.getZMm()) + " mm" : null).add(Designated.name(place.getZone()))
                .text();
    }

    private static String plain(BigDecimal number) {
        return number == null ? "0" : number.toPlainString();
    }

    /** {@code frame  Frame, steel, 0.1 mohm}. */
    static String of(Body body) {
        return new LabelText(body.getName()).add(body.getLabel()).add(body.getMaterial()).add(body.getMilliohm(), "mohm").text();
    }

    /** {@code R7  start-battery / alternator, 0.80 m}. */
    static String of(Run run) {
        return new LabelText(run.getName()).add(run.getLabel())
                .add(Designated.between(Designated.name(run.getFrom()), Designated.name(run.getTo())))
                .add(LabelText.metres(run.getLengthMm())).text();
    }

    /** {@code D2  Channel along the left wall, channel-60x40, R25 R26}. */
    static String of(Duct duct) {
        return new LabelText(duct.getName()).add(duct.getLabel()).add(Designated.name(duct.getPart()))
                .add(String.join(" ", duct.getRuns().stream().map(Designated::name).filter(Objects::nonNull).toList()))
                .addIf(duct.getExisting(), EXISTING).text();
    }

    /** {@code P10  gland-m16, back wall of the cab, R19 at 40 mm}. */
    static String of(Passage passage) {
        String run = Designated.name(passage.getRun());
        return new LabelText(passage.getName()).add(passage.getLabel()).add(Designated.name(passage.getPart()))
                .add(passage.getPanel())
                .add(run == null || passage.getAtMm() == null ? run : run + " at " + LabelText.quantity(passage.getAtMm(), "mm"))
                .text();
    }

    /** {@code seam  frame / shell, 0.2 mohm}. */
    static String of(BodyLink link) {
        return new LabelText(link.getName()).add(link.getLabel())
                .add(Designated.between(Designated.name(link.getA()), Designated.name(link.getB())))
                .add(link.getMilliohm(), "mohm").text();
    }

    /** {@code -XE8  Stud behind the seat, shell, M8}. */
    static String of(EarthPoint point) {
        return new LabelText(Designated.of(point)).add(point.getLabel()).add(Designated.name(point.getBody()))
                .add(point.getStudMm() == null ? null : "M" + point.getStudMm().toPlainString())
                .addIf(point.getExisting(), EXISTING).text();
    }

    /** {@code -WE3  Hardtop strap, -XE9 / -XE10, strap-16, 350 mm}; a bolted joint says so. */
    static String of(Bond bond) {
        return new LabelText(Designated.of(bond)).add(bond.getLabel())
                .add(Designated.between(Designated.of(bond.getA()), Designated.of(bond.getB())))
                .add(bond.getPart() == null ? "bolted joint" : Designated.name(bond.getPart())).add(bond.getLengthMm(), "mm")
                .add(bond.getMilliohm(), "mohm")
                .add(bond.isSetCondition() && bond.getCondition() != BondCondition.GOOD ? bond.getCondition() : null)
                .addIf(bond.getExisting(), EXISTING).text();
    }
}
