// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.VehiclePackage;

/** The places where a vehicle names elements by fragment: waivers and items of sheets. They follow when names change. */
final class FragmentTexts {
    /** One such place. */
    record Mention(EObject holder, EAttribute attribute, EObject target) {
    }

    private final List<Mention> mentions = new ArrayList<>();

    private FragmentTexts() {
    }

    /** Looks up all of them; those that mean nothing are left alone. */
    static FragmentTexts of(EObject anyElement) {
        FragmentTexts texts = new FragmentTexts();
        if (EcoreUtil.getRootContainer(anyElement) instanceof Vehicle vehicle) {
            vehicle.getWaivers().forEach(waiver ->
                    texts.add(vehicle, waiver, VehiclePackage.Literals.WAIVER__ELEMENT, waiver.getElement()));
            for (Sheet sheet : vehicle.getSheets()) {
                sheet.getItems().forEach(item ->
                        texts.add(vehicle, item, VehiclePackage.Literals.SHEET_ITEM__ELEMENT, item.getElement()));
            }
        }
        return texts;
    }

    List<Mention> mentions() {
        return mentions;
    }

    /** Writes each fragment anew where it has changed. */
    void rewrite() {
        for (Mention mention : mentions) {
            String fragment = Fragments.of(mention.target());
            boolean both = EcoreUtil.getRootContainer(mention.holder()) == EcoreUtil.getRootContainer(mention.target());
            if (both && !fragment.equals(mention.holder().eGet(mention.attribute()))) {
                mention.holder().eSet(mention.attribute(), fragment);
            }
        }
    }

    private void add(Vehicle vehicle, EObject holder, EAttribute attribute, String fragment) {
        EObject target = fragment == null || fragment.isEmpty() ? null : Fragments.find(vehicle, fragment);
        if (target != null && target != vehicle) {
            mentions.add(new Mention(holder, attribute, target));
        }
    }
}
