// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.edit.providers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IViewerNotification;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.loomwright.model.parts.CablePart;
import org.loomwright.model.parts.PartsFactory;
import org.loomwright.model.vehicle.Cable;
import org.loomwright.model.vehicle.Core;
import org.loomwright.model.vehicle.VehicleFactory;

/** Views are told when a label is another one, also where it names other objects. */
class LabelChangesTest {
    private final LoomwrightAdapterFactory factory = new LoomwrightAdapterFactory();
    private final List<IViewerNotification> told = new ArrayList<>();
    private final Cable cable = VehicleFactory.eINSTANCE.createCable();

    @BeforeEach
    void listen() {
        cable.setName("W1");
        label();
        factory.addListener(change -> told.add((IViewerNotification) change));
    }

    @AfterEach
    void dispose() {
        factory.dispose();
    }

    private String label() {
        return ((IItemLabelProvider) factory.adapt(cable, IItemLabelProvider.class)).getText(cable);
    }

    private boolean toldLabel() {
        boolean label = told.stream().anyMatch(change -> change.isLabelUpdate() && change.getElement() == cable);
        told.clear();
        return label;
    }

    @Test
    void attributesPartAndCores() {
        cable.setSectionMm2(new BigDecimal("2.50"));
        assertTrue(toldLabel());
        CablePart part = PartsFactory.eINSTANCE.createCablePart();
        part.setName("twin");
        cable.setPart(part);
        assertTrue(toldLabel());
        assertEquals("-W1  2.50 mm2 twin", label());
        cable.setPart(part);
        assertFalse(toldLabel());
        Core core = VehicleFactory.eINSTANCE.createCore();
        cable.getCores().add(core);
        assertTrue(told.stream().anyMatch(IViewerNotification::isContentRefresh));
        assertTrue(toldLabel());
    }

    @Test
    void oneProviderServesAllCables() {
        Cable other = VehicleFactory.eINSTANCE.createCable();
        assertSame(factory.adapt(cable, IItemLabelProvider.class), factory.adapt(other, IItemLabelProvider.class));
    }

    @Test
    void factoriesShareNothing() {
        LoomwrightAdapterFactory second = new LoomwrightAdapterFactory();
        second.dispose();
        cable.setName("W2");
        assertTrue(toldLabel());
        assertEquals("-W2  to be sized", label());
    }
}
