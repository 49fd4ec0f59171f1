// SPDX-License-Identifier: EPL-2.0
package org.loomwright.model.provider;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.parts.PartsPackage;
import org.loomwright.model.parts.provider.PartsItemProviderAdapterFactory;
import org.loomwright.model.practice.PracticePackage;
import org.loomwright.model.practice.provider.PracticeItemProviderAdapterFactory;
import org.loomwright.model.vehicle.Device;
import org.loomwright.model.vehicle.VehicleFactory;
import org.loomwright.model.vehicle.VehiclePackage;
import org.loomwright.model.vehicle.provider.VehicleItemProviderAdapterFactory;

/** The generated item providers find their texts and icons, in OSGi as on a plain class path. */
class GeneratedLabelsTest {

    private final ComposedAdapterFactory factory = new ComposedAdapterFactory();

    @BeforeEach
    void addFactories() {
        factory.addAdapterFactory(new PartsItemProviderAdapterFactory());
        factory.addAdapterFactory(new PracticeItemProviderAdapterFactory());
        factory.addAdapterFactory(new VehicleItemProviderAdapterFactory());
    }

    @AfterEach
    void dispose() {
        factory.dispose();
    }

    static Stream<EClass> concreteClasses() {
        return Stream.of(PartsPackage.eINSTANCE, PracticePackage.eINSTANCE, VehiclePackage.eINSTANCE)
            .map(EPackage::getEClassifiers).flatMap(List::stream)
            .filter(EClass.class::isInstance).map(EClass.class::cast).filter(c -> !c.isAbstract() && !c.isInterface());
    }

    @ParameterizedTest
    @MethodSource("concreteClasses")
    void everyClassHasALabelAndAnIcon(EClass type) {
        EObject object = EcoreUtil.create(type);
        IItemLabelProvider labels = (IItemLabelProvider) factory.adapt(object, IItemLabelProvider.class);
        assertNotNull(labels, "no item provider");
        String text = labels.getText(object);
        assertFalse(text.isBlank() || text.startsWith("_UI_"), text);
        assertNotNull(labels.getImage(object));
    }

    @ParameterizedTest
    @MethodSource("concreteClasses")
    void everyPropertyHasAName(EClass type) {
        EObject object = EcoreUtil.create(type);
        IItemPropertySource source = (IItemPropertySource) factory.adapt(object, IItemPropertySource.class);
        assertNotNull(source, "no item provider");
        assertAll(source.getPropertyDescriptors(object).stream().map(descriptor -> () -> named(object, descriptor)));
    }

    private static void named(EObject object, IItemPropertyDescriptor descriptor) {
        String name = descriptor.getDisplayName(object);
        assertTrue(!name.isBlank() && !name.startsWith("_UI_"), name);
    }

    @Test
    void aDeviceIsLabelledWithItsName() {
        Device device = VehicleFactory.eINSTANCE.createDevice();
        device.setName("E7");
        IItemLabelProvider labels = (IItemLabelProvider) factory.adapt(device, IItemLabelProvider.class);
        assertEquals("Device E7", labels.getText(device));
    }
}
