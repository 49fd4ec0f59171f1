// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.Bond;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.ChosenBy;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.EarthPoint;
import org.loomwright.model.vehicle.Setting;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehicleFactory;

/**
 * The single changes that findings propose, made on a person's word: elements are named by the ids that findings use. Each
 * refuses before it changes anything.
 */
public final class MendEdits {
    private MendEdits() {
    }

    /** Gives a cable another section, mm2; the choice counts as a person's. Ends that are named follow the section. */
    public static void useSection(Vehicle vehicle, String cable, double sectionMm2) {
        BigDecimal plain = BigDecimal.valueOf(sectionMm2).stripTrailingZeros();
        Cable of = new WiringIds(vehicle).cable(cable);
        WiringEdits.setSection(of, plain.scale() < 0 ? plain.setScale(0) : plain, ChosenBy.PERSON);
        new SectionEnds(vehicle).follow(of);
    }

    /**
     * Lays a cable of the same kind beside a cable, between the same terminals and along the same way; both share their current.
     *
     * @throws IllegalArgumentException when there is no such cable, or it belongs to the base vehicle
     */
    public static Cable addParallel(Vehicle vehicle, String cable) {
        Cable first = new WiringIds(vehicle).cable(cable);
        if (Boolean.TRUE.equals(first.getExisting())) {
            throw new IllegalArgumentException(cable + " belongs to the base vehicle");
        }
        first.getCores().stream().filter(core -> core.getParallelGroup() == null && !Boolean.TRUE.equals(core.getSpare()))
                .forEach(core -> core.setParallelGroup(first.getName()));
        Cable second = EcoreUtil.copy(first);
        second.setName(NewNames.unshadowed(first.eContainer(), "W"));
        List<Cable> all = first.eContainer() instanceof Arrangement arrangement ? arrangement.getCables() : vehicle.getCables();
        all.add(all.indexOf(first) + 1, second);
        return second;
    }

    /** Fits another protector in a way; the choice counts as a person's. */
    public static void fitProtector(Vehicle vehicle, String way, String protector) {
        BoxEdits.fitProtector(new WiringIds(vehicle).deviceOfWay(way), WiringIds.way(way),
                new WrittenParts(vehicle).protector(protector), ChosenBy.PERSON);
    }

    /**
     * Adds a strap between two bodies, on earth points that carry no strap yet where there are such.
     *
     * @param sectionMm2 least section; the thinnest strap of the libraries that has it is taken
     * @param lengthMm   length
     * @throws IllegalArgumentException when a body has no earth point, or there is no such strap
     */
    public static Bond addBond(Vehicle vehicle, String bodyA, String bodyB, double sectionMm2, double lengthMm) {
        EarthPoint a = earthPoint(vehicle, bodyA);
        EarthPoint b = earthPoint(vehicle, bodyB);
        Bond bond = WiringEdits.addBond(vehicle, NewNames.free(vehicle, "WE"), a, b,
                new WrittenParts(vehicle).strap(sectionMm2));
        if (lengthMm > 0) {
            bond.setLengthMm(BigDecimal.valueOf(StrictMath.rint(lengthMm)).setScale(0));
        }
        return bond;
    }

    private static EarthPoint earthPoint(Vehicle vehicle, String body) {
        List<EarthPoint> points = vehicle.getEarthPoints().stream()
                .filter(point -> point.getBody() != null && Objects.equals(point.getBody().getName(), body)).toList();
        return points.stream().filter(point -> vehicle.getBonds().stream()
                .noneMatch(bond -> bond.getA() == point || bond.getB() == point)).findFirst()
                .orElseGet(() -> points.stream().findFirst().orElseThrow(() -> new IllegalArgumentException(
                        "the body " + body + " has no earth point that a strap could be bolted to")));
    }

    /**
     * Sets one value of a device's element, beside what its part states.
     *
     * @param device   id of the device
     * @param element  name of the element in the part
     * @param quantity name of the value, for example setV
     */
    public static void setValue(Vehicle vehicle, String device, String element, String quantity, double value) {
        Device owner = new WiringIds(vehicle).deviceOfWay(device + "/" + element);
        if (owner.getPart() == null) {
            throw new IllegalArgumentException(device + " has no part yet, so its elements are not known");
        }
        BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
        Setting setting = owner.getSettings().stream().filter(each -> Objects.equals(each.getElement(), element)
                && Objects.equals(each.getQuantity(), quantity)).findFirst().orElse(null);
        if (setting == null) {
            setting = VehicleFactory.eINSTANCE.createSetting();
            setting.setElement(element);
            setting.setQuantity(quantity);
            owner.getSettings().add(setting);
        }
        setting.setValue(number.scale() < 0 ? number.setScale(0) : number);
    }
}
