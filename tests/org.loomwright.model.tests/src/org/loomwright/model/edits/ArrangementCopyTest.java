// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Iterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.vehicle.Arrangement;

/** Copies stand on their own: they refer to their own elements and to what is shared, never to the original's. */
class ArrangementCopyTest {
    @TempDir
    Path folder;
    private OpenFleet fleet;

    @BeforeEach
    void open() {
        fleet = new OpenFleet(folder);
    }

    @Test
    void copyIsWrittenLikeTheOriginal() {
        String original = section(fleet.saved(), "central");
        fleet.edit(() -> ArrangementCopy.copy(fleet.arrangement("central"), "trial"));
        assertEquals(original, section(fleet.saved(), "central"), "the original is as before");
        assertEquals(original.replace("name=\"central\" status=\"adopted\"",
                        "name=\"trial\" basedOn=\"central\" status=\"draft\""),
                section(fleet.saved(), "trial"));
    }

    private static String section(String text, String name) {
        int from = text.indexOf("<arrangements name=\"" + name + "\"");
        return text.substring(from, text.indexOf("</arrangements>", from));
    }

    @Test
    void nothingOfTheCopyRefersToTheOriginal() {
        Arrangement original = fleet.arrangement("central");
        Arrangement copy = ArrangementCopy.copy(original, "trial");
        assertSame(original, copy.getBasedOn());
        copy.setBasedOn(null);
        for (Iterator<EObject> all = copy.eAllContents(); all.hasNext();) {
            EObject object = all.next();
            for (EReference reference : object.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isMany() && object.eGet(reference) instanceof EObject target) {
                    for (EObject at = target; at != null; at = at.eContainer()) {
                        assertTrue(at != original, () -> object + " " + reference.getName());
                    }
                }
            }
        }
    }

    @Test
    void drawingsAreCopiedWithTheirElements() {
        fleet.vehicle().getSheets().get(0).getItems().get(0).setElement("central/F1.30");
        fleet.edit(() -> ArrangementCopy.copy(fleet.arrangement("central"), "trial"));
        assertTrue(fleet.saved().contains("""
                  <sheets name="trial-line-1" diagram="line" arrangement="trial">
                    <items element="trial/F1.30" x="10" y="20"/>
                    <items element="trial/F1" x="30" y="20"/>
                    <items element="trial/W1/RD" x="0" y="0" bends="10,20 30,20"/>
                    <items element="parked/@demands.1" x="5" y="5"/>
                  </sheets>
                """), fleet.saved());
        assertEquals(2, fleet.vehicle().getWaivers().size(), "accepted findings were about the original");
    }

    @Test
    void copyOfACopyAndDeletionOfTheOriginal() {
        Arrangement copy = ArrangementCopy.copy(fleet.arrangement("central"), "trial");
        fleet.edit(() -> ArrangementCopy.copy(copy, "trial-2"));
        fleet.edit(() -> VehicleEdits.delete(fleet.arrangement("central")));
        assertTrue(fleet.has("trial/W1/RD"));
        assertTrue(fleet.has("trial-2/W1/RD"));
    }

    @Test
    void refusesNamesThatAreTaken() {
        fleet.refuses("'spread' is already the name of an arrangement",
                () -> ArrangementCopy.copy(fleet.arrangement("central"), "spread"));
        fleet.refuses("is no name", () -> ArrangementCopy.copy(fleet.arrangement("central"), "a/b"));
    }
}
