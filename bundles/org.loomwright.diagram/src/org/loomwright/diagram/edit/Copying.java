// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.edit;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.loomwright.model.edits.Pasting;
import org.loomwright.model.edits.Spot;
import org.loomwright.model.edits.WiringFragment;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.Place;
import org.loomwright.model.vehicle.Way;

/** Copies of devices and cables. */
final class Copying {
    private final Drawn drawn;

    Copying(Drawn drawn) {
        this.drawn = drawn;
    }

    /** A copy of what is selected; a way stands for its box. */
    WiringFragment clip(Collection<String> ids) {
        Set<EObject> elements = new LinkedHashSet<>();
        drawn.elements(ids, EObject.class).forEach(element ->
                elements.add(element instanceof Way ? element.eContainer() : element));
        return WiringFragment.of(drawn.vehicle(), drawn.arrangement(), elements);
    }

    /** Adds a copy; devices go to the place selected, or to that of the device selected. */
    Outcome paste(WiringFragment fragment, String target) {
        EObject selected = drawn.element(target);
        Place place = selected instanceof Place own ? own
                : selected instanceof Device device && drawn.view().toScale()
                        ? Spot.of(device, drawn.arrangement()).place() : null;
        Pasting pasting = Pasting.of(fragment, drawn.vehicle(), drawn.arrangement(), place);
        Set<String> ids = new LinkedHashSet<>();
        pasting.added().forEach(element -> ids.add(Fragments.of(element)));
        return new Outcome(ids, pasting.told().stream().toList());
    }
}
