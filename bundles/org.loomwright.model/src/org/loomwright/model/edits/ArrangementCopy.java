// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.loomwright.model.files.Fragments;
import org.loomwright.model.vehicle.Arrangement;
import org.loomwright.model.vehicle.ArrangementStatus;
import org.loomwright.model.vehicle.Sheet;
import org.loomwright.model.vehicle.SheetItem;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Copies of arrangements to try something else. References within the copy point to its own elements, references to what all
 * arrangements share stay. Its drawings are copied too. Accepted findings and readings are not: they were about the original.
 */
public final class ArrangementCopy {
    private ArrangementCopy() {
    }

    /**
     * Copies an arrangement within its vehicle as a draft, last in the list.
     *
     * @param name name of the copy
     * @throws IllegalArgumentException when it is no name, or taken
     */
    public static Arrangement copy(Arrangement source, String name) {
        Vehicle vehicle = Scopes.vehicle(source);
        NewNames.check(vehicle, null, name);
        List<Sheet> sheets = vehicle.getSheets().stream().filter(sheet -> sheet.getArrangement() == source).toList();
        Map<SheetItem, EObject> drawn = drawnElements(vehicle, sheets);
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Arrangement copy = (Arrangement) copier.copy(source);
        List<Sheet> drawings = sheets.stream().map(sheet -> (Sheet) copier.copy(sheet)).toList();
        copier.copyReferences();
        copy.setName(name);
        copy.setBasedOn(source);
        copy.setStatus(ArrangementStatus.DRAFT);
        vehicle.getArrangements().add(copy);
        for (int i = 0; i < drawings.size(); i++) {
            Sheet drawing = drawings.get(i);
            drawing.setName(free(vehicle, name, sheets.get(i)));
            vehicle.getSheets().add(drawing);
        }
        drawn.forEach((item, element) -> repoint((SheetItem) copier.get(item), copier.get(element)));
        return copy;
    }

    private static String free(Vehicle vehicle, String arrangement, Sheet sheet) {
        String kind = sheet.isSetDiagram() ? sheet.getDiagram().getLiteral() : "sheet";
        return NewNames.free(vehicle, arrangement + "-" + kind + "-");
    }

    /** Also makes the terminals that are drawn, so that they are copied. */
    private static Map<SheetItem, EObject> drawnElements(Vehicle vehicle, List<Sheet> sheets) {
        Map<SheetItem, EObject> drawn = new LinkedHashMap<>();
        for (Sheet sheet : sheets) {
            for (SheetItem item : sheet.getItems()) {
                EObject element = item.getElement() == null ? null : Fragments.find(vehicle, item.getElement());
                if (element != null) {
                    drawn.put(item, element);
                }
            }
        }
        return drawn;
    }

    private static void repoint(SheetItem item, EObject copiedElement) {
        if (copiedElement != null) {
            item.setElement(Fragments.of(copiedElement));
        }
    }
}
